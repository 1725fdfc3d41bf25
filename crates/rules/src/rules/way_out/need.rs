//! Where an escape opening is needed: each sleeping room, or else the basement as a whole.

use measure::Area;
use plan::detail::room::{SLEEPING_LOFT, STORM_SHELTER};
use plan::detail::site::{ABOVE_GRADE, ADDITION};
use plan::detail::stair::STAIR_KIND;
use plan::element::{BodyKind, RoomUse};
use plan::{House, State};
use space::{Room, RoomIndex};

use super::candidate::{Candidate, candidates};
use super::choice::verdict;
use crate::rules::rooms::uses::habitable;
use crate::{Severity, Sheet};

/// One place that needs an escape opening.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Need {
    /// The sleeping room; `None` for the basement as a whole.
    pub room: Option<RoomIndex>,
    /// The gravest that a finding here may be.
    pub gravest: Severity,
}

/// Everything that needs an escape opening of its own by the model code.
///
/// A sleeping room's opening serves the basement too, so that a basement with sleeping rooms has no
/// need beside theirs.
pub(crate) fn needs(sheet: &Sheet<'_>) -> Vec<Need> {
    let bedrooms = bedrooms(sheet);
    if bedrooms.is_empty() {
        return match basement_demand(sheet) {
            Demand::Required => vec![Need { room: None, gravest: Severity::Correction }],
            Demand::LeftToTheOffice | Demand::None => vec![],
        };
    }
    match sprinkler_exception(sheet) {
        // The opening that the exception rests on is looked at as closely as any other.
        Some(SprinklerPath::StairAndOpening) => {
            vec![Need { room: None, gravest: Severity::Correction }]
        }
        Some(SprinklerPath::TwoWaysOut) => vec![],
        None => bedrooms,
    }
}

/// Those needs for which there is any opening that leads outdoors.
pub(crate) fn with_openings(sheet: &Sheet<'_>) -> Vec<Need> {
    let mut needs = sheet.needs().to_vec();
    needs.retain(|need| !candidates(sheet.facts, need.room).is_empty());
    needs
}

/// Each sleeping room with the gravest finding that it allows. A storm shelter is none.
pub(super) fn bedrooms(sheet: &Sheet<'_>) -> Vec<Need> {
    sheet
        .facts
        .rooms
        .iter()
        .filter(|r| (r.room_use == RoomUse::Bedroom || lofty(sheet, r)) && !is_shelter(sheet, r))
        .map(|r| Need { room: Some(r.index), gravest: gravest(sheet, r) })
        .collect()
}

/// Whether a detail of a room's tag is stated so.
fn yes(sheet: &Sheet<'_>, room: &Room, detail: &'static plan::detail::Detail) -> bool {
    let tag = room.tag.and_then(|id| sheet.plan().get(id));
    tag.is_some_and(|tag| sheet.ask(tag, detail).yes() == Some(true))
}

/// Whether a room is stated to be a storm shelter.
pub(super) fn is_shelter(sheet: &Sheet<'_>, room: &Room) -> bool {
    yes(sheet, room, &STORM_SHELTER)
}

/// Whether a loft to sleep in opens to a room, in an edition that counts it.
fn lofty(sheet: &Sheet<'_>, room: &Room) -> bool {
    sheet.book.count("loft-escape").value == 1 && yes(sheet, room, &SLEEPING_LOFT)
}

/// A room that was a bedroom before the work, in a house that stands, is left to the office.
fn gravest(sheet: &Sheet<'_>, room: &Room) -> Severity {
    let was_there = room
        .tag
        .and_then(|id| sheet.plan().get(id))
        .is_some_and(|tag| tag.state == State::Existing);
    if was_there && sheet.plan().site.house == House::Existing {
        Severity::Verify
    } else {
        Severity::Correction
    }
}

/// Whether a basement without sleeping rooms needs an escape opening.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Demand {
    Required,
    /// The model code lets an existing basement be, but many departments ask once it is finished.
    LeftToTheOffice,
    None,
}

pub(super) fn basement_demand(sheet: &Sheet<'_>) -> Demand {
    let rooms = &sheet.facts.rooms;
    if rooms.is_empty() || only_excused(sheet) {
        return Demand::None;
    }
    if sheet.plan().site.house == House::Existing {
        let addition = sheet.ask_site(&ADDITION);
        if addition.is(&["new basement"]) {
            return Demand::Required;
        }
        if addition.is(&["new, old one has an opening"]) {
            return Demand::None;
        }
    }
    match sheet.plan().site.house {
        _ if no_basement(sheet) => Demand::LeftToTheOffice,
        House::New => Demand::Required,
        House::Existing if rooms.iter().any(|r| habitable(r.room_use)) => {
            match sheet.book.count("any-finish-escape").value {
                0 => Demand::LeftToTheOffice,
                _ => Demand::Required,
            }
        }
        House::Existing => Demand::None,
    }
}

/// Whether it is stated that the department counts the level as a storey above grade.
pub(super) fn no_basement(sheet: &Sheet<'_>) -> bool {
    sheet.ask_site(&ABOVE_GRADE).yes() == Some(true)
}

/// A basement of storm shelters and of rooms for mechanical equipment only, and those small.
pub(crate) fn only_excused(sheet: &Sheet<'_>) -> bool {
    let others = || sheet.facts.rooms.iter().filter(|r| !is_shelter(sheet, r));
    let mechanical = |r: &Room| r.room_use == RoomUse::Mechanical;
    others().all(mechanical)
        && others().map(|r| r.area).sum::<Area>()
            <= sheet.book.area("basement-mechanical-only-area").value
}

/// How a sprinklered basement meets the condition of the exception for its sleeping rooms.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum SprinklerPath {
    /// A way out and an escape opening beside it.
    StairAndOpening,
    TwoWaysOut,
}

/// The exception for sleeping rooms in a sprinklered basement, where its condition is met.
pub(super) fn sprinkler_exception(sheet: &Sheet<'_>) -> Option<SprinklerPath> {
    if !sheet.plan().site.sprinklers {
        return None;
    }
    let all = candidates(sheet.facts, None);
    let serves = |c: &&Candidate<'_>| c.could_serve(sheet) && verdict(sheet, c).corrections == 0;
    let stairs = sheet
        .facts
        .standing(&[BodyKind::Stair])
        .filter(|e| !sheet.ask(e, &STAIR_KIND).is(&["under a bulkhead"]))
        .count();
    let doors = all.iter().filter(|c| c.window().is_none()).filter(serves).count();
    let openings = all.iter().filter(serves).count();
    if stairs + doors >= 2 {
        Some(SprinklerPath::TwoWaysOut)
    } else if stairs + doors == 1 && openings > doors {
        Some(SprinklerPath::StairAndOpening)
    } else {
        None
    }
}
