//! A room without a light.

use plan::detail::electrical::LIVE;
use plan::element::{RoomUse, ServiceKind};
use space::Room;

use super::devices::{drawn, in_room, none_in_room, was_there};
use crate::rules::rooms::uses::habitable;
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "room-light",
    group: Group::Electrical,
    title: "A light in each room",
    page: "\
What
Each habitable room, bath and hall has at least one light with a wall control.

Why
A basement is dark by day as well, and the way out leads through it.

Source
NEC 210.70(A): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
A light whose middle lies over the room's floor, or that hangs on its wall. Rooms are checked once the plan shows
a light.

Cannot see
Which light a switch controls. A receptacle counts in place of a light once it is stated that it is switched at the wall;
until then a habitable room other than a kitchen is marked to verify.

Exceptions
In habitable rooms other than kitchens a switched receptacle stands in for the light. Rooms that were there before
the work.

Remedies
Add a light.
",
    cites: &["room-light"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "A basement is dark by day as well, and the way out leads through it.";

/// Whether the code asks for a light in a room of this use.
pub(super) fn lit(room_use: RoomUse) -> bool {
    habitable(room_use) || matches!(room_use, RoomUse::Bath | RoomUse::Hall)
}

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    if !drawn(sheet, ServiceKind::Light) {
        return;
    }
    if room.tag.is_none() || !lit(room.room_use) || was_there(sheet, room) {
        return;
    }
    if !in_room(sheet, ServiceKind::Light, room.index).is_empty() {
        return;
    }
    let finding =
        none_in_room(room, (RULE.slug, sheet.book.cite("room-light")), "has no light", WHY);
    let by_receptacle = habitable(room.room_use) && room.room_use != RoomUse::Kitchen;
    let switched = in_room(sheet, ServiceKind::Receptacle, room.index)
        .iter()
        .any(|(e, _)| sheet.ask(e, &LIVE).is(&["switched at the wall"]));
    if by_receptacle && switched {
        return;
    }
    out.push(match by_receptacle {
        true => finding.assuming("no receptacle of the room is switched in place of a light"),
        false => finding,
    });
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "room-light";

    /// Two rooms; the first has a light.
    fn two(second: RoomUse) -> Sample {
        Sample::room(244.5, 120.0)
            .partition(at(122.25, 0.0), at(122.25, 120.0))
            .tag(at(60.0, 60.0), "West", RoomUse::Den)
            .tag(at(180.0, 60.0), "East", second)
            .service(ServiceKind::Light, at(60.0, 60.0), Facing::NORTH)
    }

    #[test]
    fn clear_pass() {
        two(RoomUse::Bath)
            .service(ServiceKind::Light, at(180.0, 60.0), Facing::NORTH)
            .expect_none(SLUG);
    }

    #[test]
    fn a_switched_receptacle_stands_in_but_in_a_kitchen_or_bath() {
        use plan::detail::Value;
        let switched = |room_use| {
            two(room_use)
                .service(ServiceKind::Receptacle, at(180.0, 0.0), Facing::NORTH)
                .state(&LIVE, Value::Word("switched at the wall"))
        };
        switched(RoomUse::Den).expect_none(SLUG);
        assert_eq!(switched(RoomUse::Kitchen).findings(SLUG).len(), 1);
        assert_eq!(switched(RoomUse::Bath).findings(SLUG).len(), 1);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let none = |severity: &str| format!("{severity}, measured none, required one");
            two(RoomUse::Bath).edition(edition).expect(SLUG, &[&none("correction")]);
            two(RoomUse::Kitchen).edition(edition).expect(SLUG, &[&none("correction")]);
            two(RoomUse::Office).edition(edition).expect(SLUG, &[&none("verify")]);
        }
    }

    #[test]
    fn at_the_limit() {
        // One light is enough, and one on the wall counts for the side that it looks to.
        let wall = two(RoomUse::Bath)
            .service(ServiceKind::Light, at(124.5, 60.0), Facing::EAST)
            .tune_service(|s| s.mount = plan::element::Mount::Wall);
        wall.expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        two(RoomUse::Storage).expect_none(SLUG);
        Sample::room(120.0, 120.0).tag(at(60.0, 60.0), "Bath", RoomUse::Bath).expect_none(SLUG);
    }
}
