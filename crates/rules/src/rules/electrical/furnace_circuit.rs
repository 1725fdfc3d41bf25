//! Circuit of the furnace.

use plan::detail::Value;
use plan::detail::electrical::OWN_CIRCUIT;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "furnace-circuit",
    group: Group::Electrical,
    title: "Circuit of the furnace",
    page: "\
What
Central heating is alone on its branch circuit.

Why
A freezer or a saw on the same circuit turns the heat off in winter.

Source
NEC 422.12 (all editions).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The wiring.

Exceptions
Pumps, valves, humidifiers, air cleaners and air conditioning that belong to the same unit. Fixed electric heaters.

Remedies
Ask the electrician for a circuit of its own.
",
    cites: &["furnace-circuit"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &OWN_CIRCUIT, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &OWN_CIRCUIT,
        fault: "Not alone on its circuit",
        many: "furnaces",
        why: "A freezer or a saw on the same circuit turns the heat off in winter.",
        required: Quantity::Words("a circuit of its own".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &OWN_CIRCUIT);
    judge(sheet, out, &sheet.book.cite("furnace-circuit"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "furnace-circuit";

    fn sample() -> Sample {
        Sample::with(plan::element::ServiceKind::Furnace)
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample().edition(edition).state(&OWN_CIRCUIT, Value::Yes).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&OWN_CIRCUIT, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required a circuit of its own"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&OWN_CIRCUIT, Value::Yes).expect_none(SLUG);
        let over = sample().edition(Edition::E2021).state(&OWN_CIRCUIT, Value::No);
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&OWN_CIRCUIT, Value::No).existing().expect_none(SLUG);
    }
}
