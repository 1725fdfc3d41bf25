//! Gap between handrail and wall.

use plan::detail::stair::RAIL_GAP;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-rail-gap",
    group: Group::Stairs,
    title: "Gap between handrail and wall",
    page: "\
What
There are at least 1 1/2 in between a handrail and the wall.

Why
Knuckles must pass.

Source
IRC R311.7.8.3 (2018, 2021); IRC R320.4 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
How rough the wall is.

Exceptions
None.

Remedies
Deeper brackets.
",
    cites: &["stair-rail-gap"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("stair-rail-gap");
    let demand = Demand {
        rule: RULE.slug,
        detail: &RAIL_GAP,
        fault: "Too little room behind the handrail",
        many: "stairs",
        why: "Knuckles must pass.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = new_work(sheet, &RAIL_GAP);
    judge(sheet, out, &sheet.book.cite("stair-rail-gap"), &demand, elements, |a| {
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

    const SLUG: &str = "stair-rail-gap";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        sample().state(&RAIL_GAP, Value::Length(Len::sixty_fourths(96))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong =
                sample().edition(edition).state(&RAIL_GAP, Value::Length(Len::sixty_fourths(64)));
            wrong.expect(SLUG, &["correction, measured 1\", required 1 1/2\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&RAIL_GAP, Value::Length(Len::sixty_fourths(96))).expect_none(SLUG);
        let short = sample().state(&RAIL_GAP, Value::Length(Len::sixty_fourths(96) - Len::UNIT));
        assert_eq!(short.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&RAIL_GAP, Value::Length(Len::sixty_fourths(64)))
            .existing()
            .expect_none(SLUG);
    }
}
