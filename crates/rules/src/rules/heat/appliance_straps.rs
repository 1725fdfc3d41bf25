//! Straps of a water heater.

use plan::detail::heat::STRAPPED;
use plan::detail::site::SEISMIC_CATEGORY;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "appliance-straps",
    group: Group::Heat,
    title: "Straps of a water heater against earthquakes",
    page: "\
What
In seismic design categories D0, D1 and D2 a water heater is strapped in its upper and in its lower third, the lower
strap at least 4 in above the controls.

Why
A tank that falls over in an earthquake tears off its gas pipe.

Source
IRC M1307.2.

How it is measured
By the site's category and by what is stated of the heater.

Cannot see
Where the straps sit and what they are fixed to.

Exceptions
What stands already in a standing house is not asked about.

Remedies
Two straps to the framing or the concrete, as the maker shows.
",
    cites: &["appliance-straps"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "A tank that falls over in an earthquake tears off its gas pipe.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "appliance-straps",
    detail: &STRAPPED,
    good: Good::Yes,
    fails: "is not strapped",
    why: WHY,
    asks: true,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !sheet.ask_site(&SEISMIC_CATEGORY).is(&["D0", "D1", "D2"]) {
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

    const SLUG: &str = "appliance-straps";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .state_site(&SEISMIC_CATEGORY, Value::Word("D0"))
            .service(ServiceKind::WaterHeater, at(72.0, 0.0), Facing::NORTH)
            .fresh()
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing().state(&STRAPPED, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&STRAPPED, Value::No);
            sample.expect(SLUG, &["correction, measured strapped: no, required yes"]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&STRAPPED, Value::Yes).expect_none(SLUG);
        assert_eq!(good().state(&STRAPPED, Value::No).findings(SLUG).len(), 1);
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
    fn elsewhere_nothing_is_asked() {
        thing().state_site(&SEISMIC_CATEGORY, Value::Word("C")).expect_none(SLUG);
    }
}
