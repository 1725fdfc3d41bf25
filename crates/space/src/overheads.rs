//! Overheads: the floor they hang over and the clear height under them.

use geometry::{Bounds, Pt, Ring, Seg, Shape, edges, orient, overlay, twice_area};
use measure::Len;
use plan::element::{BodyKind, OverheadKind, OverheadShape};
use plan::{Body, Element, ElementId, Plan};

use crate::standing::Standing;

/// One overhead as it hangs over the floor.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OverheadFacts {
    pub id: ElementId,
    pub kind: OverheadKind,
    /// Counter-clockwise, not necessarily convex.
    pub ring: Ring,
    /// Finished floor to its underside (its board included where it is boxed in: a bare beam, duct or
    /// pipe counts as it hangs). More than the ceiling height where it hides above the ceiling.
    pub clear: Len,
    /// From the slab to its underside.
    pub underside: Len,
    pub convex: bool,
}

/// Every standing overhead of some area, by id.
pub(crate) fn overheads(plan: &Plan, standing: &Standing) -> Vec<OverheadFacts> {
    standing.of(plan, &[BodyKind::Overhead]).filter_map(|e| one(plan, e)).collect()
}

/// An element as an overhead, where it is a standing one of some area.
pub(crate) fn one(plan: &Plan, element: &Element) -> Option<OverheadFacts> {
    let Body::Overhead(o) = &element.body else { return None };
    let mut ring = match &o.shape {
        _ if !element.stands() => return None,
        OverheadShape::Run { a, b, width } => strip(Seg::new(*a, *b), *width),
        OverheadShape::Outline(ring) => ring.clone(),
    };
    match twice_area(&ring) {
        0 => return None,
        ..0 => ring.reverse(),
        _ => {}
    }
    let n = ring.len();
    let left = |i| orient(ring[i], ring[(i + 1) % n], ring[(i + 2) % n]) >= 0;
    Some(OverheadFacts {
        id: element.id,
        kind: o.kind,
        convex: (0..n).all(left),
        ring,
        clear: o.underside - plan.site.floor_build,
        underside: o.underside,
    })
}

fn strip(line: Seg, width: Len) -> Ring {
    let left = line.offset_left(width / 2);
    let right = line.offset_left(width / 2 - width);
    vec![right.a, right.b, left.b, left.a]
}

impl OverheadFacts {
    pub(crate) fn bounds(&self) -> Bounds {
        Bounds::of(&self.ring)
    }

    /// Whether it hangs over a part of a shape; hanging along its edge does not count.
    pub fn hangs_over(&self, shape: &Shape) -> bool {
        if self.convex {
            overlaps(shape, &self.ring)
        } else {
            let rings = [self.ring.clone()];
            !overlay::shape_intersect(std::slice::from_ref(shape), &rings).is_empty()
        }
    }
}

/// Whether the interiors of a shape and of a convex counter-clockwise ring meet. Exact.
///
/// They do when an edge of the shape runs through the ring's interior; when none does, the ring lies
/// wholly inside or outside, and one of its inner points tells.
pub(crate) fn overlaps(shape: &Shape, convex: &[Pt]) -> bool {
    let around = Bounds::of(convex);
    let apart = |a: i32, b: i32, low: i32, high: i32| a.max(b) <= low || a.min(b) >= high;
    let near = |e: &Seg| {
        !apart(e.a.x, e.b.x, around.min.x, around.max.x)
            && !apart(e.a.y, e.b.y, around.min.y, around.max.y)
    };
    let enters = |ring: &Ring| edges(ring).any(|e| near(&e) && pierces(e, convex));
    shape.contains(middle(convex)) || shape.rings().any(enters)
}

/// Whether a segment meets the interior of a convex counter-clockwise ring: no edge of the ring and
/// not the segment's own line parts them.
fn pierces(s: Seg, convex: &[Pt]) -> bool {
    let n = convex.len();
    let outside = |i: usize| {
        let (a, b) = (convex[i], convex[(i + 1) % n]);
        a != b && orient(a, b, s.a) <= 0 && orient(a, b, s.b) <= 0
    };
    if (0..n).any(outside) {
        return false;
    }
    let side = |p: &Pt| orient(s.a, s.b, *p);
    convex.iter().any(|p| side(p) > 0) && convex.iter().any(|p| side(p) < 0)
}

/// The mean of the corners: inside a convex ring of some size.
fn middle(convex: &[Pt]) -> Pt {
    let n = convex.len().max(1) as i64;
    let mean =
        |of: fn(&Pt) -> i32| (convex.iter().map(|p| i64::from(of(p))).sum::<i64>() / n) as i32;
    Pt::new(mean(|p| p.x), mean(|p| p.y))
}
