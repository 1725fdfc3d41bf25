//! The vent of an ejector pit.

use plan::detail::plumbing::PIT_VENT;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "ejector-vent",
    group: Group::Heat,
    title: "Vent of an ejector pit",
    page: "\
What
The pit of a sewage ejector has a vent to the open air; an air admittance valve does not do.

Why
A tight pit without a vent pushes sewer gas through the traps of the new bath.

Source
IRC P3007.3.2, P3113.4.1.

How it is measured
By what is stated of a new ejector; until then it is asked for.

Cannot see
The size and the length of the vent, which go with the pump.

Exceptions
Sumps that take ground water alone; what is there already in a standing house.

Remedies
A vent of its own, or into the dry part of another.
",
    cites: &["ejector-vent"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "A tight pit without a vent pushes sewer gas through the traps of the new bath.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "ejector-vent",
    detail: &PIT_VENT,
    good: Good::Yes,
    fails: "has no vent",
    why: WHY,
    asks: true,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::of_kind(sheet, ServiceKind::Ejector));
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "ejector-vent";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Ejector, at(72.0, 0.0), Facing::NORTH)
            .fresh()
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing().state(&PIT_VENT, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&PIT_VENT, Value::No);
            sample.expect(SLUG, &["correction, measured vented: no, required yes"]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&PIT_VENT, Value::Yes).expect_none(SLUG);
        assert_eq!(good().state(&PIT_VENT, Value::No).findings(SLUG).len(), 1);
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
}
