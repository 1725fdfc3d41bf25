//! Round things as polygons that contain them. Fixed ratios, no trigonometry, so that every machine
//! gets the same corners.

use geometry::{Pt, Ring, Vec2};

/// Along the first axis, the corners of the polygon round a unit quarter disc; along the second, the same backwards.
///
/// Its sides touch the disc at 0°, 11.25°, ... 90°; the corners lie between at distance 1 / cos 5.625°,
/// at most 0.5 % outside. Values: cos of 5.625° + k 11.25°, over cos 5.625°.
const QUARTER: [f64; 8] = [
    1.0,
    0.961_570_560_806_460_8,
    0.886_188_504_216_112_6,
    0.776_750_720_388_977_9,
    0.637_462_841_984_117_2,
    0.473_677_624_055_087_23,
    0.291_689_240_675_092_2,
    0.098_491_403_357_164_25,
];

/// The regular polygon of 32 sides round a disc; four of its sides are axis-parallel and touch the
/// disc, so that distances along the axes are exact.
pub(crate) fn disc(centre: Pt, radius: i64) -> Ring {
    let at = QUARTER.map(|c| (radius as f64 * c).round() as i64);
    let quarter = || at.iter().zip(at.iter().rev()).map(|(x, y)| Vec2::new(*x, *y));
    let mut ring = Vec::with_capacity(4 * at.len());
    ring.extend(quarter().map(|v| centre + v));
    ring.extend(quarter().map(|v| centre + v.left()));
    ring.extend(quarter().map(|v| centre + -v));
    ring.extend(quarter().map(|v| centre + -v.left()));
    ring
}

#[cfg(test)]
mod tests {
    use super::*;
    use geometry::{Bounds, twice_area};

    #[test]
    fn the_ratios_are_those_of_the_tangent_polygon() {
        for (k, (c, s)) in QUARTER.into_iter().zip(QUARTER.into_iter().rev()).enumerate() {
            let angle = (5.625 + 11.25 * k as f64).to_radians();
            let r = 1.0 / 5.625f64.to_radians().cos();
            assert!((c - r * angle.cos()).abs() < 1e-15 && (s - r * angle.sin()).abs() < 1e-15);
        }
    }

    #[test]
    fn a_disc_is_exact_along_the_axes() {
        let ring = disc(Pt::new(7, -9), 14_224);
        let b = Bounds::of(&ring);
        assert_eq!(
            (b.min, b.max),
            (Pt::new(7 - 14_224, -9 - 14_224), Pt::new(7 + 14_224, -9 + 14_224))
        );
        let disc = std::f64::consts::PI * 14_224f64.powi(2);
        let excess = twice_area(&ring) as f64 / 2.0 / disc;
        assert!((1.0..1.004).contains(&excess), "{excess}");
    }
}
