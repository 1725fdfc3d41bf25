//! Projection of the handrail.

use plan::detail::stair::RAIL_PROJECTION;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-rail-projection",
    group: Group::Stairs,
    title: "Projection of the handrail",
    page: "\
What
A handrail projects at most 4 1/2 in from the wall.

Why
It narrows the stair for shoulders and loads.

Source
IRC R311.7.8.2 (2018, 2021); IRC R320.3 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
Trim at the wall.

Exceptions
A rail at 36 in or more may stand over the narrower part of a guard.

Remedies
Shallower brackets.
",
    cites: &["stair-rail-projection"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("stair-rail-projection");
    let demand = Demand {
        rule: RULE.slug,
        detail: &RAIL_PROJECTION,
        fault: "Handrail reaches too far into the stair",
        many: "stairs",
        why: "It narrows the stair for shoulders and loads.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = new_work(sheet, &RAIL_PROJECTION);
    judge(sheet, out, &sheet.book.cite("stair-rail-projection"), &demand, elements, |a| {
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

    const SLUG: &str = "stair-rail-projection";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        sample().state(&RAIL_PROJECTION, Value::Length(Len::sixty_fourths(288))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&RAIL_PROJECTION, Value::Length(Len::sixty_fourths(320)));
            wrong.expect(SLUG, &["correction, measured 5\", required 4 1/2\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&RAIL_PROJECTION, Value::Length(Len::sixty_fourths(288))).expect_none(SLUG);
        let over =
            sample().state(&RAIL_PROJECTION, Value::Length(Len::sixty_fourths(288) + Len::UNIT));
        assert_eq!(over.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&RAIL_PROJECTION, Value::Length(Len::sixty_fourths(320)))
            .existing()
            .expect_none(SLUG);
    }
}
