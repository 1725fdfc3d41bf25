//! One run of the sweep, and its result in a fixed order.

use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::integer::OverlayInt;
use i_overlay::core::overlay::{IntOverlayOptions, Overlay};
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::i_float::int::point::IntPoint;
use i_overlay::i_shape::int::shape::IntShapes;

use crate::{Pt, Ring, Shape, twice_area};

/// Runs the sweep on the contours that `add` puts in: counter-clockwise ones are parts, clockwise ones
/// islands. Shapes that meet in a corner only come out apart.
pub(crate) fn run<I: OverlayInt>(
    rule: OverlayRule,
    add: impl FnOnce(&mut Overlay<I>),
) -> IntShapes<I> {
    let mut overlay = Overlay::new_custom(64, IntOverlayOptions::ogc(), Default::default());
    add(&mut overlay);
    overlay.overlay(rule, FillRule::NonZero)
}

/// The shapes on the plan's grid: every ring from its lowest, then leftmost point, islands and shapes
/// by that point. Rings that have lost their area on the grid are left out.
pub(crate) fn in_order<I: OverlayInt>(
    shapes: IntShapes<I>,
    to_grid: impl Fn(IntPoint<I>) -> Pt,
) -> Vec<Shape> {
    let ring_of = |contour: Vec<IntPoint<I>>| {
        let mut ring: Ring = contour.into_iter().map(&to_grid).collect();
        ring.dedup();
        if let Some(first) = (0..ring.len()).min_by_key(|&i| (ring[i].y, ring[i].x)) {
            ring.rotate_left(first);
        }
        ring
    };
    let mut found: Vec<Shape> = shapes
        .into_iter()
        .filter_map(|contours| {
            let mut rings = contours.into_iter().map(ring_of);
            let outer = rings.next().filter(|ring| twice_area(ring) > 0)?;
            let mut holes: Vec<Ring> = rings.filter(|ring| twice_area(ring) < 0).collect();
            holes.sort_by(|a, b| in_turn(a).cmp(in_turn(b)));
            Some(Shape { outer, holes })
        })
        .collect();
    found.sort_by(|a, b| in_turn(&a.outer).cmp(in_turn(&b.outer)));
    found
}

/// Rings go by their points, each by height first.
fn in_turn(ring: &[Pt]) -> impl Iterator<Item = (i32, i32)> + '_ {
    ring.iter().map(|p| (p.y, p.x))
}
