//! Propane in a basement.

use plan::detail::heat::FUEL;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "propane-basement",
    group: Group::Heat,
    title: "Propane below ground",
    page: "\
What
Places restrict appliances that burn propane below ground, some ban them.

Why
Propane is heavier than air: what leaks fills the basement from the floor up.

Source
Seen in one state's mechanical code (303.8.1); elsewhere by the department.

How it is measured
By the stated fuel of each appliance.

Cannot see
The rules of the place.

Exceptions
Places that allow it with a detector or a drain.

Remedies
Ask the department and the supplier before you close the room in.
",
    cites: &["propane-basement"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "Propane is heavier than air: what leaks fills the basement from the floor up.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "propane-basement",
    detail: &FUEL,
    good: Good::Words(&["natural gas", "electric", "oil"]),
    fails: "burns propane below ground",
    why: WHY,
    asks: false,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        let propane = |e: &&plan::Element| sheet.ask(e, &FUEL).is(&["propane"]);
        told::check(sheet, out, demand, told::on_gas(sheet).filter(propane));
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "propane-basement";

    fn heater(fuel: &'static str) -> Sample {
        Sample::with(ServiceKind::WaterHeater).state(&FUEL, Value::Word(fuel))
    }

    #[test]
    fn clear_pass() {
        heater("natural gas").expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            assert_eq!(heater("propane").edition(edition).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn at_the_limit() {
        // The line runs between the fuels.
        for (fuel, found) in [("propane", 1), ("natural gas", 0), ("oil", 0), ("electric", 0)] {
            assert_eq!(heater(fuel).findings(SLUG).len(), found, "{fuel}");
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::with(ServiceKind::WaterHeater).expect_none(SLUG);
    }
}
