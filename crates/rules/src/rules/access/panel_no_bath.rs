//! No electrical panel in a bathroom.

use plan::element::{RoomUse, ServiceKind};

use crate::{Check, Finding, Group, On, Rule, Sheet};

use super::in_room;

pub(crate) const RULE: Rule = Rule {
    slug: "panel-no-bath",
    group: Group::Access,
    title: "No electrical panel in a bathroom",
    page: "\
What
An electrical panel does not look into a bathroom or toilet room.

Why
Water, damp and bare feet at a panel can kill.

Source
NEC 240.24(E); the residential code adds toilet rooms in the notes of figure E3405.1.

How it is measured
The room before the panel's face is one that is tagged as a bath.

Cannot see
A bathroom that has no tag.

Exceptions
A panel in the other face of the bathroom's wall is not in the bathroom.

Remedies
None is offered: move the bathroom's wall or have an electrician move the panel.
",
    cites: &["panel-no-bath"],
    check: Check::Plan(&[On::Service(ServiceKind::Panel)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let why = "Water, damp and bare feet at a panel can kill.";
    in_room::check(sheet, out, "panel-no-bath", RoomUse::Bath, why);
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::element::{RoomUse, ServiceKind};

    use crate::testing::{Sample, at};

    const SLUG: &str = "panel-no-bath";

    /// A bath west of a partition and an office east of it.
    fn bath_and_office() -> Sample {
        Sample::room(200.0, 120.0)
            .partition(at(100.0, 0.0), at(100.0, 120.0))
            .tag(at(50.0, 60.0), "Bath", RoomUse::Bath)
            .tag(at(150.0, 60.0), "Office", RoomUse::Office)
    }

    #[test]
    fn clear_pass() {
        bath_and_office()
            .service(ServiceKind::Panel, at(150.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        bath_and_office()
            .service(ServiceKind::Panel, at(50.0, 0.0), Facing::NORTH)
            .expect(SLUG, &["correction, measured in a bath, required not in a bath"]);
    }

    #[test]
    fn at_the_limit() {
        // On the other face of the bath's own wall.
        bath_and_office()
            .service(ServiceKind::Panel, at(102.25, 60.0), Facing::EAST)
            .expect_none(SLUG);
        bath_and_office()
            .service(ServiceKind::Panel, at(97.75, 60.0), Facing::WEST)
            .expect(SLUG, &["correction, measured in a bath, required not in a bath"]);
    }

    #[test]
    fn does_not_apply() {
        bath_and_office()
            .service(ServiceKind::FixtureValve, at(50.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }
}
