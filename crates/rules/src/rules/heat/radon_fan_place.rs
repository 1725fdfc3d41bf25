//! The place of a radon fan.

use plan::detail::heat::RADON_FAN;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "radon-fan-place",
    group: Group::Heat,
    title: "Place of a radon fan",
    page: "\
What
The fan of a radon system is in an attic, outdoors, or in a garage with nothing to live in above it, never in or below
a space that is conditioned.

Why
The pipe beyond the fan is under pressure: a leak there blows radon into the house.

Source
Guidance of the environmental agency and ASTM E2121, as quoted by installers; not an article of the residential code.

How it is measured
By what is stated of the pipe.

Cannot see
What is above a garage, and where the pipe ends.

Exceptions
Passive pipes without a fan.

Remedies
Have a certified contractor move the fan.
",
    cites: &["radon-fan-place"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str =
    "The pipe beyond the fan is under pressure: a leak there blows radon into the house.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "radon-fan-place",
    detail: &RADON_FAN,
    good: Good::Words(&["none", "attic", "outdoors", "garage"]),
    fails: "has its fan in the basement",
    why: WHY,
    asks: false,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::of_kind(sheet, ServiceKind::RadonPipe));
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "radon-fan-place";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::RadonPipe, at(72.0, 0.0), Facing::NORTH)
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
            let sample = good().edition(edition).state(&RADON_FAN, Value::Word("basement"));
            sample.expect(SLUG, &["correction, measured fan: basement, required none"]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&RADON_FAN, Value::Word("none")).expect_none(SLUG);
        good().state(&RADON_FAN, Value::Word("attic")).expect_none(SLUG);
        good().state(&RADON_FAN, Value::Word("outdoors")).expect_none(SLUG);
        good().state(&RADON_FAN, Value::Word("garage")).expect_none(SLUG);
        assert_eq!(good().state(&RADON_FAN, Value::Word("basement")).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }
}
