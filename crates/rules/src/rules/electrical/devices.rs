//! Which room an outlet, a light or an alarm belongs to.

use geometry::Pt;
use measure::Len;
use plan::detail::electrical::LIVE;
use plan::element::{Mount, ServiceKind, ServicePoint};
use plan::{Element, State};
use space::{Room, RoomIndex};

use crate::rules::rooms::words::{capital, room_called, room_elements};
use crate::{Citation, Finding, Phrase, Place, Quantity, Severity, Sheet};

/// From its wall to a point that is surely in its room.
const BEFORE: Len = Len::inches(4);

/// Every standing device of a kind.
pub(crate) fn of_kind<'a>(
    sheet: &Sheet<'a>,
    kind: ServiceKind,
) -> impl Iterator<Item = (&'a Element, &'a ServicePoint)> + use<'a> {
    sheet.services().filter(move |(_, s)| s.kind == kind)
}

/// Whether any device of a kind is drawn.
pub(crate) fn drawn(sheet: &Sheet<'_>, kind: ServiceKind) -> bool {
    of_kind(sheet, kind).next().is_some()
}

/// The room that a device serves: the one before it, or the one that it hangs or lies in.
pub(crate) fn room_of(sheet: &Sheet<'_>, point: &ServicePoint) -> Option<RoomIndex> {
    sheet.facts.room_at(match point.mount {
        Mount::Wall => point.at + point.facing.step(point.depth + BEFORE),
        Mount::Floor | Mount::Ceiling => middle(point),
    })
}

/// The middle of a device.
pub(crate) fn middle(point: &ServicePoint) -> Pt {
    point.placed().centre()
}

/// The devices of a kind in a room.
pub(crate) fn in_room<'a>(
    sheet: &Sheet<'a>,
    kind: ServiceKind,
    room: RoomIndex,
) -> Vec<(&'a Element, &'a ServicePoint)> {
    of_kind(sheet, kind).filter(|(_, s)| room_of(sheet, s) == Some(room)).collect()
}

/// The receptacles of a room that are always live and in reach: others don't count to those that a room must have.
pub(crate) fn live_in_room<'a>(
    sheet: &Sheet<'a>,
    room: RoomIndex,
) -> Vec<(&'a Element, &'a ServicePoint)> {
    let mut found = in_room(sheet, ServiceKind::Receptacle, room);
    found.retain(|(e, _)| sheet.ask(e, &LIVE).is(&["always"]));
    found
}

/// Whether a device of a kind is in a room or hall on the other side of one of the room's doors.
pub(crate) fn behind_door(sheet: &Sheet<'_>, kind: ServiceKind, room: &Room) -> bool {
    room.openings.iter().filter_map(|id| sheet.facts.opening(*id)).any(|door| {
        door.rooms().filter(|r| *r != room.index).any(|r| !in_room(sheet, kind, r).is_empty())
    })
}

/// The finding that a room has none of what it should have one of.
pub(super) fn none_in_room(
    room: &Room,
    (slug, citation): (&'static str, Citation),
    lacks: &str,
    why: &'static str,
) -> Finding {
    let title = format!("{} {lacks}", capital(&room_called(room)));
    Finding::new(
        Severity::Correction,
        citation,
        slug,
        room_elements(room),
        Phrase::text(title),
        why,
    )
    .figures(Quantity::Words("none".to_owned()), Quantity::Words("one".to_owned()))
    .at(Place::Point(room.label_at))
}

/// Whether a room was there before the work: its wiring is left as it is.
pub(crate) fn was_there(sheet: &Sheet<'_>, room: &Room) -> bool {
    room.tag.and_then(|id| sheet.plan().get(id)).is_some_and(|tag| tag.state == State::Existing)
}
