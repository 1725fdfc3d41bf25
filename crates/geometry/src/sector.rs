//! The floor that a door leaf sweeps.
//!
//! A polygon round the sector: the hinge, the two ends of the leaf's edge, and between them the
//! corners where the tangents at [`TANGENTS`] evenly spaced directions meet. The directions come from
//! halving the angle: the sum of two unit vectors points midway. With unit vectors `u`, `v` and
//! radius `r` the tangents at `r u` and `r v` meet at `r (u + v) / (1 + u·v)`. No trigonometry, so the
//! same everywhere.

use crate::{Pt, Ring, Vec2, convex_hull};

/// The arc is halved this many times.
const HALVINGS: u32 = 4;

/// Into how many parts the arc is cut.
pub const TANGENTS: usize = 1 << HALVINGS;

/// A convex counter-clockwise polygon that holds the sector swept by a leaf that is hinged at `hinge`,
/// between the leaf's ends `shut` and `open`, whichever way round.
///
/// Beyond the sector it reaches at most `r (1 / cos(a / 32) - 1)`, `r` being the leaf and `a` the angle:
/// 0.12 % of the leaf for a quarter turn, 0.044 in for a 36 in leaf; and two units for rounding. It
/// does not reach beyond the lines of the shut and the open leaf, nor beyond the tangents at their
/// ends, so along the axes its extent is the leaf's own length exactly.
///
/// The angle must be less than a half turn, and the two radii are taken to be equal (the longer counts).
/// When hinge and ends lie on one line, the hull of the three.
pub fn sector(hinge: Pt, shut: Pt, open: Pt) -> Ring {
    let (from, to) = (shut - hinge, open - hinge);
    if from.cross(to) == 0 {
        return convex_hull(&[hinge, shut, open]);
    }
    let radius = from.norm().max(to.norm());
    let directions = directions(unit(from), unit(to));
    let mut corners = Vec::with_capacity(TANGENTS + 3);
    corners.extend([hinge, shut]);
    let last = TANGENTS - 1;
    for (i, pair) in directions.windows(2).enumerate() {
        let (u, v) = (pair[0], pair[1]);
        let scale = radius / (1.0 + u.0 * v.0 + u.1 * v.1);
        let meet = ((u.0 + v.0) * scale, (u.1 + v.1) * scale);
        corners.push(match i {
            // On the tangent at the end, which is exact there when the leaf lies along an axis.
            0 => shut + along_tangent(from, meet),
            _ if i == last => open + along_tangent(to, meet),
            // A unit farther out, so that rounding does not cut into the sector.
            _ => hinge + rounded(meet, 1.0 + 1.0 / radius),
        });
    }
    corners.push(open);
    if from.cross(to) < 0 {
        corners.reverse();
    }
    convex_hull(&corners)
}

fn unit(v: Vec2) -> (f64, f64) {
    let norm = v.norm();
    (v.x as f64 / norm, v.y as f64 / norm)
}

/// Unit vectors from one to another, the angle between them halved again and again.
fn directions(from: (f64, f64), to: (f64, f64)) -> [(f64, f64); TANGENTS + 1] {
    let mut all = [from; TANGENTS + 1];
    all[TANGENTS] = to;
    for halving in 0..HALVINGS {
        let part = TANGENTS >> halving;
        for i in (0..TANGENTS).step_by(part) {
            let (u, v) = (all[i], all[i + part]);
            let (x, y) = (u.0 + v.0, u.1 + v.1);
            let norm = (x * x + y * y).sqrt();
            all[i + part / 2] = (x / norm, y / norm);
        }
    }
    all
}

/// The step from the end of `leaf` along the tangent there to `meet` (both from the hinge), a unit longer.
fn along_tangent(leaf: Vec2, meet: (f64, f64)) -> Vec2 {
    let u = unit(leaf);
    let left = u.0 * meet.1 - u.1 * meet.0;
    let length = left + left.signum() * 2.0;
    rounded((-u.1 * length, u.0 * length), 1.0)
}

