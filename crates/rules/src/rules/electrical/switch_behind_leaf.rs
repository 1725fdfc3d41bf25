//! A switch that an open door covers.

use geometry::{Bounds, gap};
use measure::Len;
use plan::Element;
use plan::element::{ServiceKind, ServicePoint};
use space::leaf_reaches;

use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Reach, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "switch-behind-leaf",
    group: Group::Electrical,
    title: "Switch behind an open door",
    page: "\
What
The switch of a room is not behind its door: it is on the latch side, where the hand is.

Why
One comes in in the dark, and the leaf lies over the switch.

Source
Common practice; NEC 210.70(A)(1) asks for a control near an entrance of the room, since 2020.

How it is measured
A switch that the leaf sweeps over, or that is within 6 in of the open leaf on its hinge side.

Cannot see
Which light it controls.

Exceptions
A second switch for the same light at another place.

Remedies
Move the switch to the latch side, or turn the door.
",
    cites: &["switch-behind-leaf"],
    check: Check::Services(&[ServiceKind::Switch], &[Reach::Limit("switch-behind-leaf")], check),
    remedies: None,
};

const WHY: &str = "One comes in in the dark, and the leaf lies over the switch.";

fn check(sheet: &Sheet<'_>, element: &Element, switch: &ServicePoint, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("switch-behind-leaf");
    let place = switch.placed().corners();
    let reach = Bounds::of(place).grow(limit.value.max(Len::ZERO));
    for door in sheet.facts.openings_near(reach) {
        let Some(leaf) = door.leaves.first() else { continue };
        let distance = gap(&place, &[leaf.hinge, leaf.open]).len;
        let latch = gap(&place, &[leaf.shut]).len;
        let covered = leaf_reaches(leaf, &place)
            || (distance <= limit.value && distance < latch && beside(leaf, &place));
        if !covered {
            continue;
        }
        let title = format!(
            "{} is behind {} when it is open",
            capital(&called(sheet, element.id)),
            called(sheet, door.id)
        );
        out.push(
            Finding::new(
                Severity::Advice,
                limit.citation.clone(),
                RULE.slug,
                vec![element.id, door.id],
                Phrase::text(title),
                WHY,
            )
            .figures(Quantity::Len(distance), Quantity::Len(limit.value + Len::UNIT))
            .at(Place::Point(switch.placed().centre())),
        );
    }
}

/// Whether a thing lies along the open leaf, not beyond its free edge nor before its wall.
fn beside(leaf: &space::Leaf, place: &[geometry::Pt]) -> bool {
    let along = leaf.open - leaf.hinge;
    let whole = along.dot(along);
    place.iter().any(|p| (0..=whole).contains(&(*p - leaf.hinge).dot(along)))
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "switch-behind-leaf";

    /// A door of 30 in in the west wall of a room, `from` the south wall, hinged at its south jamb and swinging in;
    /// a switch on the south wall, 20 in from the west one.
    fn room(from: f64) -> Sample {
        let room = Sample::room(144.0, 120.0);
        let west = room.last();
        // The west wall runs from the north to the south.
        room.door(west, 120.0 - from - 30.0, 30.0)
            .tune_door(|d| d.hinge = plan::element::End::Finish)
            .service(ServiceKind::Switch, at(20.0, 0.0), Facing::NORTH)
            .fresh()
    }

    #[test]
    fn clear_pass() {
        room(40.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            // The open leaf lies 4 in off the wall; the switch sticks out 1 in.
            let sample = room(4.0).edition(edition);
            sample.expect(SLUG, &["advice, measured 3\", required 6\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        assert_eq!(room(7.0).findings(SLUG).len(), 1, "6 in off");
        room(7.0 + 1.0 / 64.0).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        // On the latch side, and beyond the leaf's free edge.
        let room = Sample::room(144.0, 120.0);
        let west = room.last();
        let door = room.door(west, 80.0, 30.0).tune_door(|d| d.hinge = plan::element::End::Finish);
        let north = door.clone().service(ServiceKind::Switch, at(0.0, 60.0), Facing::EAST);
        north.expect_none(SLUG);
        door.service(ServiceKind::Switch, at(60.0, 0.0), Facing::NORTH).expect_none(SLUG);
    }
}
