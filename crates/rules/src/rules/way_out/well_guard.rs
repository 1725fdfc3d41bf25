//! Guard or cover of a deep well.

use plan::detail::Value;
use plan::detail::opening::WELL_GUARD;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "well-guard",
    group: Group::WayOut,
    title: "Guard or cover of a deep well",
    page: "\
What
Where people walk within 36 in of a drop of more than 30 in there is a guard. The code has no line of its own for
wells, and officials differ.

Why
People and dogs fall into wells in the dark.

Source
IRC R312.1.1 (2018, 2021); IRC R321.1.1 (2024).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The ground beside the well.

Exceptions
A cover that bears a person and comes off from inside serves in practice.

Remedies
A guard or a cover; ask the department which it accepts.
",
    cites: &["well-guard"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &WELL_GUARD, Value::Word("nobody walks there"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &WELL_GUARD,
        fault: "Deep well beside a walk without guard or cover",
        many: "windows",
        why: "People and dogs fall into wells in the dark.",
        required: Quantity::Words("a guard or a cover".to_owned()),
        advice: true,
    };
    let elements = fitting(sheet, &WELL_GUARD);
    judge(sheet, out, &sheet.book.cite("well-guard"), &demand, elements, |a| {
        a.is(&["nobody walks there", "guard or cover"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "well-guard";

    fn sample() -> Sample {
        Sample::with_well(false)
    }

    #[test]
    fn clear_pass() {
        sample().state(&WELL_GUARD, Value::Word("nobody walks there")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&WELL_GUARD, Value::Word("people walk there, nothing"));
            wrong.expect(
                SLUG,
                &["advice, measured people walk there, nothing, required a guard or a cover"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["nobody walks there", "guard or cover"] {
            sample().state(&WELL_GUARD, Value::Word(good)).expect_none(SLUG);
        }
        assert_eq!(
            sample()
                .state(&WELL_GUARD, Value::Word("people walk there, nothing"))
                .findings(SLUG)
                .len(),
            1
        );
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&WELL_GUARD, Value::Word("people walk there, nothing"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
