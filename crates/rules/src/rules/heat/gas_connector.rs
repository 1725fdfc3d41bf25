//! The flexible connector of a gas appliance.

use plan::detail::heat::{CONNECTOR, CONNECTOR_HIDDEN};

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "gas-connector",
    group: Group::Heat,
    title: "Gas connector of an appliance",
    page: "\
What
The connector of a gas appliance is at most 6 ft long and does not run through a wall, a floor or a ceiling or out of
sight.

Why
A connector is the weak part of a gas line: where it is hidden nobody sees it kink or leak.

Source
IRC G2422.1.2, from memory; the uniform mechanical code 1312.3 has the same about hidden ones.

How it is measured
By what is stated of an appliance that burns gas; it is taken for 3 ft long and in sight.

Cannot see
The kind of connector and the size of the pipe.

Exceptions
Appliances that do not burn gas.

Remedies
Rigid pipe to within reach of the appliance: work of a licensed fitter.
",
    cites: &["gas-connector", "gas-connector-hidden"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str =
    "A connector is the weak part of a gas line: where it is hidden nobody sees it kink or leak.";

const DEMANDS: &[Demand] = &[
    Demand {
        rule: RULE.slug,
        limit: "gas-connector",
        detail: &CONNECTOR,
        good: Good::AtMost,
        fails: "has a gas connector that is too long",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "gas-connector-hidden",
        detail: &CONNECTOR_HIDDEN,
        good: Good::No,
        fails: "has a gas connector that is hidden",
        why: WHY,
        asks: false,
    },
];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::on_gas(sheet));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{Sample, at, inch};
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::ServiceKind;

    const SLUG: &str = "gas-connector";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Furnace, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .state(&plan::detail::heat::FUEL, Value::Word("natural gas"))
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
            let sample = good().edition(edition).state(&CONNECTOR, Value::Length(inch(80.0)));
            sample.expect(SLUG, &["correction, measured 80\", required 72\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&CONNECTOR, Value::Length(inch(72.0))).expect_none(SLUG);
        assert_eq!(
            good()
                .state(&CONNECTOR, Value::Length(inch(72.0) + measure::Len::UNIT))
                .findings(SLUG)
                .len(),
            1
        );
        good().state(&CONNECTOR_HIDDEN, Value::No).expect_none(SLUG);
        assert_eq!(good().state(&CONNECTOR_HIDDEN, Value::Yes).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }

    #[test]
    fn an_electric_one_has_none() {
        let electric = thing().state(&plan::detail::heat::FUEL, Value::Word("electric"));
        electric.state(&CONNECTOR_HIDDEN, Value::Yes).expect_none(SLUG);
    }
}
