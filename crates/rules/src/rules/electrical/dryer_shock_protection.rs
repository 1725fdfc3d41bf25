//! Shock protection of an electric dryer.

use plan::detail::Value;
use plan::detail::electrical::DRYER_PROTECTION;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "dryer-shock-protection",
    group: Group::Electrical,
    title: "Shock protection of an electric dryer",
    page: "\
What
The outlet of an electric clothes dryer is protected by a ground-fault circuit interrupter (GFCI).

Why
Wet hands, a metal case and a concrete floor.

Source
NEC 210.8(D), 2023 for the 2024 edition; the older electrical codes do not name dryers.

How it is measured
By what is stated of it, for new work. Until it is stated, it is asked for.

Cannot see
The wiring.

Exceptions
Gas dryers: their receptacle is judged by its place.

Remedies
A breaker with protection.
",
    cites: &["dryer-shock-protection"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &DRYER_PROTECTION, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if sheet.book.count("dryer-shock-protection").value == 0 {
        return;
    }
    let demand = Demand {
        rule: RULE.slug,
        detail: &DRYER_PROTECTION,
        fault: "Dryer without shock protection",
        many: "dryers",
        why: "Wet hands, a metal case and a concrete floor.",
        required: Quantity::Words("protected (GFCI)".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &DRYER_PROTECTION);
    judge(sheet, out, &sheet.book.cite("dryer-shock-protection"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "dryer-shock-protection";

    fn sample() -> Sample {
        Sample::with(plan::element::ServiceKind::ClothesDryer)
            .state(&plan::detail::heat::FUEL, Value::Word("electric"))
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample().edition(edition).state(&DRYER_PROTECTION, Value::Yes).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        let wrong = sample().edition(Edition::E2024).state(&DRYER_PROTECTION, Value::No);
        wrong.expect(SLUG, &["correction, measured no, required protected (GFCI)"]);
    }

    #[test]
    fn at_the_limit() {
        sample().state(&DRYER_PROTECTION, Value::Yes).expect_none(SLUG);
        let over = sample().edition(Edition::E2024).state(&DRYER_PROTECTION, Value::No);
        assert_eq!(over.findings(SLUG).len(), 1);
        let open = sample().edition(Edition::E2024).findings(SLUG);
        assert_eq!(open[0].severity, crate::Severity::Verify);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&DRYER_PROTECTION, Value::No).existing().expect_none(SLUG);
        Sample::with(plan::element::ServiceKind::ClothesDryer)
            .state(&plan::detail::heat::FUEL, Value::Word("natural gas"))
            .edition(Edition::E2024)
            .expect_none(SLUG);
    }

    #[test]
    fn the_older_electrical_codes_do_not_ask() {
        for edition in [Edition::E2018, Edition::E2021] {
            sample().edition(edition).state(&DRYER_PROTECTION, Value::No).expect_none(SLUG);
        }
    }
}
