//! Shape of the handrail.

use plan::detail::Value;
use plan::detail::stair::RAIL_GRIP;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-rail-grip",
    group: Group::Stairs,
    title: "Shape of the handrail",
    page: "\
What
A handrail is round, 1 1/4 in to 2 in thick, or has a perimeter of 4 in to 6 1/4 in, or recesses for the fingers where
it is larger.

Why
A 2x4 on edge can be leaned on but not held.

Source
IRC R311.7.8.5 (2018, 2021); IRC R320.6 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The true section.

Exceptions
None.

Remedies
A rail of a graspable section.
",
    cites: &["stair-rail-grip"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &RAIL_GRIP, Value::Word("round, 1 1/4 to 2 in"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &RAIL_GRIP,
        fault: "Handrail that a hand can't grip",
        many: "stairs",
        why: "A 2x4 on edge can be leaned on but not held.",
        required: Quantity::Words("one that a hand closes on".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &RAIL_GRIP);
    judge(sheet, out, &sheet.book.cite("stair-rail-grip"), &demand, elements, |a| {
        a.is(&["round, 1 1/4 to 2 in", "profile with finger recesses"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "stair-rail-grip";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        sample().state(&RAIL_GRIP, Value::Word("round, 1 1/4 to 2 in")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong =
                sample().edition(edition).state(&RAIL_GRIP, Value::Word("flat board or larger"));
            wrong.expect(
                SLUG,
                &["correction, measured flat board or larger, required one that a hand closes on"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["round, 1 1/4 to 2 in", "profile with finger recesses"] {
            sample().state(&RAIL_GRIP, Value::Word(good)).expect_none(SLUG);
        }
        assert_eq!(
            sample().state(&RAIL_GRIP, Value::Word("flat board or larger")).findings(SLUG).len(),
            1
        );
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&RAIL_GRIP, Value::Word("flat board or larger"))
            .existing()
            .expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&RAIL_GRIP, Value::Word("flat board or larger"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
