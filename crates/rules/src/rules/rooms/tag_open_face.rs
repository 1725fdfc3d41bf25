//! A room tag that stands in no room.

use plan::Body;
use plan::element::BodyKind;

use super::uses::habitable;
use super::words::called;
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "tag-open-face",
    group: Group::Rooms,
    title: "Room tag whose walls close no room",
    page: "\
What
The walls around a room tag don't close, or the tag stands in a wall or outside.

Why
Nothing about the room can be measured, so no other rule looks at it.

Source
Drawing practice: a permit drawing shows each room closed and named.

How it is measured
Walls, door lines and cased openings must enclose the tag.

Cannot see
Which of the walls around it was meant to close the room.

Exceptions
None. A room that isn't habitable gets advice instead.

Remedies
Draw the missing wall, lengthen one to the next, or move the tag.
",
    cites: &["room-closed"],
    check: Check::Plan(&[On::Kind(BodyKind::RoomTag)], check),
    remedies: None,
};

const WHY: &str = "The walls around this tag do not close a room, so nothing about it is checked.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for &id in &sheet.facts.loose_tags {
        let Some(Body::RoomTag(tag)) = sheet.plan().get(id).map(|e| &e.body) else { continue };
        let name = if tag.name.trim().is_empty() { called(sheet, id) } else { tag.name.clone() };
        let severity = if habitable(tag.room_use) { Severity::Verify } else { Severity::Advice };
        let finding = Finding::new(
            severity,
            sheet.book.cite("room-closed"),
            RULE.slug,
            vec![id],
            Phrase::text(format!("The walls around the tag of {name} do not close a room")),
            WHY,
        )
        .figures(Quantity::Words("open".into()), Quantity::Words("a closed room".into()))
        .at(Place::Point(tag.at));
        out.push(match severity {
            Severity::Verify => finding.assuming("the room meets what its use demands"),
            _ => finding,
        });
    }
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::element::RoomUse;

    use crate::testing::{Sample, at};

    const SLUG: &str = "tag-open-face";

    #[test]
    fn clear_pass() {
        Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Den", RoomUse::Den).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let open = |room_use| {
            Sample::blank().partition(at(0.0, 0.0), at(100.0, 0.0)).tag(
                at(50.0, 50.0),
                "Den",
                room_use,
            )
        };
        open(RoomUse::Den).expect(SLUG, &["verify, measured open, required a closed room"]);
        open(RoomUse::Storage).expect(SLUG, &["advice, measured open, required a closed room"]);
    }

    #[test]
    fn at_the_limit() {
        // A tag on the edge of the floor still stands in the room; one unit into the wall it doesn't.
        let edge = |x: Len| {
            let sample = Sample::room(144.0, 120.0).tag(at(0.0, 60.0), "Den", RoomUse::Den);
            sample.tune(|e| {
                if let plan::Body::RoomTag(tag) = &mut e.body {
                    tag.at.x = x.units();
                }
            })
        };
        edge(Len::ZERO).expect_none(SLUG);
        assert_eq!(edge(-Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
