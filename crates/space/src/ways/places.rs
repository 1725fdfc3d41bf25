//! Where ways begin, and where somebody must be able to stand.

use geometry::passage::Obstacles;
use geometry::{Bounds, Pt, Ring, overlay};
use measure::Len;
use plan::detail::{Value, ways::ARRIVAL};
use plan::element::{Mount, ServicePoint, Side};
use plan::{Body, Element, ElementId};

use super::body::STEP;
use crate::{Facts, OpeningFacts, Room, RoomIndex};

/// From a face to the middle of who stands before it, at least: half of the 30 in that a person takes (common
/// practice, no source).
const BEFORE: Len = Len::inches(15);

/// Somebody may also step back, to where there is more room; in steps of this, so often.
const BACK: (Len, i32) = (Len::inches(3), 5);

/// A place where people come into the basement.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Arrival {
    /// The stair, the door, or the tag of the room in which it is stated.
    pub element: ElementId,
    pub at: Pt,
}

/// What somebody must get to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Target {
    Service(ElementId),
    Room(RoomIndex),
}

/// The feet of stairs, the outside doors, and what is stated to be an arrival, by id.
pub(super) fn arrivals(facts: &Facts, obstacles: &Obstacles) -> Vec<Arrival> {
    let standing = facts.plan.elements().iter().filter(|e| e.stands());
    let at = |e| arrival(facts, e, obstacles);
    standing.filter_map(|e| Some(Arrival { element: e.id, at: at(e)? })).collect()
}

fn arrival(facts: &Facts, element: &Element, obstacles: &Obstacles) -> Option<Pt> {
    let stated = element.stated(&ARRIVAL).and_then(Value::yes);
    match &element.body {
        Body::Stair(stair) if stated != Some(false) => {
            let back = stair.up.back();
            Some(roomiest(obstacles, |out| stair.foot + back.step(out)))
        }
        Body::Opening(o) if o.door().is_some() => {
            let opening = facts.opening(element.id)?;
            stated.unwrap_or(opening.outside).then(|| before(opening, obstacles))
        }
        Body::RoomTag(tag) if stated == Some(true) => Some(tag.at),
        _ => None,
    }
}

/// Before a door, on the side without a room where there is one.
fn before(opening: &OpeningFacts, obstacles: &Obstacles) -> Pt {
    let outward = opening.line.dir().left();
    let side = if opening.left.is_none() { Side::Left } else { Side::Right };
    let face = opening.face(side);
    let middle = face.a.midway(face.b);
    let out = |len| match side {
        Side::Left => outward.with_len(len),
        Side::Right => -outward.with_len(len),
    };
    roomiest(obstacles, |len| middle + out(len))
}

/// The place before a face, [`BEFORE`] or further out, that lies farthest from what stands around; the nearest to
/// the face of several.
fn roomiest(obstacles: &Obstacles, before: impl Fn(Len) -> Pt) -> Pt {
    let (step, times) = BACK;
    let places = (0..=times).map(|i| before(BEFORE + step * i));
    let far = |p: &Pt| room_at(obstacles, *p);
    places.rev().max_by_key(far).unwrap_or_else(|| before(BEFORE))
}

/// How far the nearest obstacle is, up to half of the widest way; zero inside one.
fn room_at(obstacles: &Obstacles, at: Pt) -> Len {
    obstacles.clearance(at, super::WIDEST / 2)
}

/// The service points that must be reached, then the rooms, each with the place to stand.
pub(super) fn targets(facts: &Facts, obstacles: &Obstacles) -> Vec<(Target, Pt)> {
    let standing = facts.plan.elements().iter().filter(|e| e.stands());
    let services = standing.filter_map(|e| match &e.body {
        Body::Service(s) if !s.kind.is_device() => {
            Some((Target::Service(e.id), at_service(s, obstacles)))
        }
        _ => None,
    });
    let rooms = facts.rooms.iter().map(|room| (Target::Room(room.index), in_room(room, obstacles)));
    services.chain(rooms).collect()
}

/// Under what hangs from the ceiling, over what lies in the floor, before the face of anything else.
fn at_service(s: &ServicePoint, obstacles: &Obstacles) -> Pt {
    let flat = s.mount == Mount::Floor && s.bottom + s.height <= STEP;
    if flat || s.mount == Mount::Ceiling {
        return s.placed().centre();
    }
    let face = s.placed().front();
    roomiest(obstacles, |out| face + s.facing.step(out))
}

/// The middle of the largest free part of a room's floor: where its label stands, unless something stands there.
fn in_room(room: &Room, obstacles: &Obstacles) -> Pt {
    let at = room.label_at;
    if room_at(obstacles, at) >= BEFORE {
        return at;
    }
    let near = Bounds::of(room.shape.outer.iter().copied());
    let inside: Vec<Ring> =
        obstacles.near(near).into_iter().map(|i| obstacles.ring(i).to_vec()).collect();
    let rings: Vec<Ring> = std::iter::once(room.shape.outer.clone()).collect();
    let taken: Vec<Ring> = room.shape.holes.iter().cloned().chain(inside).collect();
    let free = overlay::difference(&rings, &taken);
    free.iter().max_by_key(|shape| shape.area()).map_or(at, |shape| shape.label_point())
}
