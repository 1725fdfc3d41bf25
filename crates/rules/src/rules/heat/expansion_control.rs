//! Heated water with nowhere to go.

use plan::detail::plumbing::EXPANSION;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "expansion-control",
    group: Group::Heat,
    title: "Thermal expansion at a water heater",
    page: "\
What
Where a pressure reducer, a check valve or a backflow preventer closes the supply, a device takes up the expansion of the heated water.

Why
Pressure rises with every heating and opens the relief valve, or a joint.

Source
IRC P2903.4: 2018 to 2024.

How it is measured
Asked of water heaters where a pressure reducer or a backflow preventer is on the plan.

Cannot see
Check valves in the meter.

Exceptions
Heaters without a tank.

Remedies
An expansion tank, which must stay reachable.
",
    cites: &["expansion-control"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "Pressure rises with every heating and opens the relief valve, or a joint.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "expansion-control",
    detail: &EXPANSION,
    good: Good::Yes,
    fails: "has no expansion tank",
    why: WHY,
    asks: true,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let closes = |k| matches!(k, ServiceKind::PressureReducer | ServiceKind::BackflowPreventer);
    if !sheet.services().any(|(_, s)| closes(s.kind)) {
        return;
    }
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::of_kind(sheet, ServiceKind::WaterHeater));
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "expansion-control";

    /// A water heater behind a pressure reducer.
    fn heater() -> Sample {
        Sample::with(ServiceKind::PressureReducer)
            .service(ServiceKind::WaterHeater, at(30.0, 0.0), Facing::NORTH)
            .fresh()
    }

    #[test]
    fn clear_pass() {
        heater().state(&EXPANSION, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let none = heater().state(&EXPANSION, Value::No).edition(edition);
            none.expect(SLUG, &["correction, measured expansion tank: no, required yes"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Nothing is assumed of a new one.
        heater().expect(SLUG, &["verify, measured not stated, required yes"]);
        heater().existing().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        // Nothing closes the supply.
        Sample::with(ServiceKind::WaterHeater).state(&EXPANSION, Value::No).expect_none(SLUG);
    }
}
