//! The label of a gas valve that is not beside its appliance.

use plan::detail::heat::GAS_VALVE_AT;
use plan::detail::heat::GAS_VALVE_LABEL;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "gas-valve-label",
    group: Group::Heat,
    title: "Label of a gas valve away from its appliance",
    page: "\
What
A gas valve at a manifold, or the remote one of a decorative appliance, is lastingly labelled and serves that
appliance alone.

Why
Whoever smells gas must know which valve to shut.

Source
IRC G2420.5.2, G2420.5.3.

How it is measured
By what is stated of a new valve that is not at its appliance; until then it is asked for.

Cannot see
Whether it can be reached without tools.

Exceptions
Valves at their appliance.

Remedies
A lasting tag.
",
    cites: &["gas-valve-label"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "Whoever smells gas must know which valve to shut.";

/// Where a valve is not at its appliance.
const AWAY: &[&str] = &["a manifold", "a decorative appliance"];

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "gas-valve-label",
    detail: &GAS_VALVE_LABEL,
    good: Good::Yes,
    fails: "has no label",
    why: WHY,
    asks: true,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, {
            let away = |e: &&plan::Element| sheet.ask(e, &GAS_VALVE_AT).is(AWAY);
            told::of_kind(sheet, ServiceKind::GasValve).filter(away)
        });
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "gas-valve-label";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::GasValve, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .state(&GAS_VALVE_AT, Value::Word("a manifold"))
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing().state(&GAS_VALVE_LABEL, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&GAS_VALVE_LABEL, Value::No);
            sample.expect(SLUG, &["correction, measured valve labelled: no, required yes"]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&GAS_VALVE_LABEL, Value::Yes).expect_none(SLUG);
        assert_eq!(good().state(&GAS_VALVE_LABEL, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn what_is_not_stated_is_asked_for_where_it_is_new() {
        let unstated = thing();
        unstated.expect(SLUG, &["verify, measured not stated, required yes"]);
        assert_eq!(unstated.remedies(SLUG).len(), 1);
        unstated.existing().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }

    #[test]
    fn beside_its_appliance_it_needs_none() {
        thing().state(&GAS_VALVE_AT, Value::Word("the appliance")).expect_none(SLUG);
    }
}
