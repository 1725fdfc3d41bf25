//! A door leaf that meets something before it is open.

use plan::ElementId;
use plan::element::ServiceKind;
use space::{OpeningFacts, Solid, SolidKind, leaf_reaches};

use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

use super::leaves::{Swing, leaves_of};

pub(crate) const RULE: Rule = Rule {
    slug: "leaf-against-obstacle",
    group: Group::Doors,
    title: "Door leaf that meets something",
    page: "\
What
A door leaf opens 90 degrees without meeting a wall, a column, a stair, an appliance or a piece of furniture.

Why
A door that opens half-way lets neither a person with a box through nor a mattress; and its clear width was reckoned wide open.

Source
Common practice, no source.

How it is measured
Something stands in the quarter circle that the leaf sweeps, below the leaf's top. What touches the circle, or stands along
the open leaf, passes.

Cannot see
Handles, stops and skirting boards. Things that are not drawn. A bifold is measured by its first panel.

Exceptions
Furniture can be pushed aside.

Remedies
None is offered: move the thing, hinge the door at the other jamb, or let it swing to the other side.
",
    cites: &["leaf-against-obstacle"],
    check: Check::Openings(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, door: &OpeningFacts, out: &mut Vec<Finding>) {
    for swing in leaves_of(door) {
        for id in obstacles(sheet, &swing) {
            let (door, thing) = (capital(&called(sheet, swing.door.id)), called(sheet, id));
            out.push(
                Finding::new(
                    Severity::Advice,
                    sheet.book.cite("leaf-against-obstacle"),
                    RULE.slug,
                    vec![swing.door.id, id],
                    Phrase::text(format!("{door} hits {thing} before it is open")),
                    "A door that opens half-way lets neither a person with a box through nor a mattress.",
                )
                .figures(
                    Quantity::Words(format!("hits {thing}")),
                    Quantity::Words("opens 90°".into()),
                )
                .at(Place::Area(swing.leaf.sweep.clone())),
            );
        }
    }
}

/// What the leaf hits, by id.
fn obstacles(sheet: &Sheet<'_>, swing: &Swing<'_>) -> Vec<ElementId> {
    let floor = sheet.plan().site.floor_build;
    let mut hit: Vec<ElementId> = sheet
        .facts
        .solids_near(swing.bounds)
        .filter(|s| s.bottom < swing.door.clear_height && s.top > floor)
        .filter(|s| !own_wall(sheet, swing, s) && !walked_on(sheet, s))
        .filter(|s| leaf_reaches(swing.leaf, &s.ring))
        .map(|s| s.element)
        .collect();
    hit.sort_unstable();
    hit.dedup();
    hit
}

/// The wall that the door is in, and the furring on it.
fn own_wall(sheet: &Sheet<'_>, swing: &Swing<'_>, solid: &Solid) -> bool {
    let host = swing.door.host;
    solid.kind == SolidKind::Wall
        && (solid.element == host
            || sheet.facts.wall(solid.element).is_some_and(|wall| wall.host == Some(host)))
}

/// A drain or a pit in the floor.
fn walked_on(sheet: &Sheet<'_>, solid: &Solid) -> bool {
    let kinds = [ServiceKind::FloorDrain, ServiceKind::Sump, ServiceKind::Ejector];
    match sheet.plan().get(solid.element).map(|e| &e.body) {
        Some(plan::Body::Service(s)) => kinds.contains(&s.kind),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::element::DoorOperation;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "leaf-against-obstacle";

    /// A door of 30 in hinged at x = 100 that swings north from a face at y = 62 1/4; a desk whose south side is
    /// `off` north of that face.
    fn before_a_desk(off: Len, operation: DoorOperation) -> Sample {
        let sample = Sample::room(240.0, 160.0).partition(at(0.0, 60.0), at(240.0, 60.0));
        let wall = sample.last();
        sample.opening(wall, 100.0, operation, 30.0).furnishing(
            Pt::at(inch(100.0), inch(62.25) + off),
            Facing::NORTH,
            40.0,
            20.0,
        )
    }

    #[test]
    fn clear_pass() {
        before_a_desk(inch(40.0), DoorOperation::Hinged).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        before_a_desk(inch(20.0), DoorOperation::Hinged)
            .expect(SLUG, &["advice, measured hits shelf B7, required opens 90°"]);
    }

    #[test]
    fn at_the_limit() {
        before_a_desk(inch(30.0), DoorOperation::Hinged).expect_none(SLUG);
        let near = before_a_desk(inch(30.0) - Len::UNIT, DoorOperation::Hinged);
        assert_eq!(near.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        before_a_desk(inch(5.0), DoorOperation::Sliding).expect_none(SLUG);
    }

    #[test]
    fn a_wall_beside_the_hinge_is_no_obstacle() {
        let sample = Sample::room(240.0, 160.0).partition(at(0.0, 60.0), at(240.0, 60.0));
        let wall = sample.last();
        // The crossing wall's east face is at x = 100, where the hinge is.
        let sample = sample.partition(at(97.75, 62.25), at(97.75, 160.0));
        sample.clone().door(wall, 100.0, 30.0).expect_none(SLUG);
        assert_eq!(sample.door(wall, 99.0, 30.0).findings(SLUG).len(), 1);
    }

    #[test]
    fn a_column_in_the_quarter_circle_is_hit_and_one_behind_it_is_not() {
        let sample = Sample::room(240.0, 160.0).partition(at(0.0, 60.0), at(240.0, 60.0));
        let wall = sample.last();
        let sample = sample.door(wall, 100.0, 30.0);
        assert_eq!(sample.clone().column(at(115.0, 80.0), 4.0).findings(SLUG).len(), 1);
        sample.column(at(127.0, 89.0), 4.0).expect_none(SLUG);
    }
}
