//! A room whose light has no wall control.

use plan::element::ServiceKind;
use space::Room;

use super::devices::{drawn, in_room, none_in_room, was_there};
use super::room_light::lit;
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "room-switch",
    group: Group::Electrical,
    title: "A switch for the light of each room",
    page: "\
What
The light of a habitable room, bath or hall has a wall control in the room.

Why
Who comes in finds the switch at the door, not in the dark.

Source
NEC 210.70(A): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
A switch on a wall that looks into the room. Rooms with a light are checked once the plan shows a switch.

Cannot see
Which light a switch controls, and an occupancy sensor in place of a switch: so the finding is to be verified.

Exceptions
A sensor with a manual override. Rooms that were there before the work.

Remedies
Add a switch on the latch side of the door.
",
    cites: &["room-light"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "Who comes in finds the switch at the door, not in the dark.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    if !drawn(sheet, ServiceKind::Switch) {
        return;
    }
    if room.tag.is_none() || !lit(room.room_use) || was_there(sheet, room) {
        return;
    }
    let has = |kind| !in_room(sheet, kind, room.index).is_empty();
    if !has(ServiceKind::Light) || has(ServiceKind::Switch) {
        return;
    }
    let finding = none_in_room(
        room,
        (RULE.slug, sheet.book.cite("room-light")),
        "has a light without a switch",
        WHY,
    );
    out.push(finding.assuming("no sensor or switch elsewhere controls the light"));
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "room-switch";
    const MISSING: &str = "verify, measured none, required one";

    /// Two lit rooms; the first has a switch.
    fn two(second: RoomUse) -> Sample {
        Sample::room(244.5, 120.0)
            .partition(at(122.25, 0.0), at(122.25, 120.0))
            .tag(at(60.0, 60.0), "West", RoomUse::Den)
            .tag(at(180.0, 60.0), "East", second)
            .service(ServiceKind::Light, at(60.0, 60.0), Facing::NORTH)
            .service(ServiceKind::Light, at(180.0, 60.0), Facing::NORTH)
            .service(ServiceKind::Switch, at(60.0, 0.0), Facing::NORTH)
    }

    #[test]
    fn clear_pass() {
        two(RoomUse::Bath)
            .service(ServiceKind::Switch, at(180.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            two(RoomUse::Bath).edition(edition).expect(SLUG, &[MISSING]);
        }
    }

    #[test]
    fn at_the_limit() {
        // One on the partition serves the side that it looks to.
        let on =
            |facing, x: f64| two(RoomUse::Bath).service(ServiceKind::Switch, at(x, 60.0), facing);
        on(Facing::EAST, 124.5).expect_none(SLUG);
        on(Facing::WEST, 120.0).expect(SLUG, &[MISSING]);
    }

    #[test]
    fn does_not_apply() {
        two(RoomUse::Storage).expect_none(SLUG);
    }
}
