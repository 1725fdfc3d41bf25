//! A sleeping room or basement that rests on the exception for storm shelters.

use super::choice::{nearest, whose};
use super::need::{Need, is_shelter, only_excused};
use crate::rules::rooms::words::capital;
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};
use plan::element::RoomUse;

pub(crate) const RULE: Rule = Rule {
    slug: "escape-shelter-exception",
    group: Group::WayOut,
    title: "Room that rests on the exception for storm shelters",
    page: "\
What
A storm shelter needs no escape opening.

Why
A hole in its wall would undo it. Only a room that is built and marked as a shelter is meant.

Source
IRC R310.1 exception 1 (2018, 2021), R319.1 exception 2 (2024).

How it is measured
By what is stated at the room's tag. A sleeping room that is stated to be a shelter, and has no opening of its own, is
marked to verify; so is a shelter where no other part of the basement asks for an opening.

Cannot see
Whether the shelter meets its standard (ICC 500): its design papers and its sign say so.

Exceptions
None.

Remedies
Show the department the shelter's design, or take the statement back.
",
    cites: &["escape-shelter"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "The room has no escape opening and rests on being a storm shelter: only one that is built and marked \
                   as such is excused.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let alone = only_excused(sheet);
    for room in sheet.facts.rooms.iter().filter(|room| is_shelter(sheet, room)) {
        let rests = room.room_use == RoomUse::Bedroom || alone;
        let own = nearest(sheet, Some(room.index)).is_some_and(|(_, v)| v.corrections == 0);
        if !rests || own {
            continue;
        }
        let need = Need { room: Some(room.index), gravest: Severity::Verify };
        let title = format!("{} rests on the exception for shelters", capital(&whose(sheet, need)));
        out.push(
            Finding::new(
                Severity::Verify,
                sheet.book.cite("escape-shelter"),
                RULE.slug,
                room.tag.into_iter().collect(),
                Phrase::text(title),
                WHY,
            )
            .figures(
                Quantity::Words("a shelter, as stated".to_owned()),
                Quantity::Words("a shelter to ICC 500".to_owned()),
            )
            .assuming("the shelter meets its standard")
            .at(Place::Floor(room.index)),
        );
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::detail::room::STORM_SHELTER;
    use plan::element::RoomUse;

    use crate::rules::way_out::sample::{bare_bedroom, bedroom, good_window, with_window};
    use crate::testing::{Sample, at};

    const SLUG: &str = "escape-shelter-exception";
    const VERIFY: &str = "verify, measured a shelter, as stated, required a shelter to ICC 500";

    #[test]
    fn clear_pass() {
        // With an opening of its own it rests on nothing.
        with_window(bare_bedroom().state(&STORM_SHELTER, Value::Yes), good_window())
            .expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let shelter = bare_bedroom().state(&STORM_SHELTER, Value::Yes).edition(edition);
            shelter.expect(SLUG, &[VERIFY]);
            shelter.expect_none("bedroom-without-escape");
        }
    }

    #[test]
    fn at_the_limit() {
        // A shelter beside a den excuses the shelter, not the basement.
        let beside = |room_use| {
            Sample::room(360.0, 120.0)
                .partition(at(200.0, 0.0), at(200.0, 120.0))
                .tag(at(280.0, 60.0), "Rest", room_use)
                .tag(at(100.0, 60.0), "Shelter", RoomUse::Storage)
                .state(&STORM_SHELTER, Value::Yes)
                .new_house()
        };
        beside(RoomUse::Den).expect_none(SLUG);
        assert_eq!(beside(RoomUse::Den).findings("basement-without-escape").len(), 1);
        // A small mechanical room is excused too: nothing else asks for an opening.
        beside(RoomUse::Mechanical).expect(SLUG, &[VERIFY]);
        beside(RoomUse::Mechanical).expect_none("basement-without-escape");
    }

    #[test]
    fn does_not_apply() {
        bare_bedroom().expect_none(SLUG);
        bare_bedroom().state(&STORM_SHELTER, Value::No).expect_none(SLUG);
        bedroom(good_window()).expect_none(SLUG);
    }
}
