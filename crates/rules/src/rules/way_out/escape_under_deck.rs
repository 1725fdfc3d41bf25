//! Height under a deck over an escape opening.

use plan::detail::opening::UNDER_DECK;

use crate::rules::stated::{Demand, fitting, judge};
use crate::{Finding, Group, Quantity, Rule, Sheet};

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
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The deck, and the way out from below it.

Exceptions
No deck.

Remedies
Take a part of the deck away, or choose another window.
",
    cites: &["escape-under-deck"],
    check,
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("escape-under-deck");
    let demand = Demand {
        rule: RULE.slug,
        detail: &UNDER_DECK,
        fault: "Too low under the deck",
        many: "windows",
        why: "One crawls out, and must be able to go on crawling.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = fitting(sheet, &UNDER_DECK);
    judge(sheet, out, &sheet.book.cite("escape-under-deck"), &demand, elements, |a| {
        a.len().is_some_and(|len| len >= limit.value)
    });
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "escape-under-deck";

    fn sample() -> Sample {
        Sample::with_well(false)
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
    }
}
