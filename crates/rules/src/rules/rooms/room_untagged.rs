//! A room without a tag.

use super::words::room_elements;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};
use space::Room;

pub(crate) const RULE: Rule = Rule {
    slug: "room-untagged",
    group: Group::Rooms,
    title: "Room without a tag",
    page: "\
What
Every room carries a tag with its name and use.

Why
What a room must have depends on its use; a room without a tag is taken for unfinished and hardly checked. The permit
desk asks for the use of every room.

Source
Drawing practice.

How it is measured
Enclosed floors of at least 10 sq ft; smaller ones are taken for chases.

Cannot see
What the room is meant for.

Exceptions
None.

Remedies
Put a room tag in it.
",
    cites: &["room-named", "room-named-area"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "Without a tag the room is taken for unfinished and hardly checked, and the permit desk asks for its use.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    let least = sheet.book.area("room-named-area").value;
    if room.tag.is_some() || room.area < least {
        return;
    }
    out.push(
        Finding::new(
            Severity::Advice,
            sheet.book.cite("room-named"),
            RULE.slug,
            room_elements(room),
            Phrase::text("A room of ").area(room.area).then(" has no tag"),
            WHY,
        )
        .figures(Quantity::Words("no tag".into()), Quantity::Words("name and use".into()))
        .at(Place::Floor(room.index)),
    );
}

#[cfg(test)]
mod tests {
    use plan::element::RoomUse;

    use crate::testing::{Sample, at};

    const SLUG: &str = "room-untagged";
    const ADVICE: &str = "advice, measured no tag, required name and use";

    #[test]
    fn clear_pass() {
        Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Den", RoomUse::Den).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        Sample::room(144.0, 120.0).expect(SLUG, &[ADVICE]);
        let two = Sample::room(240.0, 120.0).partition(at(120.0, 0.0), at(120.0, 120.0)).tag(
            at(60.0, 60.0),
            "Den",
            RoomUse::Den,
        );
        two.expect(SLUG, &[ADVICE]);
    }

    #[test]
    fn at_the_limit() {
        // 10 sq ft is 36 x 40 in; anything less is taken for a chase.
        Sample::room(36.0, 40.0).expect(SLUG, &[ADVICE]);
        Sample::room(36.0, 39.984375).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::blank().expect_none(SLUG);
    }
}
