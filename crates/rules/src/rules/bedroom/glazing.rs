//! Glass of a room against its floor.

use measure::{Area, Len};
use plan::Edition;
use plan::detail::Value;
use plan::detail::opening::{GLASS_AREA, LEADS_TO};
use plan::detail::room::{LAMPS, MECHANICAL_AIR};
use plan::element::Window;
use space::{Facts, Room};

use super::borrowed::as_one;
use crate::rules::rooms::words::{capital, room_called, room_elements};
use crate::{Finding, Limit, Phrase, Place, Quantity, Severity, Sheet};

/// The frames of the windows of a room that lead outdoors: the glass is smaller.
pub(super) fn frames(facts: &Facts, room: &Room) -> Area {
    frames_of(facts, room, |_| true)
}

/// The glass of those that one looks for, or their frames where it is not stated. A window that is stated to look into a
/// garage, a porch or a crawl space gives no light of the outdoors.
pub(crate) fn frames_of(facts: &Facts, room: &Room, wanted: impl Fn(&Window) -> bool) -> Area {
    facts
        .openings_of(room.index)
        .filter(|o| o.outside)
        .filter_map(|o| facts.plan.get(o.id))
        .filter(|e| e.stated(&LEADS_TO) != Some(Value::Word("garage, porch or crawl space")))
        .filter_map(|e| match &e.body {
            plan::Body::Opening(opening) => Some((e, opening.window().filter(|w| wanted(w))?)),
            _ => None,
        })
        .map(|(e, w)| match e.stated(&GLASS_AREA).and_then(Value::number) {
            Some(inches) => Area::square_inch_hundredths(i128::from(inches) * 100),
            None => Area::of_rect(w.frame_width.max(Len::ZERO), w.frame_height.max(Len::ZERO)),
        })
        .sum()
}

const WHY: &str = "The windows are too small to light and air the room by themselves: it needs artificial light and \
                   mechanical ventilation instead, as the code describes them.";

/// The finding about a room whose frames are too small for its floor.
pub(super) fn little_daylight(
    sheet: &Sheet<'_>,
    room: &Room,
    slug: &'static str,
) -> Option<Finding> {
    let together = as_one(sheet, room);
    let limit = limit_of(sheet, &together);
    let measured = together.iter().map(|r| frames(sheet.facts, r)).sum();
    if measured >= limit.value || lit_and_aired(sheet, room) {
        return None;
    }
    let title = format!("{} has little daylight", capital(&room_called(room)));
    Some(
        Finding::new(
            Severity::Verify,
            limit.citation,
            slug,
            room_elements(room),
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Area(measured), Quantity::Area(limit.value))
        .assuming("artificial light and mechanical ventilation stand in for the window")
        .at(Place::Floor(room.index)),
    )
}

/// Whether lamps stand in for the window, as is stated at the room's tag: by themselves since 2024, before that
/// together with mechanical air.
fn lit_and_aired(sheet: &Sheet<'_>, room: &Room) -> bool {
    let Some(tag) = room.tag.and_then(|id| sheet.plan().get(id)) else { return false };
    let yes = |detail| sheet.ask(tag, detail).yes() == Some(true);
    let aired = sheet.book.edition() == Edition::E2024 || yes(&MECHANICAL_AIR);
    yes(&LAMPS) && aired
}

/// The least glass of rooms that count as one, rounded up.
pub(super) fn limit_of(sheet: &Sheet<'_>, rooms: &[&Room]) -> Limit<Area> {
    let percent = sheet.book.count("room-glazing-percent");
    let floor: i128 = rooms.iter().map(|room| room.area.square_units()).sum();
    let hundredfold = floor * i128::from(percent.value);
    Limit { value: Area::from_square_units((hundredfold + 99) / 100), citation: percent.citation }
}
