//! Slope of treads and landings.

use plan::detail::stair::TREAD_SLOPE;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-slope",
    group: Group::Stairs,
    title: "Slope of treads and landings",
    page: "\
What
A tread or landing slopes at most 1 in 48, which is 1 in over 4 ft.

Why
A tread that slopes throws the foot off, most of all when it is wet.

Source
IRC R311.7.7 (2018, 2021), R318.7.7 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The built stair.

Exceptions
In 2024 a landing that must drain may slope by 5 %.

Remedies
Shim or replace the tread.
",
    cites: &["stair-slope"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("stair-slope");
    let demand = Demand {
        rule: RULE.slug,
        detail: &TREAD_SLOPE,
        fault: "Treads slope too much",
        many: "stairs",
        why: "A tread that slopes throws the foot off, most of all when it is wet.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = new_work(sheet, &TREAD_SLOPE);
    judge(sheet, out, &sheet.book.cite("stair-slope"), &demand, elements, |a| {
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

    const SLUG: &str = "stair-slope";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample()
                .edition(edition)
                .state(&TREAD_SLOPE, Value::Length(Len::sixty_fourths(32)))
                .expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&TREAD_SLOPE, Value::Length(Len::sixty_fourths(96)));
            wrong.expect(SLUG, &["correction, measured 1 1/2\", required 1\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&TREAD_SLOPE, Value::Length(Len::sixty_fourths(64))).expect_none(SLUG);
        let over = sample()
            .edition(Edition::E2021)
            .state(&TREAD_SLOPE, Value::Length(Len::sixty_fourths(65)));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&TREAD_SLOPE, Value::Length(Len::sixty_fourths(96)))
            .existing()
            .expect_none(SLUG);
    }
}
