//! A closet that is too shallow to hang clothes in.

use plan::element::RoomUse;
use space::Room;

use super::least_dimension;
use super::words::{capital, room_called, room_elements};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "closet-depth",
    group: Group::Rooms,
    title: "Depth of a closet",
    page: "\
What
A closet is 24 in deep inside where clothes hang; coats need 28 in.

Why
Hangers in a shallower one stand against the door.

Source
Common practice; planning books name these figures.

How it is measured
The side of the largest square that the closet's floor holds.

Cannot see
What it is for: a closet for shelves may be shallower.

Exceptions
Closets that were there before the work.

Remedies
Move its front, or use it for shelves and set this aside.
",
    cites: &["closet-depth"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "Hangers in a closet this shallow stand against the door.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("closet-depth");
    if room.room_use != RoomUse::Closet {
        return;
    }
    let there = room.tag.and_then(|id| sheet.plan().get(id));
    if there.is_some_and(|tag| tag.state == plan::State::Existing) {
        return;
    }
    let depth = least_dimension(sheet.facts, room.index, limit.value);
    if depth >= limit.value {
        return;
    }
    let title = format!("{} is shallow for clothes", capital(&room_called(room)));
    out.push(
        Finding::new(
            Severity::Advice,
            limit.citation.clone(),
            RULE.slug,
            room_elements(room),
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Len(depth), Quantity::Len(limit.value))
        .at(Place::Floor(room.index)),
    );
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "closet-depth";

    fn closet(depth: f64) -> Sample {
        Sample::room(60.0, depth).tag(at(30.0, depth / 2.0), "Closet", RoomUse::Closet)
    }

    #[test]
    fn clear_pass() {
        closet(30.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let shallow = closet(18.0).edition(edition);
            shallow.expect(SLUG, &["advice, measured 18\", required 24\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        closet(Len::inches(24).to_inches()).expect_none(SLUG);
        assert_eq!(closet(24.0 - 1.0 / 64.0).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        closet(18.0).existing().expect_none(SLUG);
        let store = Sample::room(60.0, 18.0).tag(at(30.0, 9.0), "Store", RoomUse::Storage);
        store.expect_none(SLUG);
    }
}
