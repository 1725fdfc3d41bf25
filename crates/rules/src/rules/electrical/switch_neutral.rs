//! Neutral at the switch.

use plan::detail::Value;
use plan::detail::electrical::NEUTRAL;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "switch-neutral",
    group: Group::Electrical,
    title: "Neutral at the switch",
    page: "\
What
A switch that controls lights in a habitable room, a bath, a hall or a stair has a neutral in its box.

Why
Dimmers and sensors need it, and else use the ground in its place.

Source
NEC 404.2(C) (all editions).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The cables.

Exceptions
A raceway through which one can be pulled; several switches that see the whole room; switches of receptacles.

Remedies
Feed the box with a cable that carries a neutral.
",
    cites: &["switch-neutral"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &NEUTRAL, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &NEUTRAL,
        fault: "No neutral in the switch box",
        many: "switches",
        why: "Dimmers and sensors need it, and else use the ground in its place.",
        required: Quantity::Words("a neutral".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &NEUTRAL);
    judge(sheet, out, &sheet.book.cite("switch-neutral"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "switch-neutral";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Switch)
    }

    #[test]
    fn clear_pass() {
        sample().state(&NEUTRAL, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&NEUTRAL, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required a neutral"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The usual is assumed until it is stated otherwise.
        sample().expect_none(SLUG);
        assert_eq!(sample().state(&NEUTRAL, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&NEUTRAL, Value::No).existing().expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&NEUTRAL, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
