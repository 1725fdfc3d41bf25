//! The end of a dryer's duct.

use plan::detail::heat::{DRYER_END, DRYER_SCREEN};
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "dryer-end",
    group: Group::Heat,
    title: "Where a dryer's duct ends",
    page: "\
What
A dryer's duct ends outdoors, with a damper, without a screen, at least 3 ft from any opening of the house.

Why
Lint and damp indoors feed fire and mould; a screen clogs with lint.

Source
IRC M1502.3, M1502.3.1.

How it is measured
By what is stated of a new dryer; until then it is asked for.

Cannot see
Its damper and its distance from windows and doors outside.

Exceptions
Dryers that need no duct, by their listing.

Remedies
A duct to the outdoors.
",
    cites: &["dryer-end", "dryer-screen"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "Lint and damp indoors feed fire and mould; a screen clogs with lint.";

const DEMANDS: &[Demand] = &[
    Demand {
        rule: RULE.slug,
        limit: "dryer-end",
        detail: &DRYER_END,
        good: Good::Words(&["outdoors", "needs no duct"]),
        fails: "blows indoors",
        why: WHY,
        asks: true,
    },
    Demand {
        rule: RULE.slug,
        limit: "dryer-screen",
        detail: &DRYER_SCREEN,
        good: Good::No,
        fails: "has a screen at the end of its duct",
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
    use crate::testing::{Sample, at};

    const SLUG: &str = "dryer-end";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::ClothesDryer, at(72.0, 0.0), Facing::NORTH)
            .fresh()
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing().state(&DRYER_END, Value::Word("outdoors"))
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&DRYER_END, Value::Word("indoors"));
            sample.expect(SLUG, &["correction, measured duct ends: indoors, required outdoors"]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&DRYER_END, Value::Word("outdoors")).expect_none(SLUG);
        good().state(&DRYER_END, Value::Word("needs no duct")).expect_none(SLUG);
        assert_eq!(good().state(&DRYER_END, Value::Word("indoors")).findings(SLUG).len(), 1);
        good().state(&DRYER_SCREEN, Value::No).expect_none(SLUG);
        assert_eq!(good().state(&DRYER_SCREEN, Value::Yes).findings(SLUG).len(), 1);
    }

    #[test]
    fn what_is_not_stated_is_asked_for_where_it_is_new() {
        let unstated = thing();
        unstated.expect(SLUG, &["verify, measured not stated, required outdoors"]);
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
