//! Which room an outlet, a light or an alarm belongs to.

use geometry::Pt;
use plan::detail::electrical::LIVE;
use plan::element::{BodyKind, Mount, ServiceKind, ServicePoint};
use plan::{Body, Element, State};
use space::{BEFORE_A_DEVICE, Room, RoomIndex};

use crate::rules::rooms::words::{capital, room_called, room_elements};
use crate::{Citation, Finding, Phrase, Place, Quantity, Severity, Sheet};

/// Every standing device of a kind.
pub(crate) fn of_kind<'s, 'a>(
    sheet: &'s Sheet<'a>,
    kind: ServiceKind,
) -> impl Iterator<Item = (&'a Element, &'a ServicePoint)> + use<'s, 'a> {
    sheet.devices().of_kind(kind).filter_map(|place| service_at(sheet, place))
}

/// The standing service points by kind, and by kind and room, by their places in the plan's list.
#[derive(Debug)]
pub(crate) struct Devices {
    by_kind: Vec<(u8, u32)>,
    by_room: Vec<(u8, RoomIndex, u32)>,
}

impl Devices {
    pub fn new(sheet: &Sheet<'_>) -> Devices {
        let places = sheet.facts.places(BodyKind::Service).iter().copied();
        let all: Vec<_> =
            places.filter_map(|place| Some((place, service_at(sheet, place)?.1))).collect();
        let mut by_kind: Vec<_> = all.iter().map(|(place, s)| (s.kind as u8, *place)).collect();
        by_kind.sort_unstable();
        let in_room =
            |(place, s): &(u32, &ServicePoint)| Some((s.kind as u8, room_of(sheet, s)?, *place));
        let mut by_room: Vec<_> = all.iter().filter_map(in_room).collect();
        by_room.sort_unstable();
        Devices { by_kind, by_room }
    }

    /// Looks up anew in which rooms some service points are.
    pub fn update(&mut self, sheet: &Sheet<'_>, places: &[u32]) {
        self.by_room.retain(|(.., place)| places.binary_search(place).is_err());
        for place in places {
            let standing = service_at(sheet, *place).filter(|(element, _)| element.stands());
            let Some((_, point)) = standing else { continue };
            if let Some(room) = room_of(sheet, point) {
                let entry = (point.kind as u8, room, *place);
                let at = self.by_room.partition_point(|other| *other < entry);
                self.by_room.insert(at, entry);
            }
        }
    }

    fn of_kind(&self, kind: ServiceKind) -> impl Iterator<Item = u32> {
        let first = self.by_kind.partition_point(|(k, _)| *k < kind as u8);
        let of_kind = self.by_kind[first..].iter().take_while(move |(k, _)| *k == kind as u8);
        of_kind.map(|(_, place)| *place)
    }

    fn in_room(&self, kind: ServiceKind, room: RoomIndex) -> impl Iterator<Item = u32> {
        let key = (kind as u8, room);
        let first = self.by_room.partition_point(|(kind, room, _)| (*kind, *room) < key);
        let in_room = self.by_room[first..].iter().take_while(move |(k, r, _)| (*k, *r) == key);
        in_room.map(|(.., place)| *place)
    }
}

/// The service points of some kinds, by their places in the plan's list, in rising order.
pub(crate) fn of_kinds(sheet: &Sheet<'_>, kinds: &[ServiceKind]) -> Vec<u32> {
    let mut places: Vec<u32> = kinds.iter().flat_map(|k| sheet.devices().of_kind(*k)).collect();
    places.sort_unstable();
    places
}

/// The service point at a place of the plan's list.
pub(crate) fn service_at<'a>(
    sheet: &Sheet<'a>,
    place: u32,
) -> Option<(&'a Element, &'a ServicePoint)> {
    match sheet.facts.element_at(place) {
        element @ Element { body: Body::Service(point), .. } => Some((element, point)),
        _ => None,
    }
}

/// Whether any device of a kind is drawn.
pub(crate) fn drawn(sheet: &Sheet<'_>, kind: ServiceKind) -> bool {
    of_kind(sheet, kind).next().is_some()
}

/// The room that a device serves: the one before it, or the one that it hangs or lies in.
pub(crate) fn room_of(sheet: &Sheet<'_>, point: &ServicePoint) -> Option<RoomIndex> {
    sheet.facts.room_at(match point.mount {
        Mount::Wall => point.at + point.facing.step(point.depth + BEFORE_A_DEVICE),
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
    let places = sheet.devices().in_room(kind, room);
    places.filter_map(|place| service_at(sheet, place)).collect()
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
    .at(Place::Label(room.index))
}

/// Whether a room was there before the work: its wiring is left as it is.
pub(crate) fn was_there(sheet: &Sheet<'_>, room: &Room) -> bool {
    room.tag.and_then(|id| sheet.plan().get(id)).is_some_and(|tag| tag.state == State::Existing)
}
