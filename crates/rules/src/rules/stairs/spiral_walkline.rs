//! Walk line of a spiral stair.

use plan::detail::stair::WALKLINE_RADIUS;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "spiral-walkline",
    group: Group::Stairs,
    title: "Walk line of a spiral stair",
    page: "\
What
The walk line of a spiral stair, 12 in from the narrow side of its treads, lies at most 24 1/2 in from the middle.

Why
Farther out the stair is a curved one and needs its treads and width.

Source
IRC R311.7.10.1 (2018, 2021), R318.7.11.1 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The round of the stair: it is drawn as one straight flight.

Exceptions
Other stairs.

Remedies
A smaller pole, or a stair that is built as a curved one.
",
    cites: &["spiral-walkline"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("spiral-walkline");
    let demand = Demand {
        rule: RULE.slug,
        detail: &WALKLINE_RADIUS,
        fault: "Walk line too far out",
        many: "stairs",
        why: "Farther out the stair is a curved one and needs its treads and width.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = new_work(sheet, &WALKLINE_RADIUS);
    judge(sheet, out, &sheet.book.cite("spiral-walkline"), &demand, elements, |a| {
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

    const SLUG: &str = "spiral-walkline";

    fn sample() -> Sample {
        Sample::with_stair().state(&plan::detail::stair::STAIR_KIND, Value::Word("spiral"))
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample()
                .edition(edition)
                .state(&WALKLINE_RADIUS, Value::Length(Len::sixty_fourths(1280)))
                .expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&WALKLINE_RADIUS, Value::Length(Len::sixty_fourths(1664)));
            wrong.expect(SLUG, &["correction, measured 26\", required 24 1/2\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&WALKLINE_RADIUS, Value::Length(Len::sixty_fourths(1568))).expect_none(SLUG);
        let over = sample()
            .edition(Edition::E2021)
            .state(&WALKLINE_RADIUS, Value::Length(Len::sixty_fourths(1569)));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&WALKLINE_RADIUS, Value::Length(Len::sixty_fourths(1664)))
            .existing()
            .expect_none(SLUG);
        // Only a spiral stair has such a line.
        Sample::with_stair()
            .state(&WALKLINE_RADIUS, Value::Length(Len::inches(30)))
            .expect_none(SLUG);
    }
}
