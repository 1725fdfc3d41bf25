//! Stand-off of the rungs of a well ladder.

use plan::detail::opening::RUNGS_OFF_WALL;

use crate::rules::stated::{Demand, fitting, judge};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "ladder-stand-off",
    group: Group::WayOut,
    title: "Stand-off of the rungs of a well ladder",
    page: "\
What
The rungs of a well ladder stand at least 3 in off the wall.

Why
A foot needs room behind the rung.

Source
IRC R310.4.2.1 (2018, 2021); IRC R319.4.2.1 (2024).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
How the ladder is fixed.

Exceptions
Steps in the place of a ladder (well-steps).

Remedies
A ladder with more stand-off.
",
    cites: &["ladder-stand-off"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("ladder-stand-off");
    let demand = Demand {
        rule: RULE.slug,
        detail: &RUNGS_OFF_WALL,
        fault: "Rungs too close to the wall",
        many: "ladders",
        why: "A foot needs room behind the rung.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = fitting(sheet, &RUNGS_OFF_WALL);
    judge(sheet, out, &sheet.book.cite("ladder-stand-off"), &demand, elements, |a| {
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

    const SLUG: &str = "ladder-stand-off";

    fn sample() -> Sample {
        Sample::with_well(true)
    }

    #[test]
    fn clear_pass() {
        sample().state(&RUNGS_OFF_WALL, Value::Length(Len::inches(3))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&RUNGS_OFF_WALL, Value::Length(Len::sixty_fourths(160)));
            wrong.expect(SLUG, &["correction, measured 2 1/2\", required 3\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&RUNGS_OFF_WALL, Value::Length(Len::inches(3))).expect_none(SLUG);
        let short = sample().state(&RUNGS_OFF_WALL, Value::Length(Len::inches(3) - Len::UNIT));
        assert_eq!(short.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
