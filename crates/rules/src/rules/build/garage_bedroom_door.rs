//! A door from a garage to a bedroom.

use plan::element::RoomUse;

use super::garage::doors;
use crate::rules::rooms::words::{called, capital, room_called};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "garage-bedroom-door",
    group: Group::Build,
    title: "Door between a garage and a bedroom",
    page: "\
What
No opening leads from a garage straight into a sleeping room.

Why
Exhaust and fire from a car reach who sleeps first.

Source
IRC R302.5.1: 2018 to 2024.

How it is measured
Every door and cased opening between a room that is used as a garage and one that is a bedroom.

Cannot see
Windows and grilles between them.

Exceptions
None.

Remedies
A door to a hall instead, or another use of the room.
",
    cites: &["garage-bedroom-door"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "Exhaust and fire from a car reach who sleeps first.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (door, room) in doors(sheet).filter(|(_, room)| room.room_use == RoomUse::Bedroom) {
        let title = format!(
            "{} leads from a garage to {}",
            capital(&called(sheet, door.id)),
            room_called(room)
        );
        let citation = sheet.book.cite("garage-bedroom-door");
        let words = |text: &str| Quantity::Words(text.to_owned());
        out.push(
            Finding::new(
                Severity::Correction,
                citation,
                RULE.slug,
                vec![door.id],
                Phrase::text(title),
                WHY,
            )
            .figures(words("garage to bedroom"), words("no opening"))
            .at(Place::Along(door.id)),
        );
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "garage-bedroom-door";

    /// A garage in the west, a room of this use in the east, and a door between them.
    fn beside(room_use: RoomUse) -> Sample {
        let sample = Sample::room(240.0, 120.0)
            .tag(at(60.0, 60.0), "Garage", RoomUse::Garage)
            .tag(at(180.0, 60.0), "Room", room_use)
            .partition(at(120.0, 0.0), at(120.0, 120.0));
        let wall = sample.last();
        sample.door(wall, 40.0, 32.0)
    }

    #[test]
    fn clear_pass() {
        beside(RoomUse::Hall).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            beside(RoomUse::Bedroom)
                .edition(edition)
                .expect(SLUG, &["correction, measured garage to bedroom, required no opening"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // A wall without a door between them is enough.
        Sample::room(240.0, 120.0)
            .tag(at(60.0, 60.0), "Garage", RoomUse::Garage)
            .tag(at(180.0, 60.0), "Room", RoomUse::Bedroom)
            .partition(at(120.0, 0.0), at(120.0, 120.0))
            .expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::with_room(RoomUse::Bedroom).expect_none(SLUG);
    }
}
