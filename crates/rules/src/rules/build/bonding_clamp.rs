//! Bonding clamp at the water service.

use plan::detail::plumbing::BOND_CLAMP;

use crate::rules::stated::{Demand, fitting, judge};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "bonding-clamp",
    group: Group::Build,
    title: "Bonding clamp at the water service",
    page: "\
What
The clamp that bonds a metal water pipe, and the jumper across the meter, stay where they can be reached.

Why
An electrician must be able to look at it without opening the wall.

Source
NEC 250.68(A), from memory.

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The clamp.

Exceptions
One that is buried or encased in concrete. Plastic pipe.

Remedies
Leave a panel at the clamp.
",
    cites: &["bonding-clamp"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &BOND_CLAMP,
        fault: "Bonding clamp closed in",
        many: "valves",
        why: "An electrician must be able to look at it without opening the wall.",
        required: Quantity::Words("in reach".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &BOND_CLAMP);
    judge(sheet, out, &sheet.book.cite("bonding-clamp"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "bonding-clamp";

    fn sample() -> Sample {
        Sample::with(plan::element::ServiceKind::MainWaterValve)
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample().edition(edition).state(&BOND_CLAMP, Value::Yes).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&BOND_CLAMP, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required in reach"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&BOND_CLAMP, Value::Yes).expect_none(SLUG);
        let over = sample().edition(Edition::E2021).state(&BOND_CLAMP, Value::No);
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
