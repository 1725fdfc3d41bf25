//! Where a bath fan blows.

use plan::detail::heat::FAN_END;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "bath-fan-end",
    group: Group::Heat,
    title: "Where a bath fan blows",
    page: "\
What
The duct of a bath fan ends outdoors, never in an attic, a crawl space or between joists.

Why
What it takes out of the bath wets the framing wherever else it is let out.

Source
IRC M1505.2 (2021), R303.3: a fan that blows back into the room does not count.

How it is measured
By what is stated of a new fan; until then it is asked for.

Cannot see
How far its end is from windows, 3 ft, and from air intakes, 10 ft (M1504.3).

Exceptions
What is there already in a standing house.

Remedies
A duct to the outdoors, through the rim.
",
    cites: &["bath-fan-end"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "What it takes out of the bath wets the framing wherever else it is let out.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "bath-fan-end",
    detail: &FAN_END,
    good: Good::Words(&["outdoors"]),
    fails: "does not blow outdoors",
    why: WHY,
    asks: true,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::of_kind(sheet, ServiceKind::ExhaustFan));
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "bath-fan-end";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::ExhaustFan, at(72.0, 0.0), Facing::NORTH)
            .fresh()
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing().state(&FAN_END, Value::Word("outdoors"))
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&FAN_END, Value::Word("attic or joists"));
            sample.expect(
                SLUG,
                &["correction, measured blows to: attic or joists, required outdoors"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&FAN_END, Value::Word("outdoors")).expect_none(SLUG);
        assert_eq!(good().state(&FAN_END, Value::Word("attic or joists")).findings(SLUG).len(), 1);
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
