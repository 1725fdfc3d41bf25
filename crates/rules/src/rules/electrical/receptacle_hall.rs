//! A long hall without a receptacle.

use plan::element::{RoomUse, ServiceKind};
use space::Room;

use super::devices::{drawn, in_room, was_there};
use crate::rules::rooms::words::{capital, room_called, room_elements};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "receptacle-hall",
    group: Group::Electrical,
    title: "A receptacle in a long hall",
    page: "\
What
A hall of 10 ft or more has at least one receptacle.

Why
A vacuum cleaner or a night light is otherwise fed from a room's outlet, across a doorway.

Source
NEC 210.52(H): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
A hall that is a rectangle by its longer side. The code follows the centreline, so another shape is marked to
verify. Halls are checked once the plan shows a receptacle.

Cannot see
The centreline of a hall with corners.

Exceptions
The length ends at a doorway. Halls that were there before the work.

Remedies
Add a receptacle.
",
    cites: &["receptacle-hall"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str =
    "A vacuum cleaner or a night light is otherwise fed from a room's outlet, across a doorway.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    if !drawn(sheet, ServiceKind::Receptacle) {
        return;
    }
    if room.room_use != RoomUse::Hall || was_there(sheet, room) {
        return;
    }
    let limit = sheet.book.len("receptacle-hall");
    let length = room.clear.0.max(room.clear.1);
    if length < limit.value || !in_room(sheet, ServiceKind::Receptacle, room.index).is_empty() {
        return;
    }
    let title = format!("{} has no receptacle", capital(&room_called(room)));
    let finding = Finding::new(
        Severity::Correction,
        limit.citation,
        RULE.slug,
        room_elements(room),
        Phrase::text(title),
        WHY,
    )
    .figures(
        Quantity::Words("none".to_owned()),
        Quantity::Words("one in a hall of 10 ft or more".to_owned()),
    )
    .at(Place::Label(room.index));
    let rectangle = room.shape.outer.len() == 4 && room.shape.holes.is_empty();
    out.push(match rectangle {
        true => finding,
        false => finding.assuming("the hall is as long as the box round it"),
    });
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "receptacle-hall";
    const MISSING: &str = "correction, measured none, required one in a hall of 10 ft or more";

    /// A hall of `length` by 4 ft beside a store with a receptacle.
    fn hall(length: f64) -> Sample {
        Sample::room(length, 150.0)
            .partition(at(0.0, 50.25), at(length, 50.25))
            .tag(at(20.0, 20.0), "Hall", RoomUse::Hall)
            .tag(at(20.0, 100.0), "Store", RoomUse::Storage)
            .service(ServiceKind::Receptacle, at(20.0, 150.0), Facing::SOUTH)
    }

    #[test]
    fn clear_pass() {
        hall(200.0)
            .service(ServiceKind::Receptacle, at(60.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            hall(200.0).edition(edition).expect(SLUG, &[MISSING]);
        }
    }

    #[test]
    fn at_the_limit() {
        // "10 ft or more": at 10 ft one is needed, one unit less needs none. AX15: 9 ft 8 in needs none.
        hall(120.0).expect(SLUG, &[MISSING]);
        let unit = 1.0 / 8128.0;
        hall(120.0 - unit).expect_none(SLUG);
        hall(116.0).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        let bare = Sample::room(200.0, 48.0).tag(at(20.0, 20.0), "Hall", RoomUse::Hall);
        bare.expect_none(SLUG);
    }
}
