//! No electrical panel in a clothes closet.

use plan::element::{RoomUse, ServiceKind};

use crate::{Check, Finding, Group, On, Rule, Sheet};

use super::in_room;

pub(crate) const RULE: Rule = Rule {
    slug: "panel-no-clothes-closet",
    group: Group::Access,
    title: "No electrical panel in a clothes closet",
    page: "\
What
An electrical panel does not look into a closet.

Why
A spark at a breaker sets clothes alight.

Source
NEC 240.24(D): not near easily ignited material, as in clothes closets.

How it is measured
The room before the panel's face is one that is tagged as a closet.

Cannot see
What is kept in the closet. A closet without a tag.

Exceptions
A closet that holds no clothes is judged case by case: tag it as storage or mechanical and ask. A panel in a wall that backs
onto a closet is not in the closet.

Remedies
None is offered: give the panel a room of its own with its working space and a door.
",
    cites: &["panel-no-clothes-closet"],
    check: Check::Plan(&[On::Service(ServiceKind::Panel)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let why = "A spark at a breaker sets clothes alight.";
    in_room::check(sheet, out, "panel-no-clothes-closet", RoomUse::Closet, why);
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::element::{RoomUse, ServiceKind};

    use crate::testing::{Sample, at};

    const SLUG: &str = "panel-no-clothes-closet";

    fn closet_and_bedroom() -> Sample {
        Sample::room(200.0, 120.0)
            .partition(at(60.0, 0.0), at(60.0, 120.0))
            .tag(at(30.0, 60.0), "Closet", RoomUse::Closet)
            .tag(at(150.0, 60.0), "Bedroom", RoomUse::Bedroom)
    }

    #[test]
    fn clear_pass() {
        // A bedroom itself is not banned (services.md A1, panel-occupancy-ok).
        closet_and_bedroom()
            .service(ServiceKind::Panel, at(150.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        closet_and_bedroom()
            .service(ServiceKind::Panel, at(30.0, 0.0), Facing::NORTH)
            .expect(SLUG, &["correction, measured in a closet, required not in a closet"]);
    }

    #[test]
    fn at_the_limit() {
        let on_the_wall = |x: f64, facing: Facing| {
            closet_and_bedroom().service(ServiceKind::Panel, at(x, 60.0), facing)
        };
        on_the_wall(62.25, Facing::EAST).expect_none(SLUG);
        on_the_wall(57.75, Facing::WEST)
            .expect(SLUG, &["correction, measured in a closet, required not in a closet"]);
    }

    #[test]
    fn does_not_apply() {
        closet_and_bedroom()
            .service(ServiceKind::JunctionBox, at(30.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }
}
