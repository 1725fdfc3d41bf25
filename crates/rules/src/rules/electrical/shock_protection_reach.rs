//! Shock protection within reach.

use plan::detail::Value;
use plan::detail::electrical::PROTECTION_IN_REACH;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "shock-protection-reach",
    group: Group::Electrical,
    title: "Shock protection within reach",
    page: "\
What
The device that protects a receptacle against shock can be reached at once to test and reset it.

Why
One that sits behind a freezer is never tested, and the food spoils when it trips.

Source
NEC 210.8 (all editions).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
Where the device sits.

Exceptions
None.

Remedies
A protecting breaker, or the device at the first receptacle of the run.
",
    cites: &["shock-protection-reach"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &PROTECTION_IN_REACH, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &PROTECTION_IN_REACH,
        fault: "Protection out of reach",
        many: "receptacles",
        why: "One that sits behind a freezer is never tested, and the food spoils when it trips.",
        required: Quantity::Words("readily accessible".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &PROTECTION_IN_REACH);
    judge(sheet, out, &sheet.book.cite("shock-protection-reach"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "shock-protection-reach";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Receptacle)
    }

    #[test]
    fn clear_pass() {
        sample().state(&PROTECTION_IN_REACH, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&PROTECTION_IN_REACH, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required readily accessible"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The usual is assumed until it is stated otherwise.
        sample().expect_none(SLUG);
        assert_eq!(sample().state(&PROTECTION_IN_REACH, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&PROTECTION_IN_REACH, Value::No).existing().expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&PROTECTION_IN_REACH, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
