//! The sediment trap of a gas appliance.

use plan::detail::heat::SEDIMENT_TRAP;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "sediment-trap",
    group: Group::Heat,
    title: "Sediment trap of a gas appliance",
    page: "\
What
The gas pipe of a furnace or a water heater has a sediment trap, a tee with a capped nipple, after the valve and close
to the inlet.

Why
Scale from the pipe stops the gas valve of the burner from closing.

Source
IRC G2419.4; the uniform mechanical code 1312.7.

How it is measured
By what is stated of a new appliance that burns gas; until then it is asked for, once for all.

Cannot see
The length of the nipple, 3 in from memory, and the room below it.

Exceptions
Ranges, dryers, lights and grills; what stands already in a standing house.

Remedies
A tee and a nipple: work of a licensed fitter.
",
    cites: &["sediment-trap"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "Scale from the pipe stops the gas valve of the burner from closing.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "sediment-trap",
    detail: &SEDIMENT_TRAP,
    good: Good::Yes,
    fails: "has no sediment trap",
    why: WHY,
    asks: true,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(
            sheet,
            out,
            demand,
            told::on_gas(sheet).filter(|e| SEDIMENT_TRAP.fits(&e.body)),
        );
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{Sample, at};
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::ServiceKind;

    const SLUG: &str = "sediment-trap";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::WaterHeater, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .state(&plan::detail::heat::FUEL, Value::Word("propane"))
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing().state(&SEDIMENT_TRAP, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&SEDIMENT_TRAP, Value::No);
            sample.expect(SLUG, &["correction, measured sediment trap: no, required yes"]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&SEDIMENT_TRAP, Value::Yes).expect_none(SLUG);
        assert_eq!(good().state(&SEDIMENT_TRAP, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn what_is_not_stated_is_asked_for_where_it_is_new() {
        let unstated = thing();
        unstated.expect(SLUG, &["verify, measured not stated, required yes"]);
        assert_eq!(unstated.remedies(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }

    #[test]
    fn a_standing_one_is_left_alone() {
        thing().existing().expect_none(SLUG);
    }
}
