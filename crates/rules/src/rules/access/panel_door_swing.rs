//! The door of an electrical panel opens 90 degrees.

use geometry::sector;
use measure::Len;
use plan::Element;
use plan::element::{ServiceKind, ServicePoint};
use space::{Leaf, leaf_reaches};

use crate::front::{Face, Obstacle, Space};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "panel-door-swing",
    group: Group::Access,
    title: "The panel's door opens 90 degrees",
    page: "\
What
The hinged door or cover of an electrical panel opens at least 90 degrees.

Why
Behind a door that stops half-way the breakers on one side can't be seen or worked on.

Source
NEC 110.26(A)(2).

How it is measured
The door is taken to be as wide as the panel and hinged at one side. What stands in the quarter circle before the panel
stops it. Both sides are tried: hinged left and hinged right.

Cannot see
At which side the door is hinged, its true width, and a wall that touches a hinge which needs room beside it: so the
finding is always one to verify.

Exceptions
A panel in a corner is allowed where its door is hinged away from what stops it.

Remedies
None is offered: the cure is that of the depth in front of the panel, or another hinge side.
",
    cites: &["panel-door-swing"],
    check: Check::Services(&[ServiceKind::Panel], &[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let face = Face::of(service.placed());
    let right = -(service.width / 2);
    let square = face.ring(right, service.width, service.width);
    let space = Space {
        width: service.width,
        depth: service.width,
        bottom: service.bottom,
        top: service.bottom + service.height,
    };
    let solids = face.obstacles(sheet.facts, &square, space, |s| s.element == element.id);
    if solids.is_empty() {
        return;
    }
    // The right end across, seen looking out, is on the left hand of one who faces the panel.
    let doors = [("left", right), ("right", right + service.width)];
    let stopped: Vec<(&str, Leaf)> = doors
        .into_iter()
        .map(|(side, hinge)| (side, leaf(&face, hinge, service.width)))
        .filter(|(_, leaf)| solids.iter().any(|o| leaf_reaches(leaf, &o.overlap)))
        .collect();
    let Some((side, door)) = stopped.first() else { return };
    let stops = |o: &&Obstacle| stopped.iter().any(|(_, leaf)| leaf_reaches(leaf, &o.overlap));
    let mut elements = vec![element.id];
    elements.extend(solids.iter().filter(stops).map(|o| o.element));
    let finding = Finding::new(
        Severity::Verify,
        sheet.book.cite("panel-door-swing"),
        RULE.slug,
        elements,
        Phrase::text(format!("The door of electrical panel {} is stopped", element.name())),
        "Behind a door that stops half-way the breakers on one side can't be worked on.",
    )
    .figures(Quantity::Words("less than 90°".into()), Quantity::Words("90°".into()))
    .at(Place::Area(door.sweep.clone()))
    .assuming("the door is as wide as the panel");
    out.push(if stopped.len() == 1 {
        finding.assuming(format!("it is hinged at the {side}, as one faces it"))
    } else {
        finding
    });
}

/// A door hinged at one end of the face.
fn leaf(face: &Face, hinge: Len, width: Len) -> Leaf {
    let far = if hinge < Len::ZERO { hinge + width } else { hinge - width };
    let (at, shut) = (face.point(hinge, Len::ZERO), face.point(far, Len::ZERO));
    let open = face.point(hinge, width);
    Leaf { hinge: at, shut, open, width, sweep: sector(at, shut, open) }
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "panel-door-swing";

    /// A panel 14 in wide and a partition across, `clear` before its face.
    fn before_a_partition(clear: Len) -> Sample {
        let y = inch(4.0) + clear;
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .partition_by_left_face(Pt::at(inch(144.0), y), Pt::at(Len::ZERO, y))
    }

    #[test]
    fn clear_pass() {
        before_a_partition(inch(36.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let sample = before_a_partition(inch(10.0));
        sample.expect(SLUG, &["verify, measured less than 90°, required 90°"]);
        assert_eq!(sample.findings(SLUG)[0].assumed, ["the door is as wide as the panel"]);
    }

    #[test]
    fn at_the_limit() {
        before_a_partition(inch(14.0)).expect_none(SLUG);
        assert_eq!(before_a_partition(inch(14.0) - Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::WaterMeter, at(72.0, 0.0), Facing::NORTH)
            .partition(at(0.0, 12.0), at(144.0, 12.0))
            .expect_none(SLUG);
    }

    #[test]
    fn one_hinge_side_may_be_free() {
        // A pipe 13 in before the east end of the panel, which faces north.
        let sample = Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .column(at(78.5, 17.0), 1.0);
        let findings = sample.findings(SLUG);
        assert_eq!(
            findings[0].assumed,
            ["the door is as wide as the panel", "it is hinged at the left, as one faces it"]
        );
    }

    /// A wall flush with the panel's edge runs along the open door and does not stop it.
    #[test]
    fn a_wall_in_line_with_the_hinge_does_not_stop_it() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(7.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }
}
