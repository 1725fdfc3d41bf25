//! Lock of the egress door.

use plan::detail::Value;
use plan::detail::opening::DOOR_LOCK;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "egress-door-lock",
    group: Group::Doors,
    title: "Lock of the egress door",
    page: "\
What
The egress door opens from inside without a key or special knowledge; so should every door on the way to it.

Why
People die at locked doors.

Source
IRC R311.2 (2018, 2021); IRC R318.2 (2024).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
Which door is the egress door of the house: the finding names every door that is stated to need a key.

Exceptions
Doors that are nobody's way out.

Remedies
A turn knob in place of the inside cylinder.
",
    cites: &["egress-door-lock"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &DOOR_LOCK, Value::Word("none, or a turn knob"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &DOOR_LOCK,
        fault: "A door that needs a key from inside",
        many: "doors",
        why: "People die at locked doors.",
        required: Quantity::Words("opens from inside without a key".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &DOOR_LOCK);
    judge(sheet, out, &sheet.book.cite("egress-door-lock"), &demand, elements, |a| {
        a.is(&["none, or a turn knob"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "egress-door-lock";

    fn sample() -> Sample {
        Sample::with_door()
    }

    #[test]
    fn clear_pass() {
        sample().state(&DOOR_LOCK, Value::Word("none, or a turn knob")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong =
                sample().edition(edition).state(&DOOR_LOCK, Value::Word("key on both sides"));
            wrong.expect(SLUG, &["correction, measured key on both sides, required opens from inside without a key"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        sample().state(&DOOR_LOCK, Value::Word("none, or a turn knob")).expect_none(SLUG);
        assert_eq!(
            sample().state(&DOOR_LOCK, Value::Word("key on both sides")).findings(SLUG).len(),
            1
        );
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&DOOR_LOCK, Value::Word("key on both sides"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
