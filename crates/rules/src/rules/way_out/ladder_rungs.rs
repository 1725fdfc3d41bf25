//! Spacing of the rungs of a well ladder.

use plan::detail::opening::RUNGS_APART;

use crate::rules::stated::{Demand, fitting, judge};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "ladder-rungs",
    group: Group::WayOut,
    title: "Spacing of the rungs of a well ladder",
    page: "\
What
The rungs of a ladder in a well are at most 18 in apart, up the full height of the well.

Why
A child, or someone in smoke, must find the next rung with a foot.

Source
IRC R310.4.2.1 (2018, 2021); IRC R319.4.2.1 (2024).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
That the rungs go up the full height of the well.

Exceptions
Steps in the place of a ladder (well-steps).

Remedies
A ladder with closer rungs; take the figure from the maker's sheet.
",
    cites: &["ladder-rungs"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("ladder-rungs");
    let demand = Demand {
        rule: RULE.slug,
        detail: &RUNGS_APART,
        fault: "Rungs too far apart",
        many: "ladders",
        why: "A child, or someone in smoke, must find the next rung with a foot.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = fitting(sheet, &RUNGS_APART);
    judge(sheet, out, &sheet.book.cite("ladder-rungs"), &demand, elements, |a| {
        a.len().is_some_and(|len| len <= limit.value)
    });
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "ladder-rungs";

    fn sample() -> Sample {
        Sample::with_well(true)
    }

    #[test]
    fn clear_pass() {
        sample().state(&RUNGS_APART, Value::Length(Len::inches(18))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&RUNGS_APART, Value::Length(Len::sixty_fourths(1184)));
            wrong.expect(SLUG, &["correction, measured 18 1/2\", required 18\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&RUNGS_APART, Value::Length(Len::inches(18))).expect_none(SLUG);
        let over = sample().state(&RUNGS_APART, Value::Length(Len::inches(18) + Len::UNIT));
        assert_eq!(over.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
