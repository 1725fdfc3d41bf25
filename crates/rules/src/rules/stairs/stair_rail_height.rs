//! Height of the handrail.

use plan::detail::stair::RAIL_HEIGHT;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-rail-height",
    group: Group::Stairs,
    title: "Height of the handrail",
    page: "\
What
The top of a handrail is 34 in to 38 in above the line of the nosings.

Why
A hand falls to a rail at that height without being told.

Source
IRC R311.7.8.1 (2018, 2021); IRC R320.2 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The rail's course.

Exceptions
The start of the rail at a newel.

Remedies
Set the rail anew.
",
    cites: &["stair-rail-height-least", "stair-rail-height-most"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let (least, most) =
        (sheet.book.len("stair-rail-height-least"), sheet.book.len("stair-rail-height-most"));
    let range = least.value..=most.value;
    let demand = Demand {
        rule: RULE.slug,
        detail: &RAIL_HEIGHT,
        fault: "Handrail at the wrong height",
        many: "stairs",
        why: "A hand falls to a rail at that height without being told.",
        required: Quantity::Words("34 in to 38 in".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &RAIL_HEIGHT);
    judge(sheet, out, &sheet.book.cite("stair-rail-height-least"), &demand, elements, |a| {
        a.len().is_some_and(|len| range.contains(&len))
    });
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "stair-rail-height";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        sample().state(&RAIL_HEIGHT, Value::Length(Len::inches(34))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&RAIL_HEIGHT, Value::Length(Len::inches(38) + Len::inches(1)));
            wrong.expect(SLUG, &["correction, measured 39\", required 34 in to 38 in"]);
        }
    }

    #[test]
    fn at_the_limit() {
        for good in [Len::inches(34), Len::inches(38)] {
            sample().state(&RAIL_HEIGHT, Value::Length(good)).expect_none(SLUG);
        }
        for bad in [Len::inches(34) - Len::UNIT, Len::inches(38) + Len::UNIT] {
            let off = sample().state(&RAIL_HEIGHT, Value::Length(bad));
            assert_eq!(off.findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&RAIL_HEIGHT, Value::Length(Len::inches(38) + Len::inches(1)))
            .existing()
            .expect_none(SLUG);
    }
}
