//! Disconnect of an appliance.

use plan::detail::Value;
use plan::detail::electrical::DISCONNECT;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "appliance-disconnect",
    group: Group::Electrical,
    title: "Disconnect of an appliance",
    page: "\
What
A fixed appliance has a disconnect in sight, or a breaker that can be locked open.

Why
Who works on it must be sure that nobody upstairs turns it on.

Source
NEC 422.31 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The wiring.

Exceptions
Appliances of 300 VA or less.

Remedies
A switch at the appliance, or a lock on the breaker.
",
    cites: &["appliance-disconnect"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| {
        state_all(finding, sheet, &DISCONNECT, Value::Word("switch or plug in sight"))
    }),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &DISCONNECT,
        fault: "No disconnect in sight",
        many: "appliances",
        why: "Who works on it must be sure that nobody upstairs turns it on.",
        required: Quantity::Words("in sight, or one that locks".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &DISCONNECT);
    judge(sheet, out, &sheet.book.cite("appliance-disconnect"), &demand, elements, |a| {
        a.is(&["switch or plug in sight", "breaker in sight", "breaker that locks"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "appliance-disconnect";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Furnace)
    }

    #[test]
    fn clear_pass() {
        sample().state(&DISCONNECT, Value::Word("switch or plug in sight")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong =
                sample().edition(edition).state(&DISCONNECT, Value::Word("breaker out of sight"));
            wrong.expect(SLUG, &["correction, measured breaker out of sight, required in sight, or one that locks"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["switch or plug in sight", "breaker in sight", "breaker that locks"] {
            sample().state(&DISCONNECT, Value::Word(good)).expect_none(SLUG);
        }
        assert_eq!(
            sample().state(&DISCONNECT, Value::Word("breaker out of sight")).findings(SLUG).len(),
            1
        );
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&DISCONNECT, Value::Word("breaker out of sight"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
