//! A door leaf in a keep-clear.

use geometry::{Bounds, Pt, convex_overlap};
use measure::Len;
use plan::Element;
use plan::element::ServicePoint;
use space::{Leaf, leaf_reaches};

use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet, rules};

use super::leaves::leaves_of;

pub(crate) const RULE: Rule = Rule {
    slug: "leaf-in-keep-clear",
    group: Group::Doors,
    title: "Door leaf in a keep-clear",
    page: "\
What
No door leaf stands in a keep-clear when it is open, or sweeps through one.

Why
A leaf that stands before a panel is as much in the way as a wall; one that sweeps through hits whoever works there.

Source
Our own reading of NEC 110.26 and IRC M1305.1: inspectors take an open leaf in a panel's working space for an obstruction.

How it is measured
The open leaf, 1 3/8 in thick, against the keep-clear: in electrical working space that is one to verify. Where only the quarter
circle that the leaf sweeps reaches into a keep-clear it is advice. What touches the box passes.

Cannot see
Whether the door is kept shut or open, and leaves that open farther than 90 degrees.

Exceptions
A panel may be behind a door where the whole working space is there with the door open.

Remedies
None is offered: hinge the door at the other jamb, let it swing to the other side, or choose a pocket door.
",
    cites: &["leaf-in-keep-clear"],
    check: Check::Services(rules::KEEP_KINDS, rules::KEEP, check),
    remedies: None,
};

/// Thickness of a leaf (common practice, no source).
const LEAF: Len = Len::sixty_fourths(88);

fn check(sheet: &Sheet<'_>, element: &Element, _: &ServicePoint, out: &mut Vec<Finding>) {
    let Some(keep) = sheet.keep(element.id) else { return };
    let around = keep.boxes.iter().map(|b| Bounds::of(&b.ring)).fold(Bounds::EMPTY, Bounds::union);
    for swing in sheet.facts.openings_near(around).flat_map(leaves_of) {
        let near = keep.boxes.iter().filter(|keep| Bounds::of(&keep.ring).meets(swing.bounds));
        for keep in near.filter(|keep| keep.bottom < swing.door.clear_height) {
            let stands = convex_overlap(&open_leaf(swing.leaf), &keep.ring);
            if !stands && !leaf_reaches(swing.leaf, &keep.ring) {
                continue;
            }
            let electrical = keep.word == "working space";
            let (door, point) =
                (capital(&called(sheet, swing.door.id)), called(sheet, keep.service));
            let (does, how) = if stands {
                ("stands in", "stands in it when open")
            } else {
                ("sweeps through", "sweeps through it")
            };
            out.push(
                Finding::new(
                    if stands && electrical { Severity::Verify } else { Severity::Advice },
                    sheet.book.cite("leaf-in-keep-clear"),
                    RULE.slug,
                    vec![swing.door.id, keep.service],
                    Phrase::text(format!("{door} {does} the {} of {point}", keep.word)),
                    "An open leaf is as much in the way as a wall.",
                )
                .figures(Quantity::Words(how.into()), Quantity::Words("no leaf in it".into()))
                .at(Place::Breach {
                    keep_clear: keep.ring.clone(),
                    overlap: vec![geometry::convex_clip(&keep.ring, &swing.leaf.sweep)],
                }),
            );
        }
    }
}

/// The leaf when it is open 90 degrees.
fn open_leaf(leaf: &Leaf) -> [Pt; 4] {
    let thick = (leaf.shut - leaf.hinge).with_len(LEAF);
    [leaf.hinge, leaf.open, leaf.open + thick, leaf.hinge + thick]
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::element::{DoorOperation, End, ServiceKind};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "leaf-in-keep-clear";

    /// A panel on the south wall whose working space is from x = 57 to x = 87, from y = 4 to y = 40; and a door of
    /// 30 in in the same wall, hinged at its near jamb at `x`, that opens north.
    fn beside_a_panel(x: f64, kind: ServiceKind) -> Sample {
        let sample = Sample::room(240.0, 160.0).service(kind, at(72.0, 0.0), Facing::NORTH);
        sample.door(plan::ElementId(1), x, 30.0)
    }

    #[test]
    fn clear_pass() {
        beside_a_panel(120.0, ServiceKind::Panel).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        beside_a_panel(82.0, ServiceKind::Panel)
            .expect(SLUG, &["verify, measured stands in it when open, required no leaf in it"]);
        // Hinged at the far jamb it only sweeps through.
        beside_a_panel(82.0, ServiceKind::Panel)
            .tune_door(|d| d.hinge = End::Finish)
            .expect(SLUG, &["advice, measured sweeps through it, required no leaf in it"]);
    }

    #[test]
    fn at_the_limit() {
        beside_a_panel(87.0, ServiceKind::Panel).expect_none(SLUG);
        assert_eq!(beside_a_panel(87.0 - 1.0 / 64.0, ServiceKind::Panel).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        beside_a_panel(82.0, ServiceKind::GasValve).expect_none(SLUG);
        beside_a_panel(82.0, ServiceKind::Panel)
            .tune_door(|d| d.operation = DoorOperation::Pocket)
            .expect_none(SLUG);
    }

    #[test]
    fn before_a_furnace_it_is_advice() {
        // 21 in wide and 29 in deep: its service space is 30 in wide from y = 29 to y = 59.
        let sample = Sample::room(240.0, 160.0)
            .service(ServiceKind::Furnace, at(72.0, 0.0), Facing::NORTH)
            .partition(at(0.0, 100.0), at(240.0, 100.0));
        let wall = sample.last();
        sample
            .door(wall, 60.0, 40.0)
            .tune_door(|d| (d.swing, d.leaf_width) = (plan::element::Side::Right, inch(60.0)))
            .expect(SLUG, &["advice, measured stands in it when open, required no leaf in it"]);
    }
}
