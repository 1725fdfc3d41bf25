//! Gypsum board under an appliance.

use plan::detail::heat::BASE;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "appliance-base",
    group: Group::Heat,
    title: "What a furnace or water heater stands on",
    page: "\
What
A furnace or water heater does not stand on gypsum board.

Why
Board crushes and swells when it gets wet, and the appliance tips.

Source
IRC M1307.7 (2024); before that good practice.

How it is measured
By what is stated of its base.

Cannot see
Whether the base is level and strong enough.

Exceptions
None.

Remedies
A base of masonry or metal.
",
    cites: &["appliance-base"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "Board crushes and swells when it gets wet, and the appliance tips.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "appliance-base",
    detail: &BASE,
    good: Good::Words(&["concrete", "masonry or metal", "wood"]),
    fails: "stands on gypsum board",
    why: WHY,
    asks: false,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::appliances(sheet));
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

    const SLUG: &str = "appliance-base";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Furnace, at(72.0, 0.0), Facing::NORTH)
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
            let sample = good().edition(edition).state(&BASE, Value::Word("gypsum board"));
            // The text stands in the edition of 2024; before it is practice.
            let severity = if edition == Edition::E2024 { "correction" } else { "advice" };
            let said = format!("{severity}, measured base: gypsum board, required concrete");
            sample.expect(SLUG, &[&said]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&BASE, Value::Word("concrete")).expect_none(SLUG);
        good().state(&BASE, Value::Word("masonry or metal")).expect_none(SLUG);
        good().state(&BASE, Value::Word("wood")).expect_none(SLUG);
        assert_eq!(good().state(&BASE, Value::Word("gypsum board")).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }
}
