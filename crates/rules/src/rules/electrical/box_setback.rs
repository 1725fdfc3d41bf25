//! Box behind the finish.

use plan::detail::electrical::BOX_SETBACK;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "box-setback",
    group: Group::Electrical,
    title: "Box behind the finish",
    page: "\
What
The front edge of a box lies at most 1/4 in behind a finish that does not burn, such as board, and is flush with one that
does.

Why
A spark in the gap behind panelling sets it on fire.

Source
NEC 314.20 (all editions).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The finish: with wood panelling the box must be flush, which is stricter than this figure.

Exceptions
None.

Remedies
An extension ring where the finish gets thicker.
",
    cites: &["box-setback"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("box-setback");
    let demand = Demand {
        rule: RULE.slug,
        detail: &BOX_SETBACK,
        fault: "Box too far behind the finish",
        many: "boxes",
        why: "A spark in the gap behind panelling sets it on fire.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = new_work(sheet, &BOX_SETBACK);
    judge(sheet, out, &sheet.book.cite("box-setback"), &demand, elements, |a| {
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

    const SLUG: &str = "box-setback";

    fn sample() -> Sample {
        Sample::with(plan::element::ServiceKind::Receptacle)
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample()
                .edition(edition)
                .state(&BOX_SETBACK, Value::Length(Len::sixty_fourths(8)))
                .expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&BOX_SETBACK, Value::Length(Len::sixty_fourths(32)));
            wrong.expect(SLUG, &["correction, measured 1/2\", required 1/4\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&BOX_SETBACK, Value::Length(Len::sixty_fourths(16))).expect_none(SLUG);
        let over = sample()
            .edition(Edition::E2021)
            .state(&BOX_SETBACK, Value::Length(Len::sixty_fourths(17)));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&BOX_SETBACK, Value::Length(Len::sixty_fourths(32)))
            .existing()
            .expect_none(SLUG);
    }
}
