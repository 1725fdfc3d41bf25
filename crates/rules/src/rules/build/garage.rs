//! Where a garage meets the house.

use plan::element::RoomUse;
use space::{OpeningFacts, Room};

use crate::Sheet;

/// The doors between a garage and another room, each with that room.
pub(super) fn doors<'a>(
    sheet: &Sheet<'a>,
) -> impl Iterator<Item = (&'a OpeningFacts, &'a Room)> + use<'a> {
    let facts = sheet.facts;
    let mut ids: Vec<_> =
        facts.rooms.iter().filter(|r| is_garage(r)).flat_map(|r| &r.openings).collect();
    ids.sort_unstable();
    ids.dedup();
    let openings = ids.into_iter().filter(|id| facts.is_door(**id));
    openings.filter_map(|id| facts.opening(*id)).filter_map(|opening| {
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
