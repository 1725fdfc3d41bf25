//! Reaching: what stands in a box before a thing, and how much is clear.
//!
//! Touching is not overlap: a thing that ends exactly at the limit leaves the box clear.

mod strip;

use geometry::{
    Bounds, Facing, Placed, Pt, Ring, convex_clip, convex_overlap, overlay, twice_area,
};
use measure::Len;
use plan::ElementId;
use plan::element::ServicePoint;

use crate::Facts;
pub(crate) use strip::{Near, Strip};

/// How far a clear distance is looked for: what is farther counts as this far.
pub(crate) const REACH: Len = Len::feet_inches(40, 0);

/// A box in space that is to be clear.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Zone {
    /// In the order of [`Placed::corners`]: the edge from the last point to the first is the back.
    pub ring: Ring,
    /// Height range from the slab.
    pub bottom: Len,
    pub top: Len,
}

/// Something that stands in a box.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Intrusion {
    pub element: ElementId,
    /// The largest part of it inside the box, and all parts, in the plan.
    pub overlap: Ring,
    pub parts: Vec<Ring>,
    /// Clear depth from the box's back edge to its nearest point within the box's width, rounded down.
    pub free_depth: Len,
    /// Whether it is an overhead that hangs into the box from above.
    pub overhead: bool,
}

/// Clear width to both sides of a thing's middle, as seen by one who stands in its place and looks
/// the way it faces.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ClearSpan {
    pub left: Len,
    pub right: Len,
}

impl ClearSpan {
    pub fn width(self) -> Len {
        self.left + self.right
    }
}

/// The box of a width and depth before a placed thing's front, centred on it.
pub fn box_before(placed: Placed, width: Len, depth: Len, bottom: Len, top: Len) -> Zone {
    let before = Placed { back: placed.front(), facing: placed.facing, width, depth };
    Zone { ring: before.corners().to_vec(), bottom, top }
}

/// The box before a service point's front, centred on it. Heights are from the slab.
pub fn front_box(service: &ServicePoint, width: Len, depth: Len, bottom: Len, top: Len) -> Zone {
    box_before(service.placed(), width, depth, bottom, top)
}

impl Zone {
    /// What stands in the box, less the ignored elements, by element.
    pub fn intrusions(&self, facts: &Facts, ignore: &[ElementId]) -> Vec<Intrusion> {
        intrusions(facts, &self.ring, self.bottom, self.top, ignore)
    }
}

/// What stands in a convex ring between two heights, less the ignored elements, by element. An overhead
/// counts from its underside upwards. The back edge, from which the free depth is measured, runs from
/// the last point of the ring to the first.
pub fn intrusions(
    facts: &Facts,
    ring: &[Pt],
    bottom: Len,
    top: Len,
    ignore: &[ElementId],
) -> Vec<Intrusion> {
    intrusions_near(facts, Bounds::of(ring), ring, (bottom, top), ignore)
}

/// As [`intrusions`], of what meets a box.
fn intrusions_near(
    facts: &Facts,
    bounds: Bounds,
    ring: &[Pt],
    (bottom, top): (Len, Len),
    ignore: &[ElementId],
) -> Vec<Intrusion> {
    let strip = Strip::behind(ring);
    let mut found: Vec<Intrusion> = Vec::new();
    for solid in facts.solids_near(bounds) {
        let crosses = solid.bottom < top && bottom < solid.top;
        if crosses && !ignore.contains(&solid.element) && convex_overlap(ring, &solid.ring) {
            let part = convex_clip(ring, &solid.ring);
            let near = strip.and_then(|s| s.nearest(&solid.ring));
            add(&mut found, solid.element, part, near, false);
        }
    }
    for over in facts.overheads_near(bounds) {
        if over.underside >= top || ignore.contains(&over.id) {
            continue;
        }
        if over.convex {
            let part = convex_clip(ring, &over.ring);
            if !part.is_empty() {
                let near = strip.and_then(|s| s.nearest(&over.ring));
                add(&mut found, over.id, part, near, true);
            }
        } else {
            for shape in overlay::intersect(&[ring.to_vec()], std::slice::from_ref(&over.ring)) {
                let near = strip.and_then(|s| s.nearest(&shape.outer));
                add(&mut found, over.id, shape.outer, near, true);
            }
        }
    }
    found.sort_by_key(|i| i.element);
    found
}

fn add(
    found: &mut Vec<Intrusion>,
    element: ElementId,
    part: Ring,
    near: Option<Near>,
    overhead: bool,
) {
    let free_depth = near.map_or(Len::ZERO, |n| n.depth);
    let Some(known) = found.iter_mut().rev().find(|i| i.element == element) else {
        found.push(Intrusion {
            element,
            overlap: part.clone(),
            parts: vec![part],
            free_depth,
            overhead,
        });
        return;
    };
    known.free_depth = known.free_depth.min(free_depth);
    if twice_area(&part) > twice_area(&known.overlap) {
        known.overlap = part.clone();
    }
    known.parts.push(part);
}

/// The clear depth straight before a placed thing's front over a width. Where `enough` or more is clear it says at
/// least `enough`, and does not look farther.
pub fn clear_before(
    facts: &Facts,
    (placed, width): (Placed, Len),
    (bottom, top): (Len, Len),
    ignore: &[ElementId],
    enough: Len,
) -> Len {
    let zone = box_before(placed, width, REACH, bottom, top);
    let near = box_before(placed, width, enough.clamp(Len::ZERO, REACH), bottom, top);
    // Corners are rounded.
    let near = Bounds::of(&near.ring).grow(Len::from_units(4));
    let found = intrusions_near(facts, near, &zone.ring, (bottom, top), ignore);
    found.iter().map(|i| i.free_depth).fold(REACH, Len::min)
}

/// The clear width to both sides of a placed thing's middle, over a depth before its front; at most
/// 40 ft each way.
pub fn clear_span(
    facts: &Facts,
    placed: Placed,
    depth: Len,
    (bottom, top): (Len, Len),
    ignore: &[ElementId],
) -> ClearSpan {
    let side = |facing: Facing, half: Len| {
        let back = placed.front() + placed.facing.step(half);
        let beside = Placed { back, facing, width: depth, depth: REACH };
        let found = intrusions(facts, &beside.corners(), bottom, top, ignore);
        found.iter().map(|i| i.free_depth).fold(REACH, Len::min)
    };
    // `corners` gives an odd width's spare unit to the right hand.
    ClearSpan {
        left: side(placed.facing.left(), depth / 2),
        right: side(placed.facing.right(), depth - depth / 2),
    }
}

#[cfg(test)]
mod tests;
