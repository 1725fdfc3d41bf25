//! Round lines as chains of points.

use drawing::P;

/// Chords in a quarter turn: at a leaf of 100 points the chord leaves the arc by less than 0.15 point.
const CHORDS: usize = 16;

/// The quarter of a circle (or ellipse) about `centre` from `from` to `to`, both ends included.
pub(crate) fn quarter(centre: P, from: P, to: P) -> Vec<P> {
    (0..=CHORDS)
        .map(|i| {
            let turn = i as f32 / CHORDS as f32 * std::f32::consts::FRAC_PI_2;
            let (sin, cos) = libm::sincosf(turn);
            centre.by(
                (from.x - centre.x) * cos + (to.x - centre.x) * sin,
                (from.y - centre.y) * cos + (to.y - centre.y) * sin,
            )
        })
        .collect()
}

/// Degrees counter-clockwise from the screen's x axis to `a → b`, turned so that text along it reads from
/// below or from the right: more than -90 and at most 90.
pub(crate) fn reading_angle(a: P, b: P) -> f32 {
    let degrees = libm::atan2f(a.y - b.y, b.x - a.x).to_degrees();
    // A hair under -90 is an upright line: it reads from the right.
    if degrees > 90.1 {
        degrees - 180.0
    } else if degrees <= -89.9 {
        degrees + 180.0
    } else {
        degrees
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_quarter_stays_on_its_circle() {
        let (c, from, to) = (P::new(10.0, 10.0), P::new(30.0, 10.0), P::new(10.0, -10.0));
        let arc = quarter(c, from, to);
        assert!(arc.iter().all(|p| (p.distance(c) - 20.0).abs() < 1e-3));
        assert!(arc[0].distance(from) < 1e-3 && arc[CHORDS].distance(to) < 1e-3);
    }

    #[test]
    fn text_is_never_upside_down() {
        let o = P::default();
        let angle = |x: f32, y: f32| reading_angle(o, P::new(x, y)).round();
        assert_eq!(angle(1.0, 0.0), 0.0);
        assert_eq!(angle(-1.0, 0.0).abs(), 0.0);
        assert_eq!(angle(0.0, -1.0), 90.0);
        assert_eq!(angle(0.0, 1.0), 90.0);
        assert_eq!(angle(1.0, 1.0), -45.0);
        assert_eq!(angle(-1.0, -1.0), -45.0);
    }
}
