//! An unfinished portion or a laundry without a receptacle.

use plan::detail::electrical::SERVES;
use plan::element::{RoomUse, ServiceKind};
use space::Room;

use super::devices::{drawn, live_in_room, none_in_room};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "receptacle-portion",
    group: Group::Electrical,
    title: "A receptacle in each unfinished portion and laundry",
    page: "\
What
Each separate unfinished portion of a basement has at least one receptacle, beside those for specific equipment;
so has each laundry area. Where a new partition splits the unfinished floor in two, each part needs its own.

Why
Work in the dark corner behind the new wall is otherwise done on an extension cord through a door.

Source
NEC 210.52(F) and (G)(3): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
By rooms: unfinished, mechanical and laundry. Rooms are checked once the plan shows a receptacle.

Cannot see
The receptacles that are not drawn. What is stated of one, that it is for one machine, for an alarm or not always live, is
taken as stated.

Exceptions
None in the text.

Remedies
Add a receptacle.
",
    cites: &["receptacle-portion"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "Work behind the new wall is otherwise done on an extension cord through a door.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    if !drawn(sheet, ServiceKind::Receptacle) {
        return;
    }
    let portion = |u| matches!(u, RoomUse::Unfinished | RoomUse::Mechanical | RoomUse::Laundry);
    if room.tag.is_none() || !portion(room.room_use) {
        return;
    }
    // In a laundry that of the machine is the one that is asked for.
    let counts = |e: &plan::Element| match room.room_use {
        RoomUse::Laundry => !sheet.ask(e, &SERVES).is(&["a fire or burglar alarm"]),
        _ => sheet.ask(e, &SERVES).is(&["general use"]),
    };
    if live_in_room(sheet, room.index).iter().any(|(e, _)| counts(e)) {
        return;
    }
    out.push(none_in_room(
        room,
        (RULE.slug, sheet.book.cite("receptacle-portion")),
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

    const SLUG: &str = "receptacle-portion";
    const MISSING: &str = "correction, measured none, required one";

    /// Two rooms of 10 ft by 10 ft; the first has a receptacle.
    fn two(second: RoomUse) -> Sample {
        Sample::room(244.5, 120.0)
            .partition(at(122.25, 0.0), at(122.25, 120.0))
            .tag(at(60.0, 60.0), "West", RoomUse::Unfinished)
            .tag(at(180.0, 60.0), "East", second)
            .service(ServiceKind::Receptacle, at(60.0, 0.0), Facing::NORTH)
    }

    #[test]
    fn clear_pass() {
        two(RoomUse::Unfinished)
            .service(ServiceKind::Receptacle, at(180.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        // AX14: two separate unfinished rooms with one receptacle in total.
        for edition in Edition::ALL {
            two(RoomUse::Unfinished).edition(edition).expect(SLUG, &[MISSING]);
            two(RoomUse::Laundry).edition(edition).expect(SLUG, &[MISSING]);
        }
    }

    #[test]
    fn at_the_limit() {
        // One on the partition serves the side that it looks to.
        let west = two(RoomUse::Mechanical);
        let on =
            |facing, x: f64| west.clone().service(ServiceKind::Receptacle, at(x, 60.0), facing);
        on(Facing::EAST, 124.5).expect_none(SLUG);
        on(Facing::WEST, 120.0).expect(SLUG, &[MISSING]);
    }

    #[test]
    fn one_for_a_single_machine_does_not_count_but_in_a_laundry() {
        use plan::detail::Value;
        let east = |room_use, serves: &'static str| {
            two(room_use)
                .service(ServiceKind::Receptacle, at(180.0, 0.0), Facing::NORTH)
                .state(&SERVES, Value::Word(serves))
        };
        east(RoomUse::Unfinished, "general use").expect_none(SLUG);
        east(RoomUse::Unfinished, "one machine that stays").expect(SLUG, &[MISSING]);
        east(RoomUse::Laundry, "one machine that stays").expect_none(SLUG);
        east(RoomUse::Laundry, "a fire or burglar alarm").expect(SLUG, &[MISSING]);
    }

    #[test]
    fn does_not_apply() {
        two(RoomUse::Storage).expect_none(SLUG);
        Sample::room(120.0, 120.0)
            .tag(at(60.0, 60.0), "All", RoomUse::Unfinished)
            .expect_none(SLUG);
    }
}
