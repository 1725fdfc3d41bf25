//! Stop on the supply of a fixture.

use plan::detail::Value;
use plan::detail::plumbing::SUPPLY_STOP;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "supply-stop",
    group: Group::Build,
    title: "Stop on the supply of a fixture",
    page: "\
What
Each water supply of a fixture has a stop valve, at the fixture or at a labelled manifold.

Why
Without one a dripping toilet turns off the whole house.

Source
IRC P2903.9.3, P2903.8.

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The valve.

Exceptions
Tubs and showers.

Remedies
Ask the plumber for stops below the fixture.
",
    cites: &["supply-stop"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &SUPPLY_STOP, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &SUPPLY_STOP,
        fault: "No stop on the supply",
        many: "fixtures",
        why: "Without one a dripping toilet turns off the whole house.",
        required: Quantity::Words("a stop valve".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &SUPPLY_STOP);
    judge(sheet, out, &sheet.book.cite("supply-stop"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "supply-stop";

    fn sample() -> Sample {
        Sample::with_thing("wash basin")
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample().edition(edition).state(&SUPPLY_STOP, Value::Yes).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&SUPPLY_STOP, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required a stop valve"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&SUPPLY_STOP, Value::Yes).expect_none(SLUG);
        let over = sample().edition(Edition::E2021).state(&SUPPLY_STOP, Value::No);
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&SUPPLY_STOP, Value::No).existing().expect_none(SLUG);
        // Nobody asks for one at a tub.
        assert!(
            !SUPPLY_STOP
                .fits(&Sample::with_thing("tub").plan_elements().last().expect("a tub").body)
        );
    }
}
