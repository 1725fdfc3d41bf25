//! Headroom in words and figures, for the window and the command line alike.

use std::sync::Arc;

use depict::RoomHeights;
use measure::{Area, Len, System};
use plan::Plan;
use rules::Book;
use space::Facts;

/// The headroom of every room.
pub fn of(facts: &Facts) -> Vec<RoomHeights> {
    let book = Book::of(&facts.plan.site);
    let rooms = facts.rooms.iter().map(|room| RoomHeights {
        room: room.index,
        regions: space::height_regions(facts, room.index),
        named: rules::named_heights(facts, &book, room.index),
    });
    rooms.collect()
}

/// The floor of a room with at least a clear height, and how many tenths of a percent of the room that is, rounded
/// down.
pub fn share(facts: &Facts, room: &RoomHeights, height: Len) -> (Area, i128) {
    let area = space::area_at_least(facts, room.room, height);
    let whole = facts.room(room.room).area.square_units().max(1);
    (area, area.square_units() * 1_000 / whole)
}

/// `92.5 %`.
pub fn percent(tenths: i128) -> String {
    match tenths % 10 {
        0 => format!("{} %", tenths / 10),
        tenth => format!("{}.{tenth} %", tenths / 10),
    }
}

/// The lowest clear height of a room with what makes it: `6' 11 1/2" under beam H10`.
pub fn lowest(plan: &Arc<Plan>, room: &RoomHeights, system: System) -> String {
    let Some(region) = room.regions.first() else { return String::new() };
    let height = system.len(region.clear, measure::Precision::Floor);
    let names: Vec<String> = region
        .under
        .iter()
        .filter_map(|id| plan.get(*id))
        .map(|e| format!("{} {}", e.body.word(), e.name()))
        .collect();
    match names.as_slice() {
        [] => format!("{height} to the ceiling"),
        names => format!("{height} under {}", names.join(", ")),
    }
}
