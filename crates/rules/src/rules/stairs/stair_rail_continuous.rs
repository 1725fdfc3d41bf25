//! Continuous handrail with returned ends.

use plan::detail::Value;
use plan::detail::stair::RAIL_WHOLE;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-rail-continuous",
    group: Group::Stairs,
    title: "Continuous handrail with returned ends",
    page: "\
What
A handrail runs without a break from above the highest to above the lowest riser, and its ends turn to a wall, a post
or a safe end.

Why
Sleeves and bags catch on an open end, and a fall begins where the rail ends.

Source
IRC R311.7.8.4 (2018, 2021); IRC R320.5 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The rail's course.

Exceptions
Newels at a turn; a starting easing or volute over the lowest tread.

Remedies
Extend the rail; return its ends.
",
    cites: &["stair-rail-continuous"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &RAIL_WHOLE, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &RAIL_WHOLE,
        fault: "Handrail broken off or with open ends",
        many: "stairs",
        why: "Sleeves and bags catch on an open end, and a fall begins where the rail ends.",
        required: Quantity::Words("in one run, ends returned".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &RAIL_WHOLE);
    judge(sheet, out, &sheet.book.cite("stair-rail-continuous"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "stair-rail-continuous";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        sample().state(&RAIL_WHOLE, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&RAIL_WHOLE, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required in one run, ends returned"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The usual is assumed until it is stated otherwise.
        sample().expect_none(SLUG);
        assert_eq!(sample().state(&RAIL_WHOLE, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&RAIL_WHOLE, Value::No).existing().expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&RAIL_WHOLE, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
