//! The height of a standpipe.

use plan::detail::plumbing::STANDPIPE_HEIGHT;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "standpipe-height",
    group: Group::Heat,
    title: "Height of a standpipe",
    page: "\
What
The top of a standpipe is 18 in to 42 in above the weir of its trap.

Why
A low standpipe runs over, a high one siphons the washer or its trap.

Source
IRC P2706.1.2.

How it is measured
By what is stated of the standpipe; it is taken for 30 in.

Cannot see
Its size, 2 in for a washer (P3201.7).

Exceptions
None.

Remedies
Another length of pipe between trap and top.
",
    cites: &["standpipe-least", "standpipe-most"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "A low standpipe runs over, a high one siphons the washer or its trap.";

const DEMANDS: &[Demand] = &[
    Demand {
        rule: RULE.slug,
        limit: "standpipe-least",
        detail: &STANDPIPE_HEIGHT,
        good: Good::AtLeast,
        fails: "is too low",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "standpipe-most",
        detail: &STANDPIPE_HEIGHT,
        good: Good::AtMost,
        fails: "is too high",
        why: WHY,
        asks: false,
    },
];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::of_kind(sheet, ServiceKind::Standpipe));
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "standpipe-height";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Standpipe, at(72.0, 0.0), Facing::NORTH)
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
            let sample =
                good().edition(edition).state(&STANDPIPE_HEIGHT, Value::Length(inch(12.0)));
            sample.expect(SLUG, &["correction, measured 12\", required 18\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&STANDPIPE_HEIGHT, Value::Length(inch(18.0))).expect_none(SLUG);
        assert_eq!(
            good()
                .state(&STANDPIPE_HEIGHT, Value::Length(inch(18.0) - measure::Len::UNIT))
                .findings(SLUG)
                .len(),
            1
        );
        good().state(&STANDPIPE_HEIGHT, Value::Length(inch(42.0))).expect_none(SLUG);
        assert_eq!(
            good()
                .state(&STANDPIPE_HEIGHT, Value::Length(inch(42.0) + measure::Len::UNIT))
                .findings(SLUG)
                .len(),
            1
        );
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }
}
