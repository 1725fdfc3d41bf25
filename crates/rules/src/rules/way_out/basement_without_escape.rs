//! A basement with no opening that could serve as its way out.

use plan::House;
use plan::detail::site::ADDITION;

use super::bedroom_without_escape::lacking;
use super::candidate::candidates;
use super::choice::nearest;
use super::need::{Demand, basement_demand, bedrooms, no_basement};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "basement-without-escape",
    group: Group::WayOut,
    title: "Escape opening of the basement",
    page: "\
What
A basement has at least one escape opening, finished or not. The opening of a sleeping room serves, and
so does one in an unfinished part.

Why
The stair leads up into the house that may be burning.

Source
IRC R310.1 (2018, 2021), R319.1 (2024); for existing basements R310.6 (2018), R310.7 (2021), and in 2024
a section that was not seen.

How it is measured
Every window and door in a foundation wall is looked at, as for a sleeping room. A basement with a
sleeping room is judged by that room alone.

Cannot see
What the department asks of an
existing basement.

Exceptions
A basement used only for mechanical equipment of at most 200 sq ft: the net floor of all rooms together,
each of them tagged mechanical. Storm shelters (see escape-shelter-exception). A level that
is stated to count as a storey above grade, as many walk-outs do (IRC R202), is marked to verify. Altering an existing basement does not by itself call for an opening;
many departments ask for one once it is finished, so that is marked to verify. The new basement of an addition
needs one, unless it is reached from an existing basement that has one.

