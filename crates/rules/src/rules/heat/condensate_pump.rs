//! A condensate pump without a switch.

use plan::detail::heat::CONDENSATE;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "condensate-pump",
    group: Group::Heat,
    title: "Pump for condensate that stops the unit",
    page: "\
What
A pump for condensate stops the unit when it fails.

Why
When the pump fails the coil goes on making water, and the finished room gets it.

Source
Good practice in a finished basement; IRC M1411.4 (2018, 2021) and M1411.10 (2024) ask it in attics and crawl spaces.

How it is measured
By what is stated of the furnace.

Cannot see
Whether the switch is wired.

Exceptions
Drains without a pump.

Remedies
Wire the pump's safety switch to the unit.
",
    cites: &["condensate-pump"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str =
    "When the pump fails the coil goes on making water, and the finished room gets it.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "condensate-pump",
    detail: &CONDENSATE,
    good: Good::Words(&["pump that stops it", "drain", "none is made", "nowhere"]),
    fails: "has a condensate pump that does not stop it",
    why: WHY,
    asks: false,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::of_kind(sheet, ServiceKind::Furnace));
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "condensate-pump";

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
            let sample = good().edition(edition).state(&CONDENSATE, Value::Word("pump alone"));
            sample.expect(
                SLUG,
                &["advice, measured condensate: pump alone, required pump that stops it"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&CONDENSATE, Value::Word("pump that stops it")).expect_none(SLUG);
        good().state(&CONDENSATE, Value::Word("drain")).expect_none(SLUG);
        good().state(&CONDENSATE, Value::Word("none is made")).expect_none(SLUG);
        good().state(&CONDENSATE, Value::Word("nowhere")).expect_none(SLUG);
        assert_eq!(good().state(&CONDENSATE, Value::Word("pump alone")).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }
}
