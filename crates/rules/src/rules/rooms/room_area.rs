//! A habitable room with too little floor.

use measure::Area;
use plan::element::RoomUse;
use space::Room;

use super::core::{core_area, holds};
use super::room_dimension::dimension_limit;
use super::uses::habitable;
use super::words::{capital, room_called, room_elements};
use crate::{Check, Finding, Group, Limit, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "room-area",
    group: Group::Rooms,
    title: "Floor area of a habitable room",
    page: "\
What
A room used for living, sleeping, eating or cooking has at least 70 sq ft of floor.

Why
A smaller room is a closet by any other name; the code wants room to live and to get about.

Source
IRC R304.1 (2018, 2021), R312.1 (2024).

How it is measured
The net floor between the finished faces, islands taken off. Where the room as a whole is large enough but the part
of it that is at least 7 ft wide both ways isn't, it is marked to verify: offices differ on whether narrow parts count.

Cannot see
Floor under a sloped ceiling lower than 5 ft. For soffits see room-area-under-low-ceiling.

Exceptions
Kitchens in 2018 and 2021. The 2024 text that was seen names no exception for them, so there they are marked to
verify. Baths, closets, halls, storage, utility rooms and workshops are not habitable.

Remedies
Move a partition.
",
    cites: &["room-area", "room-area-kitchen", "room-dimension", "room-dimension-kitchen"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "A habitable room needs floor to live and to get about on.";
const WHY_NARROW: &str = "Parts of the room are so narrow that an office may not count them, and the rest is too small by \
                          itself.";
pub(super) const KITCHEN: &str =
    "the 2024 code has no exception for kitchens: the text that was seen names none";

/// The least floor of a room with a use; `None` where it isn't habitable.
pub(crate) fn area_limit(sheet: &Sheet<'_>, room_use: RoomUse) -> Option<Limit<Area>> {
    match room_use {
        RoomUse::Kitchen => Some(sheet.book.area("room-area-kitchen")),
        _ if habitable(room_use) => Some(sheet.book.area("room-area")),
        _ => None,
    }
}

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    let Some(limit) = area_limit(sheet, room.room_use) else { return };
    if room.area < limit.value {
        out.push(finding(room, limit, room.area, "is too small", WHY));
    } else if let Some(width) = dimension_limit(sheet, room.room_use) {
        if holds(sheet.facts, room.index, width.value, limit.value) {
            return;
        }
        let wide = core_area(sheet.facts, room.index, width.value);
        // A room that is narrow all over is the matter of room-dimension.
        if wide > Area::ZERO {
            let fault = "is too small where it is wide";
            let finding = finding(room, limit, wide, fault, WHY_NARROW);
            out.push(finding.assuming("narrow parts of the room do not count"));
        }
    }
}

fn finding(room: &Room, limit: Limit<Area>, measured: Area, fault: &str, why: &str) -> Finding {
    let title = format!("{} {fault}", capital(&room_called(room)));
    let finding = Finding::new(
        Severity::Correction,
        limit.citation,
        RULE.slug,
        room_elements(room),
        Phrase::text(title),
        why,
    )
    .figures(Quantity::Area(measured), Quantity::Area(limit.value))
    .at(Place::Floor(room.index));
    match room.room_use {
        RoomUse::Kitchen => finding.assuming(KITCHEN),
        _ => finding,
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::RoomUse;

    use crate::testing::{Sample, at};

    const SLUG: &str = "room-area";

    fn room(room_use: RoomUse, width: f64, depth: f64) -> Sample {
        Sample::room(width, depth).tag(at(20.0, 20.0), "Den", room_use)
    }

    #[test]
    fn clear_pass() {
        room(RoomUse::Den, 144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = room(RoomUse::Den, 84.0, 108.0).edition(edition);
            sample.expect(SLUG, &["correction, measured 63.0 sq ft, required 70.0 sq ft"]);
        }
    }

    #[test]
    fn at_the_limit() {
        room(RoomUse::Den, 84.0, 120.0).expect_none(SLUG);
        assert_eq!(room(RoomUse::Den, 84.0, 119.984375).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        for room_use in [RoomUse::Bath, RoomUse::Closet, RoomUse::Hall, RoomUse::Storage] {
            room(room_use, 60.0, 60.0).expect_none(SLUG);
        }
    }

    #[test]
    fn kitchens_are_excepted_by_edition() {
        let kitchen = |edition| room(RoomUse::Kitchen, 60.0, 60.0).edition(edition);
        kitchen(Edition::E2018).expect_none(SLUG);
        kitchen(Edition::E2021).expect_none(SLUG);
        let verify = "verify, measured 25.0 sq ft, required 70.0 sq ft";
        kitchen(Edition::E2024).expect(SLUG, &[verify]);
    }

    #[test]
    fn an_l_shaped_room_counts_whole_but_is_verified_by_its_wide_part() {
        // 84 x 96 in (56 sq ft) with an arm 60 in wide to the east: 56 + 25 sq ft.
        let l = Sample::shell(&[
            at(0.0, 0.0),
            at(144.0, 0.0),
            at(144.0, 60.0),
            at(84.0, 60.0),
            at(84.0, 96.0),
            at(0.0, 96.0),
        ])
        .tag(at(20.0, 20.0), "Den", RoomUse::Den);
        l.expect(SLUG, &["verify, measured 56.0 sq ft, required 70.0 sq ft"]);
    }
}