Remedies
None that is an edit of the plan alone: cutting a foundation wall needs a permit and often an engineer.
",
    cites: &["basement-escape", "basement-mechanical-only-area", "basement-alteration", "any-finish-escape", "addition-escape"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "In a fire the stair may be cut off, and it leads up into the house that burns.";
const WHY_ABOVE: &str = "A level that is a storey above grade is no basement, so that only its sleeping rooms need a \
                         way out; the department says which it is.";

const WHY_EXISTING: &str = "The model code lets an existing basement be until a sleeping room is made, but many \
                            departments ask for a way out whenever a basement is finished.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !bedrooms(sheet).is_empty() {
        return;
    }
    let existing = match basement_demand(sheet) {
        Demand::Required => false,
        Demand::LeftToTheOffice => true,
        Demand::None => return,
    };
    // In a new house the other rules judge what could serve; here nothing else speaks of it.
    let serves = match nearest(sheet, None) {
        Some((_, verdict)) => !existing || verdict.corrections == 0,
        None => false,
    };
    if serves {
        return;
    }
    let outside = candidates(sheet.facts, None);
    let (slug, why) = match (existing, sheet.plan().site.house) {
        (true, _) if no_basement(sheet) => ("basement-escape", WHY_ABOVE),
        (true, _) => ("basement-alteration", WHY_EXISTING),
        (false, House::New) => ("basement-escape", WHY),
        (false, House::Existing) if sheet.ask_site(&ADDITION).stated => ("addition-escape", WHY),
        (false, House::Existing) => ("any-finish-escape", WHY),
    };
    let measured = match outside.iter().any(|c| c.could_serve(sheet)) {
        true => "none that meets every demand",
        false => lacking(&outside),
    };
    let mut finding = Finding::new(
        Severity::Correction,
        sheet.book.cite(slug),
        RULE.slug,
        outside.iter().map(|c| c.facts.id).collect(),
        Phrase::text("The basement has no way out but the stair"),
        why,
    )
    .figures(
        Quantity::Words(measured.to_owned()),
        Quantity::Words("one escape opening".to_owned()),
    );
    for room in &sheet.facts.rooms {
        finding = finding.at(Place::Floor(room.index));
    }
    if existing {
        finding = finding.assuming(match no_basement(sheet) {
            true => "the department counts the level as a storey above grade",
            false => "the department lets an existing basement be: ask before you finish it",
        });
    }
    out.push(finding);
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::RoomUse;

    use crate::rules::way_out::sample::{good_window, window, with_window};
    use crate::testing::{Sample, at};

    const SLUG: &str = "basement-without-escape";
    const MISSING: &str = "correction, measured none, required one escape opening";

    fn basement(room_use: RoomUse) -> Sample {
        Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Room", room_use).new_house()
    }

    #[test]
    fn clear_pass() {
        with_window(basement(RoomUse::FamilyRoom), good_window()).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            basement(RoomUse::FamilyRoom).edition(edition).expect(SLUG, &[MISSING]);
            basement(RoomUse::Unfinished).edition(edition).expect(SLUG, &[MISSING]);
        }
    }

    #[test]
    fn where_any_finish_asks_for_one_an_existing_house_is_no_exception() {
        let finished = |place: &'static str| {
            let room = Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Room", RoomUse::FamilyRoom);
            room.site(move |s| s.place = place.to_owned())
        };
        finished("new-castle-county-de").expect(SLUG, &[MISSING]);
        let cited = &finished("new-castle-county-de").findings(SLUG)[0].citation;
        assert!(cited.text.starts_with("New Castle County, Delaware: "), "{cited:?}");
        finished("").expect(SLUG, &["verify, measured none, required one escape opening"]);
        with_window(finished("new-castle-county-de"), good_window()).expect_none(SLUG);
    }

    #[test]
    fn at_the_limit() {
        // 200 sq ft of mechanical room: 240 x 120 in.
        let mechanical = |width: f64| {
            Sample::room(width, 120.0)
                .tag(at(72.0, 60.0), "Furnace", RoomUse::Mechanical)
                .new_house()
        };
        mechanical(240.0).expect_none(SLUG);
        mechanical(240.015625).expect(SLUG, &[MISSING]);
    }

    #[test]
    fn does_not_apply() {
        // A small room carved out of a larger basement is not a basement used only for equipment.
        let carved = Sample::room(480.0, 120.0)
            .partition(at(100.0, 0.0), at(100.0, 120.0))
            .tag(at(50.0, 60.0), "Furnace", RoomUse::Mechanical)
            .tag(at(300.0, 60.0), "Rest", RoomUse::Unfinished)
            .new_house();
        carved.expect(SLUG, &[MISSING]);
        // The sleeping room's own rule speaks instead.
        basement(RoomUse::Bedroom).expect_none(SLUG);
        Sample::blank().new_house().expect_none(SLUG);
    }

    #[test]
    fn an_existing_basement_is_left_to_the_office_once_it_is_finished() {
        let existing = |room_use| Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Room", room_use);
        for edition in Edition::ALL {
            existing(RoomUse::Unfinished).edition(edition).expect_none(SLUG);
            existing(RoomUse::FamilyRoom)
                .edition(edition)
                .expect(SLUG, &["verify, measured none, required one escape opening"]);
        }
        let small = with_window(existing(RoomUse::FamilyRoom), window(20.0, 20.0));
        let short = "verify, measured none that meets every demand, required one escape opening";
        small.expect(SLUG, &[short]);
        with_window(existing(RoomUse::FamilyRoom), good_window()).expect_none(SLUG);
    }

    #[test]
    fn the_new_basement_of_an_addition_needs_one() {
        use plan::detail::{Value, site::ADDITION};
        let addition = |word| {
            let room = Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Room", RoomUse::Unfinished);
            room.state_site(&ADDITION, Value::Word(word))
        };
        for edition in Edition::ALL {
            addition("new basement").edition(edition).expect(SLUG, &[MISSING]);
            addition("new, old one has an opening").edition(edition).expect_none(SLUG);
            addition("no").edition(edition).expect_none(SLUG);
        }
        with_window(addition("new basement"), good_window()).expect_none(SLUG);
    }

    #[test]
    fn a_level_that_is_no_basement_is_left_to_the_office() {
        use plan::detail::{Value, site::ABOVE_GRADE};
        let walk_out = basement(RoomUse::FamilyRoom).state_site(&ABOVE_GRADE, Value::Yes);
        walk_out.expect(SLUG, &["verify, measured none, required one escape opening"]);
        assert_eq!(
            walk_out.findings(SLUG)[0].assumed,
            ["the department counts the level as a storey above grade"]
        );
        with_window(walk_out, good_window()).expect_none(SLUG);
    }
}
