//! Where a garage meets the house.

use plan::element::RoomUse;
use space::{OpeningFacts, Room};

use crate::Sheet;

/// The doors between a garage and another room, each with that room.
pub(super) fn doors<'a>(
    sheet: &Sheet<'a>,
) -> impl Iterator<Item = (&'a OpeningFacts, &'a Room)> + use<'a> {
    let facts = sheet.facts;
    facts.openings.iter().filter(|o| facts.is_door(o.id)).filter_map(|opening| {
        let (left, right) = (facts.room(opening.left?), facts.room(opening.right?));
        match (is_garage(left), is_garage(right)) {
            (true, false) => Some((opening, right)),
            (false, true) => Some((opening, left)),
            _ => None,
        }
    })
}

pub(crate) fn is_garage(room: &Room) -> bool {
    room.room_use == RoomUse::Garage
}
