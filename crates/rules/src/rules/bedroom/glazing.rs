//! Glass of a room against its floor.

use measure::{Area, Len};
use space::{Facts, Room};

use crate::{Limit, Sheet};

/// The frames of the windows of a room that lead outdoors: the glass is smaller.
pub(super) fn frames(facts: &Facts, room: &Room) -> Area {
    facts
        .openings
        .iter()
        .filter(|o| o.outside && o.rooms().any(|r| r == room.index))
        .filter_map(|o| match &facts.plan.get(o.id)?.body {
            plan::Body::Opening(opening) => opening.window(),
            _ => None,
        })
        .map(|w| Area::of_rect(w.frame_width.max(Len::ZERO), w.frame_height.max(Len::ZERO)))
        .sum()
}

/// The least glass of a room, rounded up.
pub(super) fn limit(sheet: &Sheet<'_>, room: &Room) -> Limit<Area> {
    let percent = sheet.book.count("room-glazing-percent");
    let hundredfold = room.area.square_units() * i128::from(percent.value);
    Limit { value: Area::from_square_units((hundredfold + 99) / 100), citation: percent.citation }
}
