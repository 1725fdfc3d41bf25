//! A habitable room that is too narrow.

use measure::{Area, Len};
use plan::element::RoomUse;
use space::Room;

use super::core::{holds, least_dimension};
use super::room_area::KITCHEN;
use super::uses::habitable;
use super::words::{capital, room_called, room_elements};
use crate::{Check, Finding, Group, Limit, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "room-dimension",
    group: Group::Rooms,
    title: "Least dimension of a habitable room",
    page: "\
What
A habitable room is at least 7 ft wide both ways.

Why
A longer room does not make up for one too narrow to use.

Source
IRC R304.2 (2018, 2021), R312.2 (2024).

How it is measured
Between the finished faces: the largest square, along and across the longest wall, that the floor holds. A room with a
narrow arm passes here when some part of it is wide enough; room-area then looks at that part alone.

Cannot see
Columns and furnishings: a column in the middle of a room is no wall.

Exceptions
Kitchens in 2018 and 2021; in 2024 they are marked to verify. Baths, closets, halls, storage, utility rooms and
workshops are not habitable.

Remedies
Move a partition.
",
    cites: &["room-dimension", "room-dimension-kitchen"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "A habitable room this narrow leaves no space beside a bed or a desk.";

/// The least dimension of a room with a use; `None` where it isn't habitable.
pub(crate) fn dimension_limit(sheet: &Sheet<'_>, room_use: RoomUse) -> Option<Limit<Len>> {
    match room_use {
        RoomUse::Kitchen => Some(sheet.book.len("room-dimension-kitchen")),
        _ if habitable(room_use) => Some(sheet.book.len("room-dimension")),
        _ => None,
    }
}

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    let Some(limit) = dimension_limit(sheet, room.room_use) else { return };
    if holds(sheet.facts, room.index, limit.value, Area::ZERO) {
        return;
    }
    let measured = least_dimension(sheet.facts, room.index, limit.value);
    let title = format!("{} is too narrow", capital(&room_called(room)));
    let finding = Finding::new(
        Severity::Correction,
        limit.citation,
        RULE.slug,
        room_elements(room),
        Phrase::text(title),
        WHY,
    )
    .figures(Quantity::Len(measured), Quantity::Len(limit.value))
    .at(Place::Floor(room.index));
    out.push(match room.room_use {
        RoomUse::Kitchen => finding.assuming(KITCHEN),
        _ => finding,
    });
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::element::RoomUse;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "room-dimension";

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
            let sample = room(RoomUse::Bedroom, 80.0, 150.0).edition(edition);
            sample.expect(SLUG, &["correction, measured 80\", required 84\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        room(RoomUse::Den, 84.0, 120.0).expect_none(SLUG);
        let short = (Len::inches(84) - Len::UNIT).to_inches();
        let sample = room(RoomUse::Den, short, 120.0);
        sample.expect(SLUG, &["correction, measured 83 15/16\", required 84\""]);
        // The same with a partition: 4 1/2 in thick, drawn in its middle.
        let beside = |x: f64| {
            Sample::room(200.0, 120.0).partition(at(x, 0.0), at(x, 120.0)).tag(
                at(20.0, 20.0),
                "Den",
                RoomUse::Den,
            )
        };
        beside(86.25).expect_none(SLUG);
        assert_eq!(beside(86.234375).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        for room_use in [RoomUse::Bath, RoomUse::Closet, RoomUse::Hall, RoomUse::Storage] {
            room(room_use, 60.0, 60.0).expect_none(SLUG);
        }
        room(RoomUse::Kitchen, 60.0, 60.0).edition(Edition::E2021).expect_none(SLUG);
        let kitchen = room(RoomUse::Kitchen, 60.0, 60.0).edition(Edition::E2024);
        kitchen.expect(SLUG, &["verify, measured 60\", required 84\""]);
    }

    #[test]
    fn a_room_with_a_narrow_arm_is_as_wide_as_its_widest_part() {
        let l = |wide: f64| {
            Sample::shell(&[
                at(0.0, 0.0),
                at(200.0, 0.0),
                at(200.0, 40.0),
                at(wide, 40.0),
                at(wide, 120.0),
                at(0.0, 120.0),
            ])
            .tag(at(20.0, 20.0), "Den", RoomUse::Den)
        };
        l(84.0).expect_none(SLUG);
        let narrow = l(83.5);
        narrow.expect(SLUG, &["correction, measured 83 1/2\", required 84\""]);
        assert_eq!(narrow.findings(SLUG)[0].measured, Some(crate::Quantity::Len(inch(83.5))));
    }
}
