//! Which height a use demands, by edition and by whether the house stands already.

use measure::Len;
use plan::House;
use plan::element::RoomUse;

use crate::rules::rooms::uses::{habitable, wet};
use crate::{Limit, Severity, Sheet};

/// A height that a room must have.
#[derive(Clone, Debug)]
pub(crate) struct HeightLimit {
    pub limit: Limit<Len>,
    /// The gravest that a finding may be.
    pub gravest: Severity,
}

/// The least ceiling height of a use; `None` where nothing is asked: an unfinished part of a basement that
/// is there already is left as it is.
pub(crate) fn ceiling_limit(sheet: &Sheet<'_>, room_use: RoomUse) -> Option<HeightLimit> {
    let slug = ceiling_slug(sheet.plan().site.house, room_use)?;
    Some(HeightLimit { limit: sheet.book.len(slug), gravest: gravest(sheet, room_use) })
}

fn ceiling_slug(house: House, room_use: RoomUse) -> Option<&'static str> {
    Some(match (house, room_use) {
        (House::New, u) if wet(u) => "ceiling-wet",
        (House::Existing, u) if wet(u) => "ceiling-existing-wet",
        (House::New, u) if habitable(u) || u == RoomUse::Hall => "ceiling-habitable",
        (House::Existing, RoomUse::Hall) => "ceiling-existing-hall",
        (House::Existing, u) if habitable(u) => "ceiling-existing-habitable",
        (House::Existing, RoomUse::Unfinished) => return None,
        _ => "ceiling-other",
    })
}

/// The least height under beams, ducts and other obstructions; `None` as for the ceiling.
pub(crate) fn projection_limit(sheet: &Sheet<'_>, room_use: RoomUse) -> Option<HeightLimit> {
    let site = &sheet.plan().site;
    ceiling_slug(site.house, room_use)?;
    let living = sheet.facts.rooms.iter().any(|r| habitable(r.room_use)) || habitable(room_use);
    let slug = match site.house {
        _ if !living => "projection-other",
        House::New => "projection",
        House::Existing => "projection-existing",
    };
    Some(HeightLimit { limit: sheet.book.len(slug), gravest: gravest(sheet, room_use) })
}

/// Closets are commonly let be, and so is what isn't lived in where the house stands already.
fn gravest(sheet: &Sheet<'_>, room_use: RoomUse) -> Severity {
    let lived_in = habitable(room_use) || wet(room_use) || room_use == RoomUse::Hall;
    let existing = sheet.plan().site.house == House::Existing;
    if room_use == RoomUse::Closet || (existing && !lived_in) {
        Severity::Verify
    } else {
        Severity::Correction
    }
}

/// What a finding rests on where it is left to the office.
pub(super) const LET_BE: &str = "the office holds a room that is not lived in to this height";
