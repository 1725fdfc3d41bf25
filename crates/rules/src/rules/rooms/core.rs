//! How wide a room is: the part of its floor that a square of a given side can reach.

use geometry::{Bounds, Placed, Pt, Seg, Shape, edges, orient};
use measure::{Area, Len};
use space::{Facts, Room, RoomIndex};

/// The part of a room that is at least `side` wide both ways.
pub(super) fn core(facts: &Facts, index: RoomIndex, side: Len) -> Vec<Shape> {
    let room = facts.room(index);
    let (width, depth) = room.clear;
    if width.min(depth) < side {
        vec![]
    } else if is_rectangle(room) {
        vec![room.shape.clone()]
    } else {
        space::room_core(room, side)
    }
}

/// Whether a room has a part of some area that is at least `side` wide both ways. A box of that area is tried
/// first, in the middle of the room, lengthwise and crosswise, and then what a straight cut leaves of the box around the
/// room: most rooms hold one of these.
pub(super) fn holds(facts: &Facts, index: RoomIndex, side: Len, area: Area) -> bool {
    let room = facts.room(index);
    if is_rectangle(room) || side <= Len::ZERO {
        return room.clear.0.min(room.clear.1) >= side && room.area >= area;
    }
    let across = i128::from(side.units());
    let length = (area.square_units() + across - 1) / across;
    let length = i32::try_from(length).map_or(Len::COORD_LIMIT, Len::from_units).max(side);
    holds_box(room, side, length)
        || holds_box(room, length, side)
        || holds_strip(room, side, area)
        || core_area(facts, index, side) >= area.max(Area::from_square_units(1))
}

/// Whether a box, along the longest wall and centred on the middle of the room, lies in the room.
fn holds_box(room: &Room, width: Len, depth: Len) -> bool {
    let back = room.label_at - room.along.step(depth / 2);
    let corners = Placed { back, facing: room.along, width, depth }.corners();
    room.shape.contains(room.label_at)
        && !room.shape.perimeter_edges().any(|edge| pierces(edge, &corners))
}

/// Whether a room with an upright longest wall holds a whole strip of the box around it, from one of its sides to one of
/// the room's corners, of some area and `side` wide both ways.
fn holds_strip(room: &Room, side: Len, area: Area) -> bool {
    let along = room.along.vec();
    if along.x != 0 && along.y != 0 {
        return false;
    }
    let all = room.shape.bounds();
    let fits = |min: Pt, max: Pt| {
        let strip = Bounds { min, max };
        let large = strip.width().min(strip.height()) >= side
            && Area::of_rect(strip.width(), strip.height()) >= area;
        large && {
            let corners = strip.ring();
            let middle = min.midway(max);
            room.shape.contains(middle)
                && !room.shape.perimeter_edges().any(|edge| pierces(edge, &corners))
        }
    };
    room.shape.rings().flatten().any(|corner| {
        fits(all.min, Pt::new(corner.x, all.max.y))
            || fits(Pt::new(corner.x, all.min.y), all.max)
            || fits(all.min, Pt::new(all.max.x, corner.y))
            || fits(Pt::new(all.min.x, corner.y), all.max)
    })
}

/// Whether a segment runs through the inside of a convex counter-clockwise ring.
fn pierces(s: Seg, ring: &[Pt]) -> bool {
    let outside = |side: Seg| orient(side.a, side.b, s.a) <= 0 && orient(side.a, side.b, s.b) <= 0;
    let left = ring.iter().any(|&p| orient(s.a, s.b, p) > 0);
    let right = ring.iter().any(|&p| orient(s.a, s.b, p) < 0);
    left && right && !edges(ring).any(outside)
}

/// Whether the room fills the box around it.
fn is_rectangle(room: &Room) -> bool {
    room.shape.holes.is_empty() && room.area == Area::of_rect(room.clear.0, room.clear.1)
}

/// The area of the part of a room that is at least `side` wide both ways.
pub(super) fn core_area(facts: &Facts, index: RoomIndex, side: Len) -> Area {
    core(facts, index, side).iter().map(Shape::area).sum()
}

/// The side of the largest square that the room holds, along and across its longest wall; at most `enough`,
/// where the search stops.
pub(crate) fn least_dimension(facts: &Facts, index: RoomIndex, enough: Len) -> Len {
    widest(facts, index, enough, |side| !core(facts, index, side).is_empty())
}

/// The width of the hall where it is narrowest between two of its openings; at most `enough`.
pub(crate) fn least_hall_width(facts: &Facts, index: RoomIndex, enough: Len) -> Len {
    widest(facts, index, enough, |side| passes(facts, index, side))
}

/// Whether one connected part of the room is at least `side` wide and reaches every door of the room.
fn passes(facts: &Facts, index: RoomIndex, side: Len) -> bool {
    match &core(facts, index, side)[..] {
        [whole] => reaches_doors(facts, index, whole),
        _ => false,
    }
}

fn reaches_doors(facts: &Facts, index: RoomIndex, part: &Shape) -> bool {
    facts.openings_of(index).all(|opening| {
        let face = match (opening.left == Some(index), opening.right == Some(index)) {
            (true, _) => opening.face(plan::element::Side::Left),
            (_, true) => opening.face(plan::element::Side::Right),
            _ => return true,
        };
        is_window(facts, opening.id) || part.contains(face.a.midway(face.b))
    })
}

fn is_window(facts: &Facts, id: plan::ElementId) -> bool {
    let body = facts.plan.get(id).map(|e| &e.body);
    matches!(body, Some(plan::Body::Opening(o)) if o.window().is_some())
}

/// The largest side up to `enough` that fits, found by halving; exact to a unit.
fn widest(facts: &Facts, index: RoomIndex, enough: Len, fits: impl Fn(Len) -> bool) -> Len {
    let (width, depth) = facts.room(index).clear;
    let most = enough.min(width).min(depth);
    if fits(most) {
        return most;
    }
    let (mut low, mut high) = (0, most.units());
    while high - low > 1 {
        let middle = low + (high - low) / 2;
        if fits(Len::from_units(middle)) { low = middle } else { high = middle }
    }
    Len::from_units(low)
}
