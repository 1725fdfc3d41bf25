//! A room to live in, other than a sleeping room, with too little glass for its floor.

use plan::element::RoomUse;
use space::Room;

use super::glazing::little_daylight;
use crate::rules::rooms::uses::habitable;
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "room-daylight",
    group: Group::BedroomOrOffice,
    title: "Daylight of a room to live in",
    page: "\
What
A habitable room has glass of at least 8 % of its floor, and half as much of it opens; or artificial light and
mechanical ventilation stand in for them.

Why
Light to live by and air to breathe.

Source
IRC R303.1 (2018, 2021), R325.1.1 and R325.1.2 (2024).

How it is measured
The frames of the windows in foundation walls of the room against the net floor. The glass is smaller than the frame, so
a room that falls short by its frames falls short for certain; one that just passes should be looked at. Sleeping rooms
have a rule of their own.

Cannot see
The glass itself, the part that opens.

Exceptions
A room borrows from the next one where openings without leaves take half of the common wall, a tenth of its floor and 25 sq ft:
then floors and glass of both count together (IRC R303.2, R325.1.3 in 2024). Artificial light of 6 footcandles at 30 in together with mechanical ventilation (2018, 2021); each for itself in 2024.
Marked to verify for that reason.

Remedies
A larger window, or light and ventilation.
",
    cites: &["room-glazing-percent", "borrow-wall", "borrow-floor", "borrow-area"],
    check: Check::Rooms(check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    if habitable(room.room_use) && room.room_use != RoomUse::Bedroom {
        out.extend(little_daylight(sheet, room, RULE.slug));
    }
}

#[cfg(test)]
mod tests {
    use plan::detail::Value;
    use plan::detail::room::{LAMPS, MECHANICAL_AIR};
    use plan::element::{RoomUse, Window};
    use plan::{Body, Edit, Edition};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "room-daylight";

    /// A room of 120 sq ft with a window frame of this size in its south wall.
    fn room(room_use: RoomUse, width: f64, height: f64) -> Sample {
        let sample = Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Den", room_use);
        let host = sample.facts().plan.elements().iter().next().expect("a wall").id;
        let window = Window {
            operation: plan::element::WindowOperation::Casement,
            frame_width: inch(width),
            frame_height: inch(height),
            clear: plan::element::ClearOpening::Estimated,
            sill: inch(30.0),
            grade: inch(20.0),
            well: None,
        };
        sample.window(host, 20.0, window)
    }

    #[test]
    fn clear_pass() {
        room(RoomUse::FamilyRoom, 48.0, 48.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = room(RoomUse::FamilyRoom, 32.0, 18.0).edition(edition);
            sample.expect(SLUG, &["verify, measured 4.0 sq ft, required 9.6 sq ft"]);
        }
    }

    #[test]
    fn lamps_stand_in_for_the_window() {
        let dark = |edition| room(RoomUse::FamilyRoom, 32.0, 18.0).edition(edition);
        let lit = |edition, air: Option<Value>| {
            let sample = dark(edition);
            let tag = sample.plan_elements().find(|e| matches!(e.body, Body::RoomTag(_)));
            let mut tag = tag.expect("a tag").clone();
            tag.details.set(&LAMPS, Some(Value::Yes));
            tag.details.set(&MECHANICAL_AIR, air);
            sample.edit(&Edit::Replace(tag)).findings(SLUG).len()
        };
        assert_eq!(lit(Edition::E2021, None), 1, "with mechanical air only");
        assert_eq!(lit(Edition::E2021, Some(Value::Yes)), 0);
        assert_eq!(lit(Edition::E2024, None), 0, "by themselves");
    }

    /// Two rooms of 10 x 10 ft, the eastern one with a window; an opening of this width, 96 in high, in the wall.
    fn beside_a_lit_one(opening: f64) -> Vec<crate::Finding> {
        let sample = Sample::room(244.5, 120.0)
            .site(|s| s.joist_underside = inch(96.0))
            .tag(at(60.0, 60.0), "Inner", RoomUse::Den)
            .tag(at(180.0, 60.0), "Outer", RoomUse::FamilyRoom);
        let south = sample.facts().plan.elements().iter().next().expect("a wall").id;
        let window = Window {
            operation: plan::element::WindowOperation::Casement,
            frame_width: inch(60.0),
            frame_height: inch(48.0),
            clear: plan::element::ClearOpening::Estimated,
            sill: inch(30.0),
            grade: inch(20.0),
            well: None,
        };
        let sample =
            sample.window(south, 160.0, window).partition(at(122.25, 0.0), at(122.25, 120.0));
        let wall = sample.last();
        let sample = sample
            .door(wall, 2.0, opening)
            .tune_door(|d| d.operation = plan::element::DoorOperation::Cased)
            .tune_door(|d| d.leaf_height = inch(90.0));
        sample.findings(SLUG)
    }

    #[test]
    fn a_room_borrows_through_half_of_the_wall() {
        // The wall is 120 x 96 in: half of it are 64 in of an opening 90 in high, and more than 25 sq ft.
        assert!(beside_a_lit_one(64.0).is_empty(), "{:?}", beside_a_lit_one(64.0));
        let short = beside_a_lit_one(63.9375);
        assert_eq!(short.len(), 1, "the inner room alone: {short:?}");
    }

    #[test]
    fn at_the_limit() {
        // 8 % of 120 sq ft is 9.6 sq ft: 28.8 x 48 in, that is 36 x 38.4 in.
        room(RoomUse::FamilyRoom, 36.0, 38.40625).expect_none(SLUG);
        assert_eq!(room(RoomUse::FamilyRoom, 36.0, 38.390625).findings(SLUG).len(), 1);
        room(RoomUse::FamilyRoom, 32.0, 43.203125).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        for room_use in [RoomUse::Storage, RoomUse::Bath, RoomUse::Bedroom] {
            room(room_use, 32.0, 18.0).expect_none(SLUG);
        }
    }
}
