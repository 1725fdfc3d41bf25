//! Tamper-resistant receptacles.

use plan::detail::Value;
use plan::detail::electrical::TAMPER_RESISTANT;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "tamper-resistant",
    group: Group::Electrical,
    title: "Tamper-resistant receptacles",
    page: "\
What
Every receptacle of 15 A or 20 A in a dwelling is tamper-resistant.

Why
A child pokes a hairpin into one slot.

Source
NEC 406.12 (all editions).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The mark on its face.

Exceptions
One over 5 1/2 ft high, one that is part of a light or an appliance, one for a machine that isn't easily moved.

Remedies
Receptacles marked TR.
",
    cites: &["tamper-resistant"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &TAMPER_RESISTANT, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &TAMPER_RESISTANT,
        fault: "No shutters",
        many: "receptacles",
        why: "A child pokes a hairpin into one slot.",
        required: Quantity::Words("tamper-resistant".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &TAMPER_RESISTANT);
    judge(sheet, out, &sheet.book.cite("tamper-resistant"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "tamper-resistant";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Receptacle)
    }

    #[test]
    fn clear_pass() {
        sample().state(&TAMPER_RESISTANT, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&TAMPER_RESISTANT, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required tamper-resistant"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The usual is assumed until it is stated otherwise.
        sample().expect_none(SLUG);
        assert_eq!(sample().state(&TAMPER_RESISTANT, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&TAMPER_RESISTANT, Value::No).existing().expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&TAMPER_RESISTANT, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
