//! Openings in a guard beside a stair.

use plan::detail::stair::GUARD_OPENING;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "guard-openings",
    group: Group::Stairs,
    title: "Openings in a guard beside a stair",
    page: "\
What
At the open side of a stair a sphere of 4 3/8 in does not pass the guard (4 in at a level floor).

Why
A child's head follows its body.

Source
IRC R312.1.3 (2018, 2021); IRC R321.1.3 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The balusters.

Exceptions
The triangle of tread, riser and bottom rail: 6 in.

Remedies
Closer balusters.
",
    cites: &["guard-openings"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("guard-openings");
    let demand = Demand {
        rule: RULE.slug,
        detail: &GUARD_OPENING,
        fault: "Gap in the guard too wide",
        many: "stairs",
        why: "A child's head follows its body.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = new_work(sheet, &GUARD_OPENING);
    judge(sheet, out, &sheet.book.cite("guard-openings"), &demand, elements, |a| {
        a.len().is_some_and(|len| len < limit.value)
    });
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "guard-openings";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        sample()
            .state(&GUARD_OPENING, Value::Length(Len::sixty_fourths(280) - Len::UNIT))
            .expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&GUARD_OPENING, Value::Length(Len::sixty_fourths(312)));
            wrong.expect(SLUG, &["correction, measured 4 7/8\", required 4 3/8\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        // A sphere of just this size would pass.
        sample()
            .state(&GUARD_OPENING, Value::Length(Len::sixty_fourths(280) - Len::UNIT))
            .expect_none(SLUG);
        let passed = sample().state(&GUARD_OPENING, Value::Length(Len::sixty_fourths(280)));
        assert_eq!(passed.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&GUARD_OPENING, Value::Length(Len::sixty_fourths(312)))
            .existing()
            .expect_none(SLUG);
    }
}
