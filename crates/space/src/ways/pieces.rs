//! What stands in a walking person's way, as convex pieces with their elements.

use geometry::passage::Obstacles;
use geometry::{Pt, Ring, Seg, triangulate, twice_area};
use measure::Len;
use plan::element::{Door, DoorOperation, End, OpeningKind, Side};
use plan::{Body, ElementId};

use super::body;
use crate::{Facts, OpeningFacts};

/// A convex piece and the element that it belongs to.
pub(super) type Piece = (Ring, ElementId);

/// Every piece: what is solid at the height of a person, open doors, low overheads.
pub(super) fn of(facts: &Facts) -> Vec<Piece> {
    between(facts, body::range(&facts.plan))
}

/// The same for a height range from the slab.
pub(super) fn between(facts: &Facts, (bottom, top): (Len, Len)) -> Vec<Piece> {
    let solid = facts.solids.iter().filter(|s| s.bottom < top && s.top > bottom);
    let mut all: Vec<Piece> = solid.map(|s| (s.ring.clone(), s.element)).collect();
    for opening in &facts.openings {
        if let Some(Body::Opening(o)) = facts.plan.get(opening.id).map(|e| &e.body)
            && let OpeningKind::Door(door) = &o.kind
        {
            open_door(opening, door, &mut all);
        }
    }
    for overhead in facts.overheads.iter().filter(|o| o.underside < top) {
        if overhead.convex {
            all.push((overhead.ring.clone(), overhead.id));
        } else {
            all.extend(triangles(&overhead.ring).map(|part| (part, overhead.id)));
        }
    }
    all
}

/// A ring cut into triangles with its own corners.
fn triangles(ring: &[Pt]) -> impl Iterator<Item = Ring> + '_ {
    let flat = ring.iter().map(|p| [f64::from(p.x), f64::from(p.y)]).collect();
    let (corners, faces) = triangulate(&[flat]);
    faces.into_iter().map(move |face| {
        // The corners are those that were given: whole numbers, which a float holds exactly.
        face.iter()
            .map(|i| corners[*i as usize])
            .map(|[x, y]| Pt::new(x as i32, y as i32))
            .collect()
    })
}

pub(super) fn obstacles(pieces: &[Piece]) -> Obstacles {
    Obstacles::new(pieces.iter().map(|(ring, id)| (ring.as_slice(), id.0 as usize)))
}

/// What an open door leaves in its opening and before it: the part of the hole that is not clear, at the jamb that
/// carries the leaf, and the leaf itself, open 90°, as thick as that part.
fn open_door(opening: &OpeningFacts, door: &Door, all: &mut Vec<Piece>) {
    let whole = opening.line.len();
    let taken = whole - opening.clear_width;
    if taken <= Len::ZERO {
        return;
    }
    let [right_near, right_far, left_far, left_near] = opening.quad;
    let (right, left) = match door.hinge {
        End::Start => (Seg::new(right_near, right_far), Seg::new(left_near, left_far)),
        End::Finish => (Seg::new(right_far, right_near), Seg::new(left_far, left_near)),
    };
    push(all, opening.id, [right.a, right.point_at(taken), left.point_at(taken), left.a]);
    if matches!(door.operation, DoorOperation::Hinged | DoorOperation::Bifold) {
        let face = match door.swing {
            Side::Left => left,
            Side::Right => right,
        };
        for leaf in &opening.leaves {
            let out = leaf.open - leaf.hinge;
            push(
                all,
                opening.id,
                [face.a, face.point_at(taken), face.point_at(taken) + out, face.a + out],
            );
        }
    }
}

fn push(all: &mut Vec<Piece>, id: ElementId, quad: [Pt; 4]) {
    let mut ring = quad.to_vec();
    if twice_area(&ring) < 0 {
        ring.reverse();
    }
    all.push((ring, id));
}
