//! A bedroom that is reached through another bedroom only.

use plan::element::{BodyKind, RoomUse};
use space::Room;

use super::words::{capital, room_called, room_elements};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "private-way",
    group: Group::Rooms,
    title: "Way to a bedroom or bath through a bedroom",
    page: "\
What
A bedroom, and the only bath of the basement, is reached without going through another bedroom.

Why
Who sleeps in the first room is walked through, and who sleeps in the second has the first one's door in their way out.

Source
The housing code of single places; elsewhere common practice.

How it is measured
A room with this use all of whose doors and cased openings lead to bedrooms, or to closets and baths.

Cannot see
Stairs and outside doors inside the room lead out: a room with one is left alone.

Exceptions
A bath of one's own beside another bath that all reach.

Remedies
A door to the hall or a common room.
",
    cites: &["private-way"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

const WHY: &str = "Who sleeps in the first room is walked through, and who sleeps in the second has its door in the way out.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let baths = |r: &&Room| r.room_use == RoomUse::Bath;
    let only_bath = sheet.facts.rooms.iter().filter(baths).count() == 1;
    for room in &sheet.facts.rooms {
        let asked =
            room.room_use == RoomUse::Bedroom || (room.room_use == RoomUse::Bath && only_bath);
        if !asked || !through_bedrooms(sheet, room) {
            continue;
        }
        let name = capital(&room_called(room));
        let title = format!("{name} is reached through another bedroom");
        out.push(
            Finding::new(
                Severity::Advice,
                sheet.book.cite("private-way"),
                RULE.slug,
                room_elements(room),
                Phrase::text(title),
                WHY,
            )
            .figures(
                Quantity::Words("through a bedroom".to_owned()),
                Quantity::Words("a door to a hall or common room".to_owned()),
            )
            .at(Place::Label(room.index)),
        );
    }
}

/// Whether a room has doors, and every one leads to a bedroom, or to what leads nowhere further.
fn through_bedrooms(sheet: &Sheet<'_>, room: &Room) -> bool {
    let facts = sheet.facts;
    let doors = room.openings.iter().filter(|id| facts.is_door(**id));
    let mut bedroom = false;
    for door in doors.filter_map(|id| facts.opening(*id)) {
        if door.outside {
            return false;
        }
        match door.rooms().find(|r| *r != room.index).map(|r| facts.room(r).room_use) {
            Some(RoomUse::Bedroom) => bedroom = true,
            Some(RoomUse::Closet | RoomUse::Bath) => {}
            _ => return false,
        }
    }
    let stairs = sheet.facts.standing(&[BodyKind::Stair]).any(|e| match &e.body {
        plan::Body::Stair(stair) => room.shape.contains(stair.foot),
        _ => false,
    });
    bedroom && !stairs
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "private-way";

    /// Three rooms in a row, doors between, of these uses.
    fn row(uses: [RoomUse; 3]) -> Sample {
        let rooms = Sample::room(360.0, 120.0).partition(at(120.0, 0.0), at(120.0, 120.0));
        let first = rooms.last();
        let rooms = rooms.door(first, 40.0, 32.0).partition(at(240.0, 0.0), at(240.0, 120.0));
        let second = rooms.last();
        let rooms = rooms.door(second, 40.0, 32.0);
        [60.0, 180.0, 300.0]
            .into_iter()
            .zip(uses)
            .fold(rooms, |rooms, (x, room_use)| rooms.tag(at(x, 60.0), room_use.word(), room_use))
    }

    #[test]
    fn clear_pass() {
        row([RoomUse::Bedroom, RoomUse::Hall, RoomUse::Bedroom]).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            row([RoomUse::Hall, RoomUse::Bedroom, RoomUse::Bedroom]).edition(edition).expect(
                SLUG,
                &["advice, measured through a bedroom, required a door to a hall or common room"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // The only bath counts, one of two does not.
        let bath = row([RoomUse::Hall, RoomUse::Bedroom, RoomUse::Bath]);
        assert_eq!(bath.findings(SLUG).len(), 1);
        row([RoomUse::Bath, RoomUse::Hall, RoomUse::Bath]).expect_none(SLUG);
        let two = row([RoomUse::Bath, RoomUse::Bedroom, RoomUse::Bath]);
        assert_eq!(two.findings(SLUG).len(), 0);
    }

    #[test]
    fn does_not_apply() {
        row([RoomUse::Hall, RoomUse::Bedroom, RoomUse::Office]).expect_none(SLUG);
        // A stair in the room leads out.
        let stair = row([RoomUse::Hall, RoomUse::Bedroom, RoomUse::Bedroom]);
        stair.stair(at(300.0, 20.0), geometry::Facing::NORTH).expect_none(SLUG);
    }
}