fn rounded(v: (f64, f64), scale: f64) -> Vec2 {
    Vec2::new((v.0 * scale).round() as i64, (v.1 * scale).round() as i64)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample::point;
    use crate::{Bounds, Where, locate, orient};
    use measure::Len;
    use proptest::prelude::*;

    /// Points of the true sector, in floats, by turning the leaf from shut to open.
    fn leaf_ends(hinge: Pt, shut: Pt, open: Pt) -> Vec<(f64, f64)> {
        let (from, to) = (shut - hinge, open - hinge);
        let (start, radius) = ((from.y as f64).atan2(from.x as f64), from.norm());
        let turn = (from.cross(to) as f64).atan2(from.dot(to) as f64);
        let end = |i: i32| {
            let angle = start + turn * f64::from(i) / 300.0;
            (f64::from(hinge.x) + radius * angle.cos(), f64::from(hinge.y) + radius * angle.sin())
        };
        (0..=300).map(end).collect()
    }

    /// How far outside a convex counter-clockwise ring a point lies (negative inside).
    fn outside_by(ring: &[Pt], p: (f64, f64)) -> f64 {
        crate::edges(ring)
            .map(|e| {
                let d = e.dir();
                let (x, y) = (p.0 - f64::from(e.a.x), p.1 - f64::from(e.a.y));
                -(d.x as f64 * y - d.y as f64 * x) / d.norm()
            })
            .fold(f64::NEG_INFINITY, f64::max)
    }

    #[test]
    fn a_quarter_turn_along_the_axes_has_the_extent_of_the_leaf() {
        let (hinge, leaf) = (Pt::inches(10, 20), Len::inches(32).units());
        for (s, o) in [((1, 0), (0, 1)), ((0, 1), (1, 0)), ((-1, 0), (0, 1)), ((0, -1), (-1, 0))] {
            let end = |d: (i32, i32)| Pt::new(hinge.x + d.0 * leaf, hinge.y + d.1 * leaf);
            let ring = sector(hinge, end(s), end(o));
            assert_eq!(Bounds::of(&ring), Bounds::of([hinge, end(s), end(o)]));
            for p in leaf_ends(hinge, end(s), end(o)) {
                assert!(outside_by(&ring, p) <= 1e-3);
            }
            // The stated bound, with a tolerance of two units.
            let largest = ring.iter().map(|&p| (p - hinge).norm()).fold(0.0, f64::max);
            let bound = f64::from(leaf) / (std::f64::consts::FRAC_PI_2 / 32.0).cos() + 2.0;
            assert!(largest <= bound, "{largest} {bound}");
            assert!(bound < f64::from(leaf) * 1.00122);
        }
    }

    #[test]
    fn a_leaf_on_one_line_sweeps_nothing() {
        let hinge = Pt::new(0, 0);
        assert_eq!(sector(hinge, Pt::new(9, 0), Pt::new(9, 0)), [hinge, Pt::new(9, 0)]);
        assert_eq!(sector(hinge, hinge, hinge), [hinge]);
    }

    proptest! {
        /// Any turn up to 150°, leaves from a few units to 10 m.
        #[test]
        fn holds_the_swept_floor_within_the_bound(
            hinge in point(1_000_000), leaf in point(3_000_000), turn in -150.0..150.0f64,
        ) {
            let (sin, cos) = turn.to_radians().sin_cos();
            let (x, y) = (f64::from(leaf.x), f64::from(leaf.y));
            let shut = hinge + Vec2::new(i64::from(leaf.x), i64::from(leaf.y));
            let open = hinge + rounded((x * cos - y * sin, x * sin + y * cos), 1.0);
            prop_assume!(orient(hinge, shut, open) != 0);
            let radius = (shut - hinge).norm().max((open - hinge).norm());
            prop_assume!(radius > 50.0);
            let ring = sector(hinge, shut, open);
            prop_assert_eq!(convex_hull(&ring).len(), ring.len());
            for p in [hinge, shut, open] {
                prop_assert!(locate(p, &ring) != Where::Outside);
            }
            for p in leaf_ends(hinge, shut, open) {
                prop_assert!(outside_by(&ring, p) <= 1.0, "{}", outside_by(&ring, p));
            }
            let bound = radius / (turn.abs().to_radians() / 32.0).cos() + 3.0;
            let largest = ring.iter().map(|&p| (p - hinge).norm()).fold(0.0, f64::max);
            prop_assert!(largest <= bound, "{} {}", largest, bound);
        }
    }
}
