//! Width between handrails.

use plan::detail::stair::BETWEEN_RAILS;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-between-rails",
    group: Group::Stairs,
    title: "Width between handrails",
    page: "\
What
At and below the height of the handrails a stair is at least 31 1/2 in wide with one rail and 27 in with two.

Why
A stretcher and two people carry the width of the rails with them.

Source
IRC R311.7.1 (2018, 2021); IRC R318.7.1 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
With one rail the wider figure holds: enter the width with its rail and compare.

Exceptions
Spiral stairs.

Remedies
Slimmer brackets, or one rail.
",
    cites: &["stair-between-rails"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("stair-between-rails");
    let demand = Demand {
        rule: RULE.slug,
        detail: &BETWEEN_RAILS,
        fault: "Stair too narrow between its rails",
        many: "stairs",
        why: "A stretcher and two people carry the width of the rails with them.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = new_work(sheet, &BETWEEN_RAILS);
    judge(sheet, out, &sheet.book.cite("stair-between-rails"), &demand, elements, |a| {
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

    const SLUG: &str = "stair-between-rails";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        sample().state(&BETWEEN_RAILS, Value::Length(Len::inches(27))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&BETWEEN_RAILS, Value::Length(Len::sixty_fourths(1696)));
            wrong.expect(SLUG, &["correction, measured 26 1/2\", required 27\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&BETWEEN_RAILS, Value::Length(Len::inches(27))).expect_none(SLUG);
        let short = sample().state(&BETWEEN_RAILS, Value::Length(Len::inches(27) - Len::UNIT));
        assert_eq!(short.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&BETWEEN_RAILS, Value::Length(Len::sixty_fourths(1696)))
            .existing()
            .expect_none(SLUG);
    }
}
