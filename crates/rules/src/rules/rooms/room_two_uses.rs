//! A room whose tags disagree about its use.

use plan::Body;
use plan::element::RoomUse;

use super::words::{capital, room_called};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "room-two-uses",
    group: Group::Rooms,
    title: "Room with tags of two uses",
    page: "\
What
Two tags in one room name different uses.

Why
Only the first tag speaks for the room: what the other use demands is not checked.

Source
Drawing practice: a permit drawing names the use of every room.

How it is measured
The tags inside one enclosed floor. The one with the lowest number speaks for the room.

Cannot see
Which part of the floor is meant for which use.

Exceptions
Two tags of one use.

Remedies
Close the two parts off from each other, with a wall, a door or a cased opening, or delete one tag.
",
    cites: &["room-named"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str =
    "Only the first tag speaks for the room, so what the other use demands is not checked.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for room in &sheet.facts.rooms {
        let other = |id: &plan::ElementId| match sheet.plan().get(*id).map(|e| &e.body) {
            Some(Body::RoomTag(tag)) if tag.room_use != room.room_use => Some(tag.room_use),
            _ => None,
        };
        let others: Vec<RoomUse> = room.more_tags.iter().filter_map(other).collect();
        let (Some(tag), false) = (room.tag, others.is_empty()) else { continue };
        let words: Vec<&str> =
            std::iter::once(room.room_use).chain(others).map(RoomUse::word).collect();
        let title = format!("{} is tagged with two uses", capital(&room_called(room)));
        let more = room.more_tags.iter().copied().filter(|id| other(id).is_some());
        let finding = Finding::new(
            Severity::Verify,
            sheet.book.cite("room-named"),
            RULE.slug,
            std::iter::once(tag).chain(more).collect(),
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Words(words.join(" and ")), Quantity::Words("one use".into()))
        .assuming(format!("the whole room is used as {}", room.room_use.word()))
        .at(Place::Floor(room.index));
        out.push(finding);
    }
}

#[cfg(test)]
mod tests {
    use plan::element::RoomUse;

    use crate::testing::{Sample, at};

    const SLUG: &str = "room-two-uses";

    fn tagged(first: RoomUse, second: RoomUse) -> Sample {
        Sample::room(240.0, 120.0).tag(at(60.0, 60.0), "West", first).tag(
            at(180.0, 60.0),
            "East",
            second,
        )
    }

    #[test]
    fn clear_pass() {
        tagged(RoomUse::Den, RoomUse::Den).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let verify = "verify, measured den and bedroom, required one use";
        tagged(RoomUse::Den, RoomUse::Bedroom).expect(SLUG, &[verify]);
    }

    #[test]
    fn at_the_limit() {
        // A wall between the two tags makes two rooms of it.
        let walled = tagged(RoomUse::Den, RoomUse::Bedroom);
        walled.partition(at(120.0, 0.0), at(120.0, 120.0)).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
