//! Flat floor before the panel.

use plan::Edition;
use plan::detail::Value;
use plan::detail::electrical::PANEL_FLOOR;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "panel-floor",
    group: Group::Electrical,
    title: "Flat floor before the panel",
    page: "\
What
The floor, grade or platform of the working space is clear, and as level and flat as practical.

Why
Who works on a live panel must not stumble.

Source
NEC 110.26(A)(6) (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
Slopes and curbs of the floor.

Exceptions
2017, 2020: not in the text.

Remedies
Move the curb or lid, or level the floor.
",
    cites: &["panel-floor"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &PANEL_FLOOR, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if sheet.book.edition() != Edition::E2024 {
        return;
    }
    let demand = Demand {
        rule: RULE.slug,
        detail: &PANEL_FLOOR,
        fault: "Floor of the working space not flat",
        many: "panels",
        why: "Who works on a live panel must not stumble.",
        required: Quantity::Words("level and clear".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &PANEL_FLOOR);
    judge(sheet, out, &sheet.book.cite("panel-floor"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "panel-floor";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Panel).edition(Edition::E2024)
    }

    #[test]
    fn clear_pass() {
        sample().state(&PANEL_FLOOR, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        // The sample is of 2024; the earlier editions don't have it.
        let wrong = sample().state(&PANEL_FLOOR, Value::No);
        wrong.expect(SLUG, &["correction, measured no, required level and clear"]);
    }

    #[test]
    fn at_the_limit() {
        // The usual is assumed until it is stated otherwise.
        sample().expect_none(SLUG);
        assert_eq!(sample().state(&PANEL_FLOOR, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // The earlier texts don't have it.
        sample().edition(Edition::E2021).state(&PANEL_FLOOR, Value::No).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&PANEL_FLOOR, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
