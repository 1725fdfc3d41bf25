//! Whether a box can be carried through the plan, sliding and turning.
//!
//! The half turn of a rectangle is cut into slices of orientation (slice projection: Latombe, Robot Motion Planning,
//! 1991; from memory). In each slice the rectangle is replaced twice: by a polygon that contains it at every angle of the
//! slice, and by one that it contains at every angle. The obstacles grown by the polygon leave regions in which its middle
//! may lie; regions of neighbouring slices that overlap are joined. A way for the larger polygons is a way for the box, and
//! where the smaller ones have none, it has none (derived): both answers are certain. Between them nothing is said, and the
//! slices are halved. Contact is allowed: along the axes, where walls are met exactly, the rectangle itself is taken,
//! smaller by one unit on each side.

mod shapes;
mod slices;

use measure::Len;

use crate::{Bounds, Pt, Ring, Shape, overlay};
use shapes::Kind;
use slices::Slices;

/// Slices of the half turn in the first try, and in the last.
const SLICES: (usize, usize) = (32, 128);

/// Whether the box gets there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Carry {
    Fits,
    /// It does not; the nearest that its middle comes to the goal.
    Sticks(Pt),
    /// The method can't tell; the nearest that is certain.
    Unsure(Pt),
    /// It does not even stand at the start.
    NoStart,
}

/// Carries a rectangle of a length and a width from anywhere in `start` to anywhere in `goal`, by its middle, between
/// convex pieces. What lies outside `frame` is closed.
pub fn carry(
    pieces: &[Ring],
    frame: Bounds,
    (length, width): (Len, Len),
    start: &[Shape],
    goal: &Shape,
) -> Carry {
    let aim = goal.label_point();
    let mut unsure = Carry::NoStart;
    let mut count = SLICES.0;
    while count <= SLICES.1 {
        let sure = Slices::new(pieces, frame, (length, width), count, Kind::Around);
        let reached = sure.reach(start);
        if reached.iter().any(|shape| meets(shape, goal)) {
            return Carry::Fits;
        }
        let most = Slices::new(pieces, frame, (length, width), count, Kind::Within);
        let possible = most.reach(start);
        match nearest(&possible, aim) {
            None => return Carry::NoStart,
            Some(at) if !possible.iter().any(|shape| meets(shape, goal)) => {
                return Carry::Sticks(at);
            }
            Some(at) => unsure = Carry::Unsure(nearest(&reached, aim).unwrap_or(at)),
        }
        count *= 2;
    }
    unsure
}

fn meets(a: &Shape, b: &Shape) -> bool {
    a.bounds().meets(b.bounds())
        && !overlay::shape_intersect(std::slice::from_ref(a), std::slice::from_ref(&b.outer))
            .is_empty()
}

/// The corner of some shapes that lies nearest to a point.
fn nearest(shapes: &[Shape], aim: Pt) -> Option<Pt> {
    let corners = shapes.iter().flat_map(|shape| shape.outer.iter().copied());
    corners.min_by_key(|p| (*p - aim).norm2())
}

#[cfg(test)]
mod tests;
