//! What a use demands of a room, and which of it is met.

use measure::{Area, Len};
use plan::House;
use plan::element::{RoomUse, ServiceKind};
use space::{Room, RoomIndex};

use super::bedroom_alarms::{Alarms, alarms};
use super::borrowed::as_one;
use super::glazing;
use crate::rules::electrical::devices::drawn;
use crate::rules::headroom::{HeightLimit, ceiling_limit, projection_limit};
use crate::rules::rooms::uses::habitable;
use crate::rules::rooms::{area_limit, dimension_limit, least_dimension, least_hall_width};
use crate::rules::way_out::{may_do_without, nearest};
use crate::{Citation, Limit, Quantity, Severity, Sheet};

/// Whether a demand is met.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Met {
    Yes,
    No,
    /// A fact is missing or estimated, or the text leaves it to the office.
    Unknown,
}

/// One thing that a use demands of a room.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Demand {
    /// What is demanded, in a few words: `Floor area`.
    pub text: String,
    pub met: Met,
    pub measured: Option<Quantity>,
    pub required: Option<Quantity>,
    pub citation: Citation,
}

impl Demand {
    fn new(text: &str, met: Met, citation: Citation) -> Demand {
        Demand { text: text.to_owned(), met, measured: None, required: None, citation }
    }

    fn figures(mut self, measured: Quantity, required: Quantity) -> Demand {
        self.measured = Some(measured);
        self.required = Some(required);
        self
    }
}

/// What a use demands of a room of the plan, whatever it is used as now: way out first, then size, height,
/// light and alarms.
pub fn demands(sheet: &Sheet<'_>, room: RoomIndex, room_use: RoomUse) -> Vec<Demand> {
    let room = sheet.facts.room(room);
    let mut all = Vec::new();
    if room_use == RoomUse::Bedroom {
        all.push(own_escape(sheet, room));
    } else if habitable(room_use) {
        all.push(basement_escape(sheet));
    }
    all.extend(area_limit(sheet, room_use).map(|limit| area(room, limit)));
    all.extend(dimension_limit(sheet, room_use).map(|limit| dimension(sheet, room, limit)));
    if room_use == RoomUse::Hall {
        all.push(hall(sheet, room));
    }
    let ceiling = ceiling_limit(sheet, room_use);
    all.extend(ceiling.map(|limit| height("Ceiling height", room.highest, limit)));
    let lowest = projection_limit(sheet, room_use);
    all.extend(lowest.map(|limit| height("Height under beams and ducts", room.lowest, limit)));
    if habitable(room_use) {
        all.push(light(sheet, room));
    }
    if room_use == RoomUse::Bath {
        let text = "Window of 3 sq ft, or exhaust fan to outdoors";
        all.push(Demand::new(text, Met::Unknown, sheet.book.cite("bath-vent")));
    }
    if room_use == RoomUse::Bedroom {
        let Alarms { inside, outside } = alarms(sheet, room);
        let (text, met) = match inside && outside {
            true => ("Smoke alarm in the room and outside it", Met::Yes),
            false => {
                ("Smoke alarm in the room and outside it (not both drawn: verify)", Met::Unknown)
            }
        };
        all.push(Demand::new(text, met, sheet.book.cite("bedroom-alarms")));
    } else if habitable(room_use) {
        let (text, met) = match drawn(sheet, ServiceKind::SmokeAlarm) {
            true => ("Smoke alarm on this storey", Met::Yes),
            false => ("Smoke alarm on this storey (not drawn: verify)", Met::Unknown),
        };
        all.push(Demand::new(text, met, sheet.book.cite("storey-alarm")));
    }
    all
}

fn own_escape(sheet: &Sheet<'_>, room: &Room) -> Demand {
    let (mut met, measured) = escape(sheet, Some(room.index));
    if met == Met::No && may_do_without(sheet, room) {
        met = Met::Unknown;
    }
    Demand::new("Escape opening of its own", met, sheet.book.cite("bedroom-escape"))
        .figures(measured, Quantity::Words("an opening that serves".to_owned()))
}

/// Any opening of the basement serves a room that isn't slept in.
fn basement_escape(sheet: &Sheet<'_>) -> Demand {
    let (mut met, measured) = escape(sheet, None);
    let existing = sheet.plan().site.house == House::Existing;
    if met == Met::No && existing {
        met = Met::Unknown;
    }
    let slug = if existing { "basement-alteration" } else { "basement-escape" };
    Demand::new("Escape opening of the basement", met, sheet.book.cite(slug))
        .figures(measured, Quantity::Words("an opening that serves".to_owned()))
}

/// Whether the nearest opening serves, and its name and clear area.
fn escape(sheet: &Sheet<'_>, room: Option<RoomIndex>) -> (Met, Quantity) {
    let Some((candidate, verdict)) = nearest(sheet, room) else {
        return (Met::No, Quantity::Words("none".to_owned()));
    };
    let met = match (verdict.corrections, verdict.verifies) {
        (0, 0) => Met::Yes,
        (0, _) => Met::Unknown,
        _ => Met::No,
    };
    (met, Quantity::Area(candidate.area()))
}

fn area(room: &Room, limit: Limit<Area>) -> Demand {
    let met = yes(room.area >= limit.value);
    Demand::new("Floor area", met, limit.citation)
        .figures(Quantity::Area(room.area), Quantity::Area(limit.value))
}

fn dimension(sheet: &Sheet<'_>, room: &Room, limit: Limit<Len>) -> Demand {
    let measured = least_dimension(sheet.facts, room.index, room.clear.0.min(room.clear.1));
    Demand::new("Least dimension", yes(measured >= limit.value), limit.citation)
        .figures(Quantity::Len(measured), Quantity::Len(limit.value))
}

fn hall(sheet: &Sheet<'_>, room: &Room) -> Demand {
    let limit = sheet.book.len("hall-width");
    let measured = least_hall_width(sheet.facts, room.index, room.clear.0.min(room.clear.1));
    Demand::new("Width of the hall", yes(measured >= limit.value), limit.citation)
        .figures(Quantity::Len(measured), Quantity::Len(limit.value))
}

fn height(text: &str, measured: Len, height: HeightLimit) -> Demand {
    let met = match measured >= height.limit.value {
        true => Met::Yes,
        false if height.gravest > Severity::Correction => Met::Unknown,
        false => Met::No,
    };
    Demand::new(text, met, height.limit.citation)
        .figures(Quantity::Len(measured), Quantity::Len(height.limit.value))
}

/// By the frames: the glass is smaller, and light and ventilation may stand in for it.
fn light(sheet: &Sheet<'_>, room: &Room) -> Demand {
    let together = as_one(sheet, room);
    let limit = glazing::limit_of(sheet, &together);
    let frames = together.iter().map(|r| glazing::frames(sheet.facts, r)).sum();
    let text = "Window glass of 8 % of the floor, or light and ventilation (frames measured)";
    Demand::new(text, Met::Unknown, limit.citation)
        .figures(Quantity::Area(frames), Quantity::Area(limit.value))
}

fn yes(met: bool) -> Met {
    if met { Met::Yes } else { Met::No }
}
