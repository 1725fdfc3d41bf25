//! The trap of a floor drain.

use plan::detail::plumbing::{DRAIN_OUTLET, TRAP_SEAL};
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "floor-drain-trap",
    group: Group::Heat,
    title: "Trap and outlet of a floor drain",
    page: "\
What
The trap of a floor drain keeps its seal by a primer, a barrier device or a deep seal; its outlet is at least 2 in.

Why
A floor drain that is rarely used dries out, and sewer gas comes up into the room.

Source
IRC P3201.2.1, P2719.1.

How it is measured
By what is stated of a new drain; until then it is asked for.

Cannot see
Whether the strainer lifts out and the primer can be reached.

Exceptions
What is there already in a standing house.

Remedies
A barrier that is pushed into the drain is the least work.
",
    cites: &["floor-drain-seal", "floor-drain-outlet"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str =
    "A floor drain that is rarely used dries out, and sewer gas comes up into the room.";

const DEMANDS: &[Demand] = &[
    Demand {
        rule: RULE.slug,
        limit: "floor-drain-seal",
        detail: &TRAP_SEAL,
        good: Good::Words(&["a primer", "a barrier", "a deep seal"]),
        fails: "has a trap that dries out",
        why: WHY,
        asks: true,
    },
    Demand {
        rule: RULE.slug,
        limit: "floor-drain-outlet",
        detail: &DRAIN_OUTLET,
        good: Good::AtLeast,
        fails: "has an outlet that is too small",
        why: WHY,
        asks: false,
    },
];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::of_kind(sheet, ServiceKind::FloorDrain));
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "floor-drain-trap";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::FloorDrain, at(72.0, 0.0), Facing::NORTH)
            .fresh()
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing().state(&TRAP_SEAL, Value::Word("a primer"))
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&TRAP_SEAL, Value::Word("nothing"));
            sample.expect(
                SLUG,
                &["correction, measured trap kept wet by: nothing, required a primer"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&TRAP_SEAL, Value::Word("a primer")).expect_none(SLUG);
        good().state(&TRAP_SEAL, Value::Word("a barrier")).expect_none(SLUG);
        good().state(&TRAP_SEAL, Value::Word("a deep seal")).expect_none(SLUG);
        assert_eq!(good().state(&TRAP_SEAL, Value::Word("nothing")).findings(SLUG).len(), 1);
        good().state(&DRAIN_OUTLET, Value::Length(inch(2.0))).expect_none(SLUG);
        assert_eq!(
            good()
                .state(&DRAIN_OUTLET, Value::Length(inch(2.0) - measure::Len::UNIT))
                .findings(SLUG)
                .len(),
            1
        );
    }

    #[test]
    fn what_is_not_stated_is_asked_for_where_it_is_new() {
        let unstated = thing();
        unstated.expect(SLUG, &["verify, measured not stated, required a primer"]);
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
