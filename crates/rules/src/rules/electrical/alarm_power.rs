//! Power of alarms.

use plan::detail::Value;
use plan::detail::electrical::ALARM_POWER;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "alarm-power",
    group: Group::Electrical,
    title: "Power of alarms",
    page: "\
What
A new alarm is fed by the wiring of the house, without a switch but the breaker, and has a battery.

Why
Batteries are taken out for a toy; the power fails in a fire.

Source
IRC R314.6 (2018, 2021); IRC R310.6 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, one finding asks for all such elements.

Cannot see
The wiring.

Exceptions
Alterations that don't open walls or ceilings may keep alarms on battery: set the finding aside with that reason.

Remedies
Wire it, with battery backup.
",
    cites: &["alarm-power"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &ALARM_POWER, Value::Word("house wiring with battery"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &ALARM_POWER,
        fault: "Alarm on battery alone",
        many: "alarms",
        why: "Batteries are taken out for a toy; the power fails in a fire.",
        required: Quantity::Words("house wiring with battery".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &ALARM_POWER);
    judge(sheet, out, &sheet.book.cite("alarm-power"), &demand, elements, |a| {
        a.is(&["house wiring with battery"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "alarm-power";

    fn sample() -> Sample {
        Sample::with(ServiceKind::SmokeAlarm)
    }

    #[test]
    fn clear_pass() {
        sample().state(&ALARM_POWER, Value::Word("house wiring with battery")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&ALARM_POWER, Value::Word("battery alone"));
            wrong.expect(
                SLUG,
                &["correction, measured battery alone, required house wiring with battery"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        sample().state(&ALARM_POWER, Value::Word("house wiring with battery")).expect_none(SLUG);
        assert_eq!(
            sample().state(&ALARM_POWER, Value::Word("battery alone")).findings(SLUG).len(),
            1
        );
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&ALARM_POWER, Value::Word("battery alone")).existing().expect_none(SLUG);
    }

    #[test]
    fn what_is_not_stated_is_asked_for() {
        sample().expect(SLUG, &["verify, measured not stated, required house wiring with battery"]);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&ALARM_POWER, Value::Word("battery alone"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
