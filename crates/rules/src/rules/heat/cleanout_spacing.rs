//! The distance between cleanouts.

use plan::detail::plumbing::NEXT_CLEANOUT;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "cleanout-spacing",
    group: Group::Heat,
    title: "Distance between cleanouts",
    page: "\
What
Along a horizontal drain there is a cleanout every 100 ft.

Why
A drain snake reaches only so far.

Source
IRC P3005.2.1; some cities have 50 ft.

How it is measured
By what is stated of a cleanout; nothing is asked until it is.

Cannot see
Where the drain runs; turns of more than 45 degrees (P3005.2.4) and where the sewer begins (P3005.2.3).

Exceptions
None.

Remedies
One more cleanout.
",
    cites: &["cleanout-spacing"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "A drain snake reaches only so far.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "cleanout-spacing",
    detail: &NEXT_CLEANOUT,
    good: Good::AtMost,
    fails: "is too far from the next cleanout",
    why: WHY,
    asks: false,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::of_kind(sheet, ServiceKind::Cleanout));
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "cleanout-spacing";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Cleanout, at(72.0, 0.0), Facing::NORTH)
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
            let sample = good().edition(edition).state(&NEXT_CLEANOUT, Value::Length(inch(1300.0)));
            sample.expect(SLUG, &["correction, measured 1300\", required 1200\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&NEXT_CLEANOUT, Value::Length(inch(1200.0))).expect_none(SLUG);
        assert_eq!(
            good()
                .state(&NEXT_CLEANOUT, Value::Length(inch(1200.0) + measure::Len::UNIT))
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
