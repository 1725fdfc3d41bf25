//! Which walls have a face on a room.

use geometry::{Bounds, Pt, Seg, Shape, edges, nearest_on};
use measure::Len;
use plan::ElementId;

use crate::places::Places;
use crate::{List, WallFacts};

/// How far an edge of a room may lie off the face that it came from: crossings are rounded.
const SLACK: i32 = 2;
/// A wall that touches a room over less than this only meets it in a corner.
const LEAST: i64 = 16;

/// The walls whose faces the edges of a room lie on, by id. `outlines` holds the bounds of the outlines.
pub(super) fn walls_on(
    room: impl Iterator<Item = Seg>,
    walls: &List<WallFacts>,
    outlines: &Places,
) -> Vec<ElementId> {
    let mut found: Vec<ElementId> = Vec::new();
    for edge in room {
        let near = around(edge);
        outlines.each_near(near, |i| {
            let wall = &walls[i];
            if !found.contains(&wall.id) && lies_on(edge, near, wall) {
                found.push(wall.id);
            }
        });
    }
    found.sort_unstable();
    found
}

/// Whether the face of a wall lies on an edge of a room.
pub(super) fn is_on(shape: &Shape, wall: &WallFacts) -> bool {
    let outline = Bounds::of(&wall.outline);
    let mut near =
        shape.perimeter_edges().map(|e| (e, around(e))).filter(|(_, b)| b.meets(outline));
    near.any(|(edge, near)| lies_on(edge, near, wall))
}

fn around(edge: Seg) -> Bounds {
    Bounds::of([edge.a, edge.b]).grow(Len::from_units(SLACK))
}

/// Whether an edge of a wall's outline lies on an edge of a room, in the box of which it must be.
fn lies_on(edge: Seg, near: Bounds, wall: &WallFacts) -> bool {
    let meets = |e: &Seg| near.meets(Bounds::of([e.a, e.b]));
    edges(&wall.outline).filter(meets).any(|e| share(edge, e))
}

/// Whether two edges that are near each other lie on each other over some length: of the ends that lie on the other
/// edge, two are apart.
fn share(s: Seg, t: Seg) -> bool {
    let mut first: Option<Pt> = None;
    for (p, other) in [(s.a, t), (s.b, t), (t.a, s), (t.b, s)] {
        let off = nearest_on(other, p) - p;
        if off.norm2() > i64::from(SLACK * SLACK) {
            continue;
        }
        match first {
            Some(q) if (p - q).norm2() >= LEAST * LEAST => return true,
            Some(_) => {}
            None => first = Some(p),
        }
    }
    false
}

#[cfg(test)]
mod tests {
    use super::*;

    fn seg(ax: i32, ay: i32, bx: i32, by: i32) -> Seg {
        Seg::new(Pt::new(ax, ay), Pt::new(bx, by))
    }

    #[test]
    fn edges_share_a_stretch_or_only_a_corner() {
        let s = seg(0, 0, 1000, 0);
        assert!(share(s, seg(2000, 0, 500, 0)));
        assert!(share(s, seg(900, 1, 100, -1)), "rounded");
        assert!(share(seg(100, 0, 200, 0), s));
        assert!(!share(s, seg(1000, 0, 2000, 0)), "end to end");
        assert!(!share(s, seg(1000, 0, 1000, 900)), "a corner");
        assert!(!share(s, seg(0, 5, 1000, 5)), "apart");
        assert!(!share(s, seg(500, 0, 500, 900)), "a tee");
    }
}
