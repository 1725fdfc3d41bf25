//! Alarms sound together.

use plan::detail::Value;
use plan::detail::electrical::SOUNDS_TOGETHER;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "alarms-interconnected",
    group: Group::Electrical,
    title: "Alarms sound together",
    page: "\
What
Where a house has several alarms, one that is set off sets off all of them.

Why
An alarm in the basement does not wake anyone two floors up.

Source
IRC R314.4 (2018, 2021); IRC R310.4 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, one finding asks for all such elements.

Cannot see
How alarms are joined.

Exceptions
Existing areas where no finish is taken away (carbon monoxide alarms).

Remedies
Join them by wire, or take alarms with listed radio.
",
    cites: &["alarms-interconnected"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &SOUNDS_TOGETHER, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &SOUNDS_TOGETHER,
        fault: "Alarm that sounds alone",
        many: "alarms",
        why: "An alarm in the basement does not wake anyone two floors up.",
        required: Quantity::Words("all together".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &SOUNDS_TOGETHER);
    judge(sheet, out, &sheet.book.cite("alarms-interconnected"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "alarms-interconnected";

    fn sample() -> Sample {
        Sample::with(ServiceKind::SmokeAlarm)
    }

    #[test]
    fn clear_pass() {
        sample().state(&SOUNDS_TOGETHER, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&SOUNDS_TOGETHER, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required all together"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Nothing is assumed: what is not stated is asked for, once.
        sample().expect(SLUG, &["verify, measured not stated, required all together"]);
        sample().state(&SOUNDS_TOGETHER, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&SOUNDS_TOGETHER, Value::No).existing().expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&SOUNDS_TOGETHER, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
