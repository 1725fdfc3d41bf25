//! A bath without a receptacle.

use plan::element::{RoomUse, ServiceKind};
use space::Room;

use super::devices::{drawn, in_room, none_in_room, was_there};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "receptacle-bath",
    group: Group::Electrical,
    title: "A receptacle in a bath",
    page: "\
What
A bath has a receptacle within 3 ft of each basin.

Why
A dryer on an extension cord over a basin kills.

Source
NEC 210.52(D): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
A bath needs at least one receptacle. Baths are checked once the plan shows a receptacle.

Cannot see
Basins, and so the 3 ft; the circuit and its protection.

Exceptions
Rooms that were there before the work.

Remedies
Add a receptacle beside the basin, on a protected 20 A circuit.
",
    cites: &["receptacle-bath"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "A dryer on an extension cord over a basin kills.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    if !drawn(sheet, ServiceKind::Receptacle) {
        return;
    }
    if room.room_use != RoomUse::Bath || was_there(sheet, room) {
        return;
    }
    if !in_room(sheet, ServiceKind::Receptacle, room.index).is_empty() {
        return;
    }
    out.push(none_in_room(
        room,
        (RULE.slug, sheet.book.cite("receptacle-bath")),
        "has no receptacle",
        WHY,
    ));
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "receptacle-bath";
    const MISSING: &str = "correction, measured none, required one";

    /// A store with a receptacle, and a room beside it.
    fn beside(second: RoomUse) -> Sample {
        Sample::room(244.5, 120.0)
            .partition(at(122.25, 0.0), at(122.25, 120.0))
            .tag(at(60.0, 60.0), "West", RoomUse::Storage)
            .tag(at(180.0, 60.0), "East", second)
            .service(ServiceKind::Receptacle, at(60.0, 0.0), Facing::NORTH)
    }

    #[test]
    fn clear_pass() {
        beside(RoomUse::Bath)
            .service(ServiceKind::Receptacle, at(180.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            beside(RoomUse::Bath).edition(edition).expect(SLUG, &[MISSING]);
        }
    }

    #[test]
    fn at_the_limit() {
        let on = |facing, x: f64| {
            beside(RoomUse::Bath).service(ServiceKind::Receptacle, at(x, 60.0), facing)
        };
        on(Facing::EAST, 124.5).expect_none(SLUG);
        on(Facing::WEST, 120.0).expect(SLUG, &[MISSING]);
    }

    #[test]
    fn does_not_apply() {
        beside(RoomUse::Closet).expect_none(SLUG);
    }
}
