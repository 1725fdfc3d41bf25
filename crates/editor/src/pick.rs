//! Which elements lie under the pointer, the one that is meant first.

use geometry::{Bounds, Pt, Seg, Where, locate, nearest_on};
use plan::{Body, Element, ElementId, Plan};
use space::Facts;

use crate::outline::{outline, round};
use crate::pointer::Pointer;

/// Kinds that the view does not show and that are not picked therefore.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Hidden {
    pub overheads: bool,
    pub services: bool,
    pub furnishings: bool,
}

impl Hidden {
    pub(crate) fn holds(self, body: &Body) -> bool {
        match body {
            Body::Overhead(_) => self.overheads,
            Body::Service(_) => self.services,
            Body::Furnishing(_) => self.furnishings,
            _ => false,
        }
    }
}

/// In what order kinds are meant when several lie under the pointer: marks on top of everything, openings over
/// walls, service points over furnishings, overheads last.
fn rank(body: &Body) -> u8 {
    match body {
        Body::RoomTag(_) | Body::Note(_) | Body::Section(_) => 0,
        Body::Opening(_) => 1,
        Body::Service(_) => 2,
        Body::Column(_) => 3,
        Body::Furnishing(_) => 4,
        Body::Furring(_) => 5,
        Body::Shell(_) | Body::Partition(_) => 6,
        Body::Stair(_) => 7,
        Body::Overhead(_) => 8,
    }
}

/// The order of a hit: overheads after all else; what holds the pointer before what is only within reach; then
/// by rank, by distance, the smaller first, the lower id first.
type Key = (bool, bool, u8, i64, i64, ElementId);

/// The elements at the pointer, the one that is meant first.
pub(crate) fn hits(
    plan: &Plan,
    facts: &Facts,
    pointer: &Pointer,
    hidden: Hidden,
) -> Vec<ElementId> {
    let mut hits: Vec<Key> = plan
        .elements()
        .iter()
        .filter(|e| !hidden.holds(&e.body))
        .filter_map(|e| hit(plan, facts, e, pointer))
        .collect();
    hits.sort();
    hits.into_iter().map(|(.., id)| id).collect()
}

fn hit(plan: &Plan, facts: &Facts, element: &Element, pointer: &Pointer) -> Option<Key> {
    let ring = outline(plan, facts, element)?;
    let bounds = Bounds::of(&ring);
    let reached = bounds.grow(pointer.reach);
    let p = pointer.at;
    if p.x < reached.min.x || p.x > reached.max.x || p.y < reached.min.y || p.y > reached.max.y {
        return None;
    }
    let off = distance2(element, &ring, p);
    let r = i64::from(pointer.reach.units());
    if off > r * r {
        return None;
    }
    let size = (bounds.max - bounds.min).norm2();
    let rank = rank(&element.body);
    // A mark without a body is on when it is within reach.
    let on = off == 0 || ring.len() == 1;
    Some((rank == 8, !on, rank, off, size, element.id))
}

/// The square of the distance from a point to an element; zero inside it.
fn distance2(element: &Element, ring: &[Pt], p: Pt) -> i64 {
    if let Some((centre, radius)) = round(&element.body) {
        let off = ((p - centre).norm() - f64::from(radius.units())).max(0.0).ceil() as i64;
        return off * off;
    }
    if locate(p, ring) != Where::Outside {
        return 0;
    }
    (0..ring.len())
        .map(|i| nearest_on(Seg::new(ring[i], ring[(i + 1) % ring.len()]), p))
        .map(|q| (p - q).norm2())
        .min()
        .unwrap_or(i64::MAX)
}

/// The elements that lie wholly within the box of two corners, in the order of their ids.
pub(crate) fn within_box(
    plan: &Plan,
    facts: &Facts,
    corners: (Pt, Pt),
    hidden: Hidden,
) -> Vec<ElementId> {
    let frame = Bounds::of([corners.0, corners.1]);
    plan.elements()
        .iter()
        .filter(|e| !hidden.holds(&e.body))
        .filter(|e| {
            outline(plan, facts, e).is_some_and(|ring| {
                let b = Bounds::of(&ring);
                frame.min.x <= b.min.x
                    && frame.min.y <= b.min.y
                    && b.max.x <= frame.max.x
                    && b.max.y <= frame.max.y
            })
        })
        .map(|e| e.id)
        .collect()
}
