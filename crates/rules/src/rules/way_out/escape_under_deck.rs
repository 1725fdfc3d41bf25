//! Height under a deck over an escape opening.

use plan::detail::opening::UNDER_DECK;

use super::candidate::Candidate;
use super::told::Told;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-under-deck",
    group: Group::WayOut,
    title: "Height under a deck over an escape opening",
    page: "\
What
An escape opening may lie under a deck or porch that leaves 36 in of height on the way to a yard or court.

Why
One crawls out, and must be able to go on crawling.

Source
IRC R310.2.4 (2018, 2021); IRC R319.2.4 (2024).

How it is measured
By what is stated of the opening that a need rests on; an opening that fails is not chosen where another serves. Until it is
stated, the usual is assumed and nothing is said.

Cannot see
The deck, and the way out from below it.

Exceptions
No deck.

Remedies
Take a part of the deck away, or choose another window.
",
    cites: &["escape-under-deck"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const TOLD: Told = Told {
    rule: RULE.slug,
    detail: &UNDER_DECK,
    fault: "is too low under its deck",
    why: "One crawls out, and must be able to go on crawling.",
};

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    let least = sheet.book.length(RULE.slug);
    TOLD.judge(sheet, candidate, |a| a.len().is_some_and(|len| len >= least))
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let required = Quantity::Len(sheet.book.length(RULE.slug));
    TOLD.check(sheet, out, &sheet.book.cite(RULE.slug), &required, judge);
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::rules::way_out::sample::{bedroom, good_window, with_window};
    use crate::testing::Sample;

    const SLUG: &str = "escape-under-deck";

    fn sample() -> Sample {
        bedroom(good_window())
    }

    #[test]
    fn clear_pass() {
        sample().state(&UNDER_DECK, Value::Length(Len::inches(36))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&UNDER_DECK, Value::Length(Len::sixty_fourths(2272)));
            wrong.expect(SLUG, &["correction, measured 35 1/2\", required 36\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&UNDER_DECK, Value::Length(Len::inches(36))).expect_none(SLUG);
        let short = sample().state(&UNDER_DECK, Value::Length(Len::inches(36) - Len::UNIT));
        assert_eq!(short.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // A second window serves as well: the other is nobody's way out.
        let wrong = sample().state(&UNDER_DECK, Value::Length(Len::inches(24)));
        with_window(wrong, good_window()).expect_none(SLUG);
    }
}
