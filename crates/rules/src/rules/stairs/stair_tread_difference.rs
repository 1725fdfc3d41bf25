//! Difference between treads.

use plan::detail::stair::TREAD_DIFFERENCE;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-tread-difference",
    group: Group::Stairs,
    title: "Difference between treads",
    page: "\
What
The deepest and the shallowest tread of a flight differ by at most 3/8 in.

Why
A foot learns the first tread.

Source
IRC R311.7.5.2 (2018, 2021); IRC R318.7.5.2 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The built stair.

Exceptions
Winders have a rule of their own.

Remedies
Measure every tread; replace what is out.
",
    cites: &["stair-tread-difference"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("stair-tread-difference");
    let demand = Demand {
        rule: RULE.slug,
        detail: &TREAD_DIFFERENCE,
        fault: "Treads too unequal",
        many: "stairs",
        why: "A foot learns the first tread.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = new_work(sheet, &TREAD_DIFFERENCE);
    judge(sheet, out, &sheet.book.cite("stair-tread-difference"), &demand, elements, |a| {
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

    const SLUG: &str = "stair-tread-difference";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        sample().state(&TREAD_DIFFERENCE, Value::Length(Len::sixty_fourths(24))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&TREAD_DIFFERENCE, Value::Length(Len::sixty_fourths(56)));
            wrong.expect(SLUG, &["correction, measured 7/8\", required 3/8\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&TREAD_DIFFERENCE, Value::Length(Len::sixty_fourths(24))).expect_none(SLUG);
        let over =
            sample().state(&TREAD_DIFFERENCE, Value::Length(Len::sixty_fourths(24) + Len::UNIT));
        assert_eq!(over.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&TREAD_DIFFERENCE, Value::Length(Len::sixty_fourths(56)))
            .existing()
            .expect_none(SLUG);
    }
}
