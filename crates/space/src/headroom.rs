//! Clear height: what is left between the finished floor and the ceiling or the overheads.

use geometry::{Ring, Shape, overlay};
use measure::{Area, Len};

use crate::{Facts, OverheadFacts, Room, RoomIndex};

/// The floor of a room by clear height, lowest first, without empty shares: the area under each
/// overhead, and the rest under the ceiling. Where overheads overlap the lowest counts; one that hides
/// above the ceiling does not. The areas add up to the room's.
pub fn height_shares(facts: &Facts, room: RoomIndex) -> Vec<(Len, Area)> {
    let room = facts.room(room);
    let ceiling = facts.plan.site.ceiling_height();
    let mut over: Vec<&OverheadFacts> = hanging(facts, room).filter(|o| o.clear < ceiling).collect();
    over.sort_by_key(|o| (o.clear, o.id));
    let mut left = room.area;
    let mut rings: Vec<Ring> = Vec::new();
    let mut shares = Vec::new();
    for group in over.chunk_by(|a, b| a.clear == b.clear) {
        rings.extend(group.iter().map(|o| o.ring.clone()));
        let rest = area_without(&room.shape, &rings);
        if rest < left {
            shares.push((group[0].clear, left - rest));
        }
        left = rest;
    }
    if left > Area::ZERO {
        shares.push((ceiling, left));
    }
    shares
}

/// The floor of a room with at least a clear height.
pub fn area_at_least(facts: &Facts, room: RoomIndex, height: Len) -> Area {
    if facts.plan.site.ceiling_height() < height {
        return Area::ZERO;
    }
    let room = facts.room(room);
    let low: Vec<Ring> =
        hanging(facts, room).filter(|o| o.clear < height).map(|o| o.ring.clone()).collect();
    area_without(&room.shape, &low)
}

/// The least clear height over a region: the ceiling, or the lowest overhead that hangs over a part of
/// it. An overhead along its edge does not count.
pub fn clear_over(facts: &Facts, region: &Shape) -> Len {
    facts
        .overheads_near(region.bounds())
        .filter(|o| o.hangs_over(region))
        .map(|o| o.clear)
        .fold(facts.plan.site.ceiling_height(), Len::min)
}

fn area_without(shape: &Shape, rings: &[Ring]) -> Area {
    if rings.is_empty() {
        return shape.area();
    }
    overlay::shape_difference(std::slice::from_ref(shape), rings).iter().map(Shape::area).sum()
}

fn hanging<'a>(facts: &'a Facts, room: &'a Room) -> impl Iterator<Item = &'a OverheadFacts> {
    facts.overheads_near(room.shape.bounds()).filter(|o| o.hangs_over(&room.shape))
}

/// The lowest and the highest clear height in a room.
pub(crate) fn range(shape: &Shape, over: &[&OverheadFacts], ceiling: Len) -> (Len, Len) {
    let mut over: Vec<&OverheadFacts> =
        over.iter().copied().filter(|o| o.clear < ceiling && o.hangs_over(shape)).collect();
    over.sort_by_key(|o| (o.clear, o.id));
    let Some(first) = over.first() else { return (ceiling, ceiling) };
    let lowest = first.clear;
    // Only overheads that are together as large as the room can hide its whole ceiling.
    let twice: i128 = over.iter().map(|o| geometry::twice_area(&o.ring)).sum();
    if twice < 2 * shape.area().square_units() {
        return (lowest, ceiling);
    }
    let mut rings = Vec::new();
    for group in over.chunk_by(|a, b| a.clear == b.clear) {
        rings.extend(group.iter().map(|o| o.ring.clone()));
        if area_without(shape, &rings) == Area::ZERO {
            return (lowest, group[0].clear);
        }
    }
    (lowest, ceiling)
}

