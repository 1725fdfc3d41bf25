//! An air admittance valve.

use plan::detail::plumbing::{AIR_VALVE_ABOVE, AIR_VALVE_BREATHES, AIR_VALVE_VENTS};
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "air-valve",
    group: Group::Heat,
    title: "Air admittance valve",
    page: "\
What
An air admittance valve is at least 4 in above the branch that it vents, that of a stack 6 in above the highest rim; it
gets room air and does not vent a pit with a pump.

Why
Without air it lets the traps run empty; too low it fills with waste and leaks sewer gas.

Source
IRC P3114.4, P3114.5, P3114.8.

How it is measured
By what is stated of the valve; it is taken for well placed. That it can be reached is checked by plumbing-device-
access.

Cannot see
Insulation around it, 6 in below the valve; the vent of the house that must reach the open air.

Exceptions
Some states allow none at all: ask.

Remedies
A louvred cover at the right height.
",
    cites: &["air-valve-above", "air-valve-stack", "air-valve-breathes", "air-valve-pit"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str =
    "Without air it lets the traps run empty; too low it fills with waste and leaks sewer gas.";

const DEMANDS: &[Demand] = &[
    Demand {
        rule: RULE.slug,
        limit: "air-valve-stack",
        detail: &AIR_VALVE_ABOVE,
        good: Good::AtLeast,
        fails: "is too low for a stack",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "air-valve-above",
        detail: &AIR_VALVE_ABOVE,
        good: Good::AtLeast,
        fails: "is too low",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "air-valve-breathes",
        detail: &AIR_VALVE_BREATHES,
        good: Good::Yes,
        fails: "gets no air",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "air-valve-pit",
        detail: &AIR_VALVE_VENTS,
        good: Good::Words(&["a fixture or a branch", "a stack"]),
        fails: "vents a pit with a pump",
        why: WHY,
        asks: false,
    },
];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        let stack = |e: &&plan::Element| sheet.ask(e, &AIR_VALVE_VENTS).is(&["a stack"]);
        let valves = told::of_kind(sheet, ServiceKind::AirAdmittanceValve);
        told::check(
            sheet,
            out,
            demand,
            valves.filter(|e| match demand.limit {
                "air-valve-stack" => stack(e),
                "air-valve-above" => !stack(e),
                _ => true,
            }),
        );
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "air-valve";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::AirAdmittanceValve, at(72.0, 0.0), Facing::NORTH)
            .fresh()
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing()
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&AIR_VALVE_ABOVE, Value::Length(inch(3.0)));
            sample.expect(SLUG, &["correction, measured 3\", required 4\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&AIR_VALVE_ABOVE, Value::Length(inch(4.0))).expect_none(SLUG);
        assert_eq!(
            good()
                .state(&AIR_VALVE_ABOVE, Value::Length(inch(4.0) - measure::Len::UNIT))
                .findings(SLUG)
                .len(),
            1
        );
        good().state(&AIR_VALVE_BREATHES, Value::Yes).expect_none(SLUG);
        assert_eq!(good().state(&AIR_VALVE_BREATHES, Value::No).findings(SLUG).len(), 1);
        good().state(&AIR_VALVE_VENTS, Value::Word("a fixture or a branch")).expect_none(SLUG);
        good().state(&AIR_VALVE_VENTS, Value::Word("a stack")).expect_none(SLUG);
        assert_eq!(
            good().state(&AIR_VALVE_VENTS, Value::Word("a pit with a pump")).findings(SLUG).len(),
            1
        );
    }

    #[test]
    fn that_of_a_stack_is_higher() {
        let stack = |inches| {
            good()
                .state(&AIR_VALVE_VENTS, Value::Word("a stack"))
                .state(&AIR_VALVE_ABOVE, Value::Length(crate::testing::inch(inches)))
        };
        stack(6.0).expect_none(SLUG);
        stack(5.0).expect(SLUG, &["correction, measured 5\", required 6\""]);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }
}
