//! The pipe of a temperature and pressure relief valve.

use plan::detail::plumbing::{RELIEF_END, RELIEF_FALLS};
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "relief-pipe",
    group: Group::Heat,
    title: "Relief pipe of a water heater",
    page: "\
What
The pipe of the relief valve falls all the way, ends in the same room at most 6 in and at least two pipe sizes above
the floor or its receptor, and has no trap, no valve and no thread at its end.

Why
It lets off scalding water: it must come out low, in sight, and can't be stopped.

Source
IRC P2804.6.1.

How it is measured
By what is stated of the heater, above the finished floor; it is taken for right. The least height is for a pipe of
3/4 in.

Cannot see
The size of the pipe and its material.

Exceptions
None.

Remedies
Lengthen or cut the pipe: a new floor eats the gap. Have a plumber do it.
",
    cites: &["relief-pipe-most", "relief-pipe-least", "relief-pipe-falls"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str =
    "It lets off scalding water: it must come out low, in sight, and can't be stopped.";

const DEMANDS: &[Demand] = &[
    Demand {
        rule: RULE.slug,
        limit: "relief-pipe-most",
        detail: &RELIEF_END,
        good: Good::AtMost,
        fails: "has a relief pipe that ends too high",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "relief-pipe-least",
        detail: &RELIEF_END,
        good: Good::AtLeast,
        fails: "has a relief pipe that ends too low",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "relief-pipe-falls",
        detail: &RELIEF_FALLS,
        good: Good::Yes,
        fails: "has a relief pipe that can't empty",
        why: WHY,
        asks: false,
    },
];

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
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "relief-pipe";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::WaterHeater, at(72.0, 0.0), Facing::NORTH)
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
            let sample = good().edition(edition).state(&RELIEF_END, Value::Length(inch(9.0)));
            sample.expect(SLUG, &["correction, measured 9\", required 6\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&RELIEF_END, Value::Length(inch(6.0))).expect_none(SLUG);
        assert_eq!(
            good()
                .state(&RELIEF_END, Value::Length(inch(6.0) + measure::Len::UNIT))
                .findings(SLUG)
                .len(),
            1
        );
        good().state(&RELIEF_END, Value::Length(inch(1.5))).expect_none(SLUG);
        assert_eq!(
            good()
                .state(&RELIEF_END, Value::Length(inch(1.5) - measure::Len::UNIT))
                .findings(SLUG)
                .len(),
            1
        );
        good().state(&RELIEF_FALLS, Value::Yes).expect_none(SLUG);
        assert_eq!(good().state(&RELIEF_FALLS, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }
}
