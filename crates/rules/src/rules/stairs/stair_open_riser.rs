//! Open risers.

use plan::detail::stair::OPEN_RISER;
use plan::element::BodyKind;
use plan::{Body, Element};

use crate::rules::stated::{Demand, fitting, is_new, judge};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-open-riser",
    group: Group::Stairs,
    title: "Open risers",
    page: "\
What
Where a riser more than 30 in above the floor is open, a sphere of 4 in does not pass.

Why
A child slips through.

Source
IRC R311.7.5.1 (2018, 2021); IRC R318.7.5.1 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
Which of the risers are open.

Exceptions
Risers no more than 30 in above the floor: a flight that rises no more than that is let be. Spiral stairs.

Remedies
Close the risers, or set a bar across.
",
    cites: &["stair-open-riser", "stair-open-high"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("stair-open-riser");
    let demand = Demand {
        rule: RULE.slug,
        detail: &OPEN_RISER,
        fault: "Gap between treads too wide",
        many: "stairs",
        why: "A child slips through.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let high = |e: &Element| match &e.body {
        Body::Stair(stair) => {
            stair.rise * stair.risers.cast_signed() > sheet.book.length("stair-open-high")
        }
        _ => true,
    };
    let elements = fitting(sheet, &OPEN_RISER).filter(|e| is_new(sheet, e) && high(e));
    judge(sheet, out, &sheet.book.cite("stair-open-riser"), &demand, elements, |a| {
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

    const SLUG: &str = "stair-open-riser";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        sample().state(&OPEN_RISER, Value::Length(Len::inches(4) - Len::UNIT)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&OPEN_RISER, Value::Length(Len::sixty_fourths(288)));
            wrong.expect(SLUG, &["correction, measured 4 1/2\", required 4\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        // A sphere of just this size would pass.
        sample().state(&OPEN_RISER, Value::Length(Len::inches(4) - Len::UNIT)).expect_none(SLUG);
        let passed = sample().state(&OPEN_RISER, Value::Length(Len::inches(4)));
        assert_eq!(passed.findings(SLUG).len(), 1);
    }

    #[test]
    fn a_low_flight_may_be_open() {
        let flight = |risers| {
            sample()
                .tune(|e| match &mut e.body {
                    Body::Stair(stair) => {
                        (stair.risers, stair.rise) = (risers, crate::testing::inch(7.5));
                    }
                    other => panic!("{}", other.word()),
                })
                .state(&OPEN_RISER, Value::Length(Len::inches(6)))
        };
        flight(4).expect_none(SLUG);
        assert_eq!(flight(5).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&OPEN_RISER, Value::Length(Len::sixty_fourths(288)))
            .existing()
            .expect_none(SLUG);
    }
}
