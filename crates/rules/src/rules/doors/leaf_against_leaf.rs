//! Two door leaves that meet.

use geometry::convex_clip;
use space::{OpeningFacts, leaf_reaches};

use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

use super::leaves::{Swing, leaves_of};

pub(crate) const RULE: Rule = Rule {
    slug: "leaf-against-leaf",
    group: Group::Doors,
    title: "Door leaves that meet",
    page: "\
What
The leaves of two doors do not sweep over the same floor.

Why
Two people open two doors at once: one of them gets the edge of a leaf in the face, and both doors are dented for ever.

Source
Common practice, no source.

How it is measured
The quarter circles that the two leaves sweep overlap. Leaves that only touch pass.

Cannot see
Which doors are kept shut or open. A bifold counts with all the floor that its panels may pass over.

Exceptions
Doors that are never opened at the same time, such as two closets of one person.

Remedies
None is offered: hinge one door at the other jamb, let it swing to the other side, or choose a pocket door.
",
    cites: &["leaf-against-leaf"],
    check: Check::Openings(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, door: &OpeningFacts, out: &mut Vec<Finding>) {
    for a in leaves_of(door) {
        let later = sheet.facts.openings_near(a.bounds).filter(|door| door.id > a.door.id);
        for b in later.flat_map(leaves_of).filter(|b| meet(&a, b)) {
            let (one, other) = (capital(&called(sheet, a.door.id)), called(sheet, b.door.id));
            out.push(
                Finding::new(
                    Severity::Advice,
                    sheet.book.cite("leaf-against-leaf"),
                    RULE.slug,
                    vec![a.door.id, b.door.id],
                    Phrase::text(format!("{one} and {other} meet when both are open")),
                    "Two people open two doors at once, and the leaves hit each other.",
                )
                .figures(Quantity::Words("leaves meet".into()), Quantity::Words("apart".into()))
                .at(Place::Area(convex_clip(&a.leaf.sweep, &b.leaf.sweep))),
            );
        }
    }
}

fn meet(a: &Swing<'_>, b: &Swing<'_>) -> bool {
    a.bounds.meets(b.bounds)
        && leaf_reaches(a.leaf, &b.leaf.sweep)
        && leaf_reaches(b.leaf, &a.leaf.sweep)
}

#[cfg(test)]
mod tests {
    use plan::element::{DoorOperation, End, Side};

    use crate::testing::{Sample, at};

    const SLUG: &str = "leaf-against-leaf";

    /// Two doors of 30 in in one partition, hinged at their far ends and swinging to the same side, with `between` from
    /// the free edge of one to the free edge of the other.
    fn two_doors(between: f64, operation: DoorOperation) -> Sample {
        let sample = Sample::room(240.0, 120.0).partition(at(0.0, 60.0), at(240.0, 60.0));
        let wall = sample.last();
        sample
            .opening(wall, 40.0, operation, 30.0)
            .opening(wall, 70.0 + between, operation, 30.0)
            .tune_door(|d| d.hinge = End::Finish)
    }

    #[test]
    fn clear_pass() {
        two_doors(20.0, DoorOperation::Hinged).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        // Across a corner: a door in a crossing wall swings into the same corner.
        let sample = Sample::room(240.0, 120.0).partition(at(0.0, 60.0), at(150.0, 60.0));
        let south = sample.last();
        let sample = sample.partition(at(150.0, 57.75), at(150.0, 120.0));
        let east = sample.last();
        sample
            .door(south, 110.0, 30.0)
            .tune_door(|d| d.hinge = End::Finish)
            .door(east, 10.0, 30.0)
            .expect(SLUG, &["advice, measured leaves meet, required apart"]);
    }

    #[test]
    fn at_the_limit() {
        // Free edges that touch, and 1/64 in of the quarter circles in common: hinged so that they face each other.
        two_doors(0.0, DoorOperation::Hinged).expect_none(SLUG);
        let facing = |gap: f64| {
            let sample = Sample::room(240.0, 200.0).partition(at(0.0, 60.0), at(240.0, 60.0));
            let low = sample.last();
            // 4 1/2 in walls whose faces are 60 in + `gap` apart.
            let sample = sample.partition(at(0.0, 124.5 + gap), at(240.0, 124.5 + gap));
            let high = sample.last();
            sample
                .door(low, 100.0, 30.0)
                .door(high, 100.0, 30.0)
                .tune_door(|d| d.swing = Side::Right)
        };
        facing(0.0).expect_none(SLUG);
        assert_eq!(facing(-1.0 / 64.0).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        two_doors(0.0, DoorOperation::Pocket).expect_none(SLUG);
        two_doors(0.0, DoorOperation::Cased).expect_none(SLUG);
    }
}
