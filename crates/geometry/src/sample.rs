//! Points, pieces and shapes for property tests.

use measure::Len;
use proptest::prelude::*;

use crate::{Pt, Ring, Seg, convex_hull};

/// The largest coordinate of a plan.
pub(crate) const FAR: i32 = Len::COORD_LIMIT.units();

pub(crate) fn point(limit: i32) -> impl Strategy<Value = Pt> {
    (-limit..=limit, -limit..=limit).prop_map(|(x, y)| Pt::new(x, y))
}

pub(crate) fn segment(limit: i32) -> impl Strategy<Value = Seg> {
    (point(limit), point(limit)).prop_map(|(a, b)| Seg::new(a, b))
}

/// A convex piece of one to eight corners, of either winding; sometimes a point or a segment.
pub(crate) fn piece(limit: i32) -> impl Strategy<Value = Ring> {
    (prop::collection::vec(point(limit), 1..=8), any::<bool>()).prop_map(|(points, turn)| {
        let mut hull = convex_hull(&points);
        if turn {
            hull.reverse();
        }
        hull
    })
}

/// A convex piece with an area.
pub(crate) fn polygon(limit: i32) -> impl Strategy<Value = Ring> {
    piece(limit).prop_filter("a point or a segment", |ring| ring.len() >= 3)
}

/// Convex pieces of all sizes, from a few units to the whole plan.
pub(crate) fn any_piece() -> impl Strategy<Value = Ring> {
    prop_oneof![piece(6), piece(1_000), piece(40_000_000), piece(FAR)]
}

pub(crate) fn rect(x: i32, y: i32, w: i32, h: i32) -> Ring {
    vec![Pt::new(x, y), Pt::new(x + w, y), Pt::new(x + w, y + h), Pt::new(x, y + h)]
}

/// A polygon under a skyline: simple, concave, with collinear corners and narrow parts.
pub(crate) fn skyline() -> impl Strategy<Value = Ring> {
    prop::collection::vec(1..=6i32, 1..=6).prop_map(|heights| {
        let mut ring = vec![Pt::new(0, 0), Pt::new(heights.len() as i32, 0)];
        for (x, &h) in heights.iter().enumerate().rev() {
            ring.extend([Pt::new(x as i32 + 1, h), Pt::new(x as i32, h)]);
        }
        ring.dedup();
        ring
    })
}

/// The eight ways to lay a plan on the grid: quarter turns, mirrored or not; then a shift.
pub(crate) fn laid(ring: &[Pt], way: u8, shift: (i32, i32)) -> Ring {
    let lay = |p: &Pt| {
        let (x, y) = if way & 4 == 0 { (p.x, p.y) } else { (-p.x, p.y) };
        let (x, y) = match way & 3 {
            0 => (x, y),
            1 => (-y, x),
            2 => (-x, -y),
            _ => (y, -x),
        };
        Pt::new(x + shift.0, y + shift.1)
    };
    ring.iter().map(lay).collect()
}
