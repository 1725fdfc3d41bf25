//! Rooms with supply air and no return.

use plan::Element;
use plan::detail::heat::AIR_BACK;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::rules::electrical::devices::in_room;
use crate::{Check, Finding, Group, On, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "air-way-back",
    group: Group::Heat,
    title: "Way back for the air of a room",
    page: "\
What
A room with a supply register has a return grille, or its air gets back through a transfer grille.

Why
With the door shut the room is blown up, the rest of the house sucked empty, and flues draw badly.

Source
Good practice; one state has 50 sq in for each 100 cfm and a door undercut of 1 in.

How it is measured
Rooms that have a supply register and no return grille, and what is stated of them. All such rooms in one finding.

Cannot see
How much air comes in and goes out.

Exceptions
None.

Remedies
A transfer grille over the door, or a return.
",
    cites: &["air-way-back"],
    check: Check::Plan(&[On::Service(ServiceKind::SupplyRegister), On::Service(ServiceKind::ReturnGrille)], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "With the door shut the room is blown up, the rest of the house sucked empty, and flues draw badly.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "air-way-back",
    detail: &AIR_BACK,
    good: Good::Yes,
    fails: "has no way back for its air",
    why: WHY,
    asks: true,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, closed(sheet).into_iter());
    }
}

/// The tags of rooms into which air is blown and from which none is drawn.
fn closed<'a>(sheet: &Sheet<'a>) -> Vec<&'a Element> {
    let rooms = sheet.facts.rooms.iter();
    let without = rooms.filter(|room| {
        !in_room(sheet, ServiceKind::SupplyRegister, room.index).is_empty()
            && in_room(sheet, ServiceKind::ReturnGrille, room.index).is_empty()
    });
    without.filter_map(|room| sheet.plan().get(room.tag?)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{Sample, at};
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::RoomUse;

    const SLUG: &str = "air-way-back";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::SupplyRegister, at(72.0, 60.0), Facing::NORTH)
            .tag(at(30.0, 30.0), "Office", RoomUse::Office)
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing().state(&AIR_BACK, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&AIR_BACK, Value::No);
            sample.expect(SLUG, &["advice, measured way back for air: no, required yes"]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&AIR_BACK, Value::Yes).expect_none(SLUG);
        assert_eq!(good().state(&AIR_BACK, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn what_is_not_stated_is_asked_for_where_it_is_new() {
        let unstated = thing();
        unstated.expect(SLUG, &["advice, measured not stated, required yes"]);
        assert_eq!(unstated.remedies(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }
}
