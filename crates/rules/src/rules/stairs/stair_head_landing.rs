//! Landing and door at the head of a stair.

use plan::detail::stair::HEAD_LANDING;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-head-landing",
    group: Group::Stairs,
    title: "Landing and door at the head of a stair",
    page: "\
What
A stair has a landing at its head, as wide as the stair and at least 36 in deep in the way one walks. At an interior
stair a door at the head needs none where it does not swing over the stair.

Why
Who opens the door steps back, and there is nothing to step on.

Source
IRC R311.7.6 (2018, 2021); IRC R318.7.6 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The level above.

Exceptions
A door at the head of an interior stair that does not swing over it: set the finding aside with that reason.

Remedies
Turn the swing of the door, or move it.
",
    cites: &["stair-head-landing"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("stair-head-landing");
    let demand = Demand {
        rule: RULE.slug,
        detail: &HEAD_LANDING,
        fault: "Too little floor at the head of the stair",
        many: "stairs",
        why: "Who opens the door steps back, and there is nothing to step on.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = new_work(sheet, &HEAD_LANDING);
    judge(sheet, out, &sheet.book.cite("stair-head-landing"), &demand, elements, |a| {
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

    const SLUG: &str = "stair-head-landing";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        sample().state(&HEAD_LANDING, Value::Length(Len::inches(36))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&HEAD_LANDING, Value::Length(Len::sixty_fourths(2272)));
            wrong.expect(SLUG, &["correction, measured 35 1/2\", required 36\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&HEAD_LANDING, Value::Length(Len::inches(36))).expect_none(SLUG);
        let short = sample().state(&HEAD_LANDING, Value::Length(Len::inches(36) - Len::UNIT));
        assert_eq!(short.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&HEAD_LANDING, Value::Length(Len::sixty_fourths(2272)))
            .existing()
            .expect_none(SLUG);
    }
}
