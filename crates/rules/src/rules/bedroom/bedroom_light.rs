//! A sleeping room with too little glass for its floor.

use plan::element::RoomUse;
use space::Room;

use super::glazing::little_daylight;
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "bedroom-light",
    group: Group::BedroomOrOffice,
    title: "Daylight of a sleeping room",
    page: "\
What
A habitable room has glass of at least 8 % of its floor, and half as much of it opens; or artificial light and
mechanical ventilation stand in for them.

Why
Light to live by and air to breathe. Neither ever stands in for the escape opening.

Source
IRC R303.1 (2018, 2021), R325.1.1 and R325.1.2 (2024).

How it is measured
The frames of the windows in foundation walls of the room against the net floor. The glass is smaller than the frame, so
a room that falls short by its frames falls short for certain; one that just passes should be looked at. Other rooms to
live in have a rule of their own.

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
    if room.room_use == RoomUse::Bedroom {
        out.extend(little_daylight(sheet, room, RULE.slug));
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::{RoomUse, Window};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "bedroom-light";

    /// A room of 120 sq ft with a window frame of this size in its south wall.
    fn room(room_use: RoomUse, width: f64, height: f64) -> Sample {
        let sample = Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Guest room", room_use);
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
        room(RoomUse::Bedroom, 48.0, 48.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = room(RoomUse::Bedroom, 32.0, 18.0).edition(edition);
            sample.expect(SLUG, &["verify, measured 4.0 sq ft, required 9.6 sq ft"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // 8 % of 120 sq ft is 9.6 sq ft: 28.8 x 48 in, that is 36 x 38.4 in.
        room(RoomUse::Bedroom, 36.0, 38.40625).expect_none(SLUG);
        assert_eq!(room(RoomUse::Bedroom, 36.0, 38.390625).findings(SLUG).len(), 1);
        room(RoomUse::Bedroom, 32.0, 43.203125).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        room(RoomUse::Storage, 32.0, 18.0).expect_none(SLUG);
    }
}
