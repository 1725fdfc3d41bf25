//! What a dryer's duct is made of.

use plan::detail::heat::{DRYER_FLEXIBLE, DRYER_FLEXIBLE_HIDDEN, DRYER_SCREWS};
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "dryer-duct-build",
    group: Group::Heat,
    title: "Flexible part and joints of a dryer's duct",
    page: "\
What
The flexible part between dryer and duct is one piece of at most 8 ft and not concealed; screws reach at most 1/8 in
into the duct.

Why
Lint hangs on ribs and screws, and lint burns.

Source
IRC M1502.4.2, M1502.4.3.

How it is measured
By what is stated of the dryer; the duct is taken for well built.

Cannot see
The thickness of the metal, and plates over it near the face of studs (M1502.5).

Exceptions
None.

Remedies
Rigid metal duct with taped joints.
",
    cites: &["dryer-flexible", "dryer-flexible-hidden", "dryer-screws"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "Lint hangs on ribs and screws, and lint burns.";

const DEMANDS: &[Demand] = &[
    Demand {
        rule: RULE.slug,
        limit: "dryer-flexible",
        detail: &DRYER_FLEXIBLE,
        good: Good::AtMost,
        fails: "has a flexible part that is too long",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "dryer-flexible-hidden",
        detail: &DRYER_FLEXIBLE_HIDDEN,
        good: Good::No,
        fails: "has a flexible part in a wall, floor or ceiling",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "dryer-screws",
        detail: &DRYER_SCREWS,
        good: Good::No,
        fails: "has screws that reach into its duct",
        why: WHY,
        asks: false,
    },
];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::of_kind(sheet, ServiceKind::ClothesDryer));
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "dryer-duct-build";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::ClothesDryer, at(72.0, 0.0), Facing::NORTH)
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
            let sample = good().edition(edition).state(&DRYER_FLEXIBLE, Value::Length(inch(100.0)));
            sample.expect(SLUG, &["correction, measured 100\", required 96\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&DRYER_FLEXIBLE, Value::Length(inch(96.0))).expect_none(SLUG);
        assert_eq!(
            good()
                .state(&DRYER_FLEXIBLE, Value::Length(inch(96.0) + measure::Len::UNIT))
                .findings(SLUG)
                .len(),
            1
        );
        good().state(&DRYER_FLEXIBLE_HIDDEN, Value::No).expect_none(SLUG);
        assert_eq!(good().state(&DRYER_FLEXIBLE_HIDDEN, Value::Yes).findings(SLUG).len(), 1);
        good().state(&DRYER_SCREWS, Value::No).expect_none(SLUG);
        assert_eq!(good().state(&DRYER_SCREWS, Value::Yes).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }
}
