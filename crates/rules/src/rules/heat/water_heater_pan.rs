//! The pan of a water heater.

use plan::detail::plumbing::HEATER_PAN;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "water-heater-pan",
    group: Group::Heat,
    title: "Pan under a water heater",
    page: "\
What
Where a leak would do damage, a water heater with a tank stands in a pan at least 1 1/2 in deep, with a drain of at
least 3/4 in to a receptor or to the outdoors, 6 in to 24 in above the ground.

Why
Finishing a basement turns a bare slab into a place where a leak does damage.

Source
IRC P2801.6, P2801.6.1, P2801.6.2.

How it is measured
By what is stated of a new heater; until then it is asked for.

Cannot see
The depth of the pan, the size and the end of its drain, and what a leak would reach. Plastic pans under a gas heater
were banned in 2015; rated ones are allowed since 2021.

Exceptions
Heaters without a tank. A replacement needs no drain where there was none.

Remedies
A pan with a drain to the floor drain.
",
    cites: &["water-heater-pan"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "Finishing a basement turns a bare slab into a place where a leak does damage.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "water-heater-pan",
    detail: &HEATER_PAN,
    good: Good::Words(&["pan with a drain", "no tank"]),
    fails: "stands in no pan with a drain",
    why: WHY,
    asks: true,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
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

    const SLUG: &str = "water-heater-pan";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::WaterHeater, at(72.0, 0.0), Facing::NORTH)
            .fresh()
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing().state(&HEATER_PAN, Value::Word("pan with a drain"))
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&HEATER_PAN, Value::Word("none"));
            sample.expect(SLUG, &["correction, measured pan: none, required pan with a drain"]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&HEATER_PAN, Value::Word("pan with a drain")).expect_none(SLUG);
        good().state(&HEATER_PAN, Value::Word("no tank")).expect_none(SLUG);
        assert_eq!(good().state(&HEATER_PAN, Value::Word("none")).findings(SLUG).len(), 1);
    }

    #[test]
    fn what_is_not_stated_is_asked_for_where_it_is_new() {
        let unstated = thing();
        unstated.expect(SLUG, &["verify, measured not stated, required pan with a drain"]);
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
}
