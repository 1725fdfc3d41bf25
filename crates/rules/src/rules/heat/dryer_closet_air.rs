//! Air for a gas dryer in a closet.

use plan::detail::heat::DRYER_AIR;
use plan::element::{RoomUse, ServiceKind};
use plan::{Body, Element};

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, On, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "dryer-closet-air",
    group: Group::Heat,
    title: "Air for a gas dryer in a closet",
    page: "\
What
A gas dryer in a closet has a free opening of at least 100 sq in for its air.

Why
A dryer blows out 200 cfm: a closed closet starves its burner.

Source
IRC G2439.5 (614.6), the figure from memory.

How it is measured
By the room of a new dryer that burns gas, and by what is stated of the opening.

Cannot see
Other means that are approved.

Exceptions
Electric dryers, and rooms that are no closet.

Remedies
A louvred door: wood lets through a quarter of its face.
",
    cites: &["dryer-closet-air"],
    check: Check::Plan(&[On::Service(ServiceKind::ClothesDryer)], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "A dryer blows out 200 cfm: a closed closet starves its burner.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "dryer-closet-air",
    detail: &DRYER_AIR,
    good: Good::AtLeast,
    fails: "gets too little air in its closet",
    why: WHY,
    asks: true,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::on_gas(sheet).filter(|e| in_closet(sheet, e)));
    }
}

/// Whether an element is a dryer that stands in a closet.
fn in_closet(sheet: &Sheet<'_>, element: &Element) -> bool {
    let Body::Service(service) = &element.body else { return false };
    let room = sheet.facts.room_at(service.placed().centre());
    service.kind == ServiceKind::ClothesDryer
        && room.is_some_and(|room| sheet.facts.room(room).room_use == RoomUse::Closet)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{Sample, at};
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    const SLUG: &str = "dryer-closet-air";

    fn thing() -> Sample {
        Sample::room(60.0, 60.0)
            .tag(at(30.0, 50.0), "Closet", RoomUse::Closet)
            .service(ServiceKind::ClothesDryer, at(30.0, 0.0), Facing::NORTH)
            .fresh()
            .state(&plan::detail::heat::FUEL, Value::Word("natural gas"))
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing().state(&DRYER_AIR, Value::Number(100))
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&DRYER_AIR, Value::Number(80));
            sample.expect(
                SLUG,
                &["correction, measured air of the closet: 80 sq in, required 100 sq in"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&DRYER_AIR, Value::Number(100)).expect_none(SLUG);
        assert_eq!(good().state(&DRYER_AIR, Value::Number(99)).findings(SLUG).len(), 1);
    }

    #[test]
    fn what_is_not_stated_is_asked_for_where_it_is_new() {
        let unstated = thing();
        unstated.expect(SLUG, &["verify, measured not stated, required 100 sq in"]);
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

    #[test]
    fn a_laundry_room_is_no_closet() {
        Sample::room(60.0, 60.0)
            .tag(at(30.0, 50.0), "Laundry", RoomUse::Laundry)
            .service(ServiceKind::ClothesDryer, at(30.0, 0.0), Facing::NORTH)
            .fresh()
            .state(&plan::detail::heat::FUEL, Value::Word("natural gas"))
            .expect_none(SLUG);
    }
}
