//! Where condensate goes.

use plan::detail::heat::CONDENSATE;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "condensate",
    group: Group::Heat,
    title: "Condensate of a furnace or cooling coil",
    page: "\
What
The condensate of a cooling coil or of a condensing furnace is led to a drain, by a pipe of at least 3/4 in that falls
1/8 in a foot, or by a pump.

Why
A coil makes gallons on a warm day; in a finished room they go into the floor.

Source
IRC M1411.3 (2018, 2021), M1411.9 (2024).

How it is measured
By what is stated of a new furnace; until then it is asked for.

Cannot see
The size, the fall and the cleaning of the pipe, and the second pan that is asked for where an overflow would do
damage.

Exceptions
Furnaces that make none; what stands already in a standing house.

Remedies
A drain, or a pump with a hose to a receptor.
",
    cites: &["condensate"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "A coil makes gallons on a warm day; in a finished room they go into the floor.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "condensate",
    detail: &CONDENSATE,
    good: Good::Words(&["drain", "pump that stops it", "pump alone", "none is made"]),
    fails: "has nowhere for its condensate to go",
    why: WHY,
    asks: true,
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

    const SLUG: &str = "condensate";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Furnace, at(72.0, 0.0), Facing::NORTH)
            .fresh()
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing().state(&CONDENSATE, Value::Word("drain"))
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&CONDENSATE, Value::Word("nowhere"));
            sample.expect(SLUG, &["correction, measured condensate: nowhere, required drain"]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&CONDENSATE, Value::Word("drain")).expect_none(SLUG);
        good().state(&CONDENSATE, Value::Word("pump that stops it")).expect_none(SLUG);
        good().state(&CONDENSATE, Value::Word("pump alone")).expect_none(SLUG);
        good().state(&CONDENSATE, Value::Word("none is made")).expect_none(SLUG);
        assert_eq!(good().state(&CONDENSATE, Value::Word("nowhere")).findings(SLUG).len(), 1);
    }

    #[test]
    fn what_is_not_stated_is_asked_for_where_it_is_new() {
        let unstated = thing();
        unstated.expect(SLUG, &["verify, measured not stated, required drain"]);
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
