//! Shock protection of a sump pump.

use plan::detail::Value;
use plan::detail::electrical::PUMP_PROTECTION;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "pump-shock-protection",
    group: Group::Electrical,
    title: "Shock protection of a sump pump",
    page: "\
What
The outlet of a sump pump is protected by a ground-fault circuit interrupter (GFCI), also where the pump is wired in.

Why
The pump stands in water, and so does who reaches for it.

Source
NEC 422.5 and 210.8(D): 2020 for the 2021 edition, 2023 for 2024. With the 2018 edition its receptacle is judged by its place.

How it is measured
By what is stated of it, for new work. Until it is stated, it is asked for.

Cannot see
The wiring. A device that trips stops the pump: an alarm is good practice.

Exceptions
None.

Remedies
A breaker or receptacle with protection, and an alarm for high water.
",
    cites: &["pump-shock-protection"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &PUMP_PROTECTION, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if sheet.book.count("pump-shock-protection").value == 0 {
        return;
    }
    let demand = Demand {
        rule: RULE.slug,
        detail: &PUMP_PROTECTION,
        fault: "Pump without shock protection",
        many: "pumps",
        why: "The pump stands in water, and so does who reaches for it.",
        required: Quantity::Words("protected (GFCI)".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &PUMP_PROTECTION);
    judge(sheet, out, &sheet.book.cite("pump-shock-protection"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "pump-shock-protection";

    fn sample() -> Sample {
        Sample::with(plan::element::ServiceKind::Sump)
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample().edition(edition).state(&PUMP_PROTECTION, Value::Yes).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in [Edition::E2021, Edition::E2024] {
            let wrong = sample().edition(edition).state(&PUMP_PROTECTION, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required protected (GFCI)"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&PUMP_PROTECTION, Value::Yes).expect_none(SLUG);
        let over = sample().edition(Edition::E2021).state(&PUMP_PROTECTION, Value::No);
        assert_eq!(over.findings(SLUG).len(), 1);
        let open = sample().edition(Edition::E2021).findings(SLUG);
        assert_eq!(open[0].severity, crate::Severity::Verify);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&PUMP_PROTECTION, Value::No).existing().expect_none(SLUG);
    }

    #[test]
    fn the_electrical_code_of_2017_does_not_ask() {
        sample().edition(Edition::E2018).state(&PUMP_PROTECTION, Value::No).expect_none(SLUG);
    }
}
