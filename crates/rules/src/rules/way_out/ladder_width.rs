//! Inside width of a well ladder.

use plan::detail::opening::LADDER_WIDTH;

use crate::rules::stated::{Demand, fitting, judge};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "ladder-width",
    group: Group::WayOut,
    title: "Inside width of a well ladder",
    page: "\
What
A ladder in a well is at least 12 in wide inside its rails.

Why
Both feet must stand on a rung.

Source
IRC R310.4.2.1 (2018, 2021); IRC R319.4.2.1 (2024).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The shape of the rungs.

Exceptions
Steps in the place of a ladder (well-steps).

Remedies
A wider ladder.
",
    cites: &["ladder-width"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("ladder-width");
    let demand = Demand {
        rule: RULE.slug,
        detail: &LADDER_WIDTH,
        fault: "Ladder too narrow",
        many: "ladders",
        why: "Both feet must stand on a rung.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = fitting(sheet, &LADDER_WIDTH);
    judge(sheet, out, &sheet.book.cite("ladder-width"), &demand, elements, |a| {
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

    const SLUG: &str = "ladder-width";

    fn sample() -> Sample {
        Sample::with_well(true)
    }

    #[test]
    fn clear_pass() {
        sample().state(&LADDER_WIDTH, Value::Length(Len::inches(12))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&LADDER_WIDTH, Value::Length(Len::sixty_fourths(736)));
            wrong.expect(SLUG, &["correction, measured 11 1/2\", required 12\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&LADDER_WIDTH, Value::Length(Len::inches(12))).expect_none(SLUG);
        let short = sample().state(&LADDER_WIDTH, Value::Length(Len::inches(12) - Len::UNIT));
        assert_eq!(short.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
