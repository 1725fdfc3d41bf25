//! Work in a house of the time of lead paint.

use plan::detail::site::YEAR_BUILT;
use plan::{House, State};

use super::{advice, is_finished};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "old-house",
    group: Group::Fitness,
    title: "Lead and asbestos in an older house",
    page: "\
What
Before anything is cut, sanded or torn out in a house built before 1978, paint is tested for lead; old floor tile, pipe covering
and ceiling texture are tested for asbestos.

Why
The dust harms children for life, and nobody sees it.

Source
The federal renovation rule for houses built before 1978; a companion to the radon standards for suspect asbestos.

How it is measured
By the stated year, where something is removed or built; until it is stated, where something of a standing house is removed.

Cannot see
Paint and tile.

Exceptions
Work on less than 6 sq ft of paint in a room (from memory).

Remedies
Accredited people test and remove it.
",
    cites: &["old-house"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "The dust harms children for life, and nobody sees it.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.count("old-house");
    let year = sheet.ask_site(&YEAR_BUILT).number();
    if year.is_some_and(|year| year >= limit.value) {
        return;
    }
    // Until the year is stated, it is asked for where something of a standing house is torn out.
    if year.is_none() && !(removes(sheet) && sheet.plan().site.house == House::Existing) {
        return;
    }
    let work = sheet.plan().elements().iter().any(|e| e.state != State::Existing);
    if !work || !(is_finished(sheet) || removes(sheet)) {
        return;
    }
    let built = year.map_or("year not stated".to_owned(), |year| format!("built {year}"));
    let figures = (built, format!("{} or later, or tested", limit.value));
    let title = "Test for lead and asbestos before you cut or tear out";
    out.push(advice(sheet, RULE.slug, limit.citation, title, WHY, figures));
}

/// Whether anything is torn out.
fn removes(sheet: &Sheet<'_>) -> bool {
    sheet.facts.anything_removed()
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "old-house";

    fn den(year: u32) -> Sample {
        Sample::with_room(RoomUse::Den).state_site(&YEAR_BUILT, Value::Number(year))
    }

    #[test]
    fn clear_pass() {
        den(1995).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let old = den(1962).edition(edition);
            old.expect(SLUG, &["advice, measured built 1962, required 1978 or later, or tested"]);
        }
    }

    #[test]
    fn at_the_limit() {
        den(1978).expect_none(SLUG);
        assert_eq!(den(1977).findings(SLUG).len(), 1);
    }

    #[test]
    fn the_year_is_asked_for_where_something_is_torn_out() {
        let torn = Sample::with_room(RoomUse::Den)
            .partition(crate::testing::at(60.0, 0.0), crate::testing::at(60.0, 120.0))
            .tune(|e| e.state = State::Removed);
        torn.expect(SLUG, &["advice, measured year not stated, required 1978 or later, or tested"]);
        torn.new_house().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        // The year is not stated, or nothing is done.
        Sample::with_room(RoomUse::Den).expect_none(SLUG);
        den(1962).existing().expect_none(SLUG);
    }
}
