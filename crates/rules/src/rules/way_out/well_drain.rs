//! Drain of a well.

use plan::detail::Value;
use plan::detail::opening::WELL_DRAIN;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "well-drain",
    group: Group::WayOut,
    title: "Drain of a well",
    page: "\
What
A well drains to the foundation drain or another approved system.

Why
A well without a drain fills in a storm, and the window is the lowest way into the basement for the water.

Source
IRC R310.4.3 (2018, 2021); IRC R319.4.3 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, one finding asks for all such elements.

Cannot see
The drain and the soil.

Exceptions
A foundation on well-drained soil or a sand-gravel mixture of group I.

Remedies
Connect the well to the foundation drain, or have the soil classed.
",
    cites: &["well-drain"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &WELL_DRAIN, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &WELL_DRAIN,
        fault: "A well without a drain",
        many: "windows",
        why: "A well without a drain fills in a storm, and the window is the lowest way into the basement for the water.",
        required: Quantity::Words("drained".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &WELL_DRAIN);
    judge(sheet, out, &sheet.book.cite("well-drain"), &demand, elements, |a| a.yes() == Some(true));
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "well-drain";

    fn sample() -> Sample {
        Sample::with_well(false)
    }

    #[test]
    fn clear_pass() {
        sample().state(&WELL_DRAIN, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&WELL_DRAIN, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required drained"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Nothing is assumed: what is not stated is asked for, once.
        sample().expect(SLUG, &["verify, measured not stated, required drained"]);
        sample().state(&WELL_DRAIN, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&WELL_DRAIN, Value::No).existing().expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&WELL_DRAIN, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
