//! Headroom in a shower.

use geometry::{Bounds, Pt, Shape};
use measure::Len;
use plan::Element;
use plan::element::{BodyKind, Furnishing};

use super::fixtures::{Fixture, fixture};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "shower-head",
    group: Group::Build,
    title: "Headroom in a shower",
    page: "\
What
A shower, or a tub with a shower head, has at least 80 in of clear height over 30 in by 30 in at the head.

Why
One reaches up in it with the eyes shut.

Source
IRC R305.1 exception 2 (2018, 2021), R313.1 (2024).

How it is measured
The lowest height over the box of each new shower. Where only a corner of 30 in by 30 in is high enough, the head is taken to be
there, and the finding is to be verified.

Cannot see
Where the head is, and shower heads over tubs.

Exceptions
None.

Remedies
Move the duct or the shower.
",
    cites: &["shower-head", "shower-head-side"],
    check: Check::Things(&[BodyKind::Furnishing], &[], check),
    remedies: None,
};

const WHY: &str = "One reaches up in it with the eyes shut.";

fn check(sheet: &Sheet<'_>, element: &Element, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("shower-head");
    let Some((element, shower, Fixture::Shower)) = fixture(element) else { return };
    let ring = shower.placed().corners().to_vec();
    let clear = space::clear_over(sheet.facts, &Shape::solid(ring.clone()));
    if clear >= limit.value {
        return;
    }
    let title = format!("{} is too low", capital(&called(sheet, element.id)));
    let finding = Finding::new(
        Severity::Correction,
        limit.citation.clone(),
        RULE.slug,
        vec![element.id],
        Phrase::text(title),
        WHY,
    )
    .figures(Quantity::Len(clear), Quantity::Len(limit.value))
    .at(Place::Area(ring));
    let high = corners(shower, sheet.book.length("shower-head-side"))
        .into_iter()
        .any(|part| space::clear_over(sheet.facts, &part) >= limit.value);
    out.push(if high { finding.assuming("the head is over the low part") } else { finding });
}

/// The squares in the four corners of a box, as far as they fit.
fn corners(shower: &Furnishing, side: Len) -> Vec<Shape> {
    let ring = shower.placed().corners();
    let all = Bounds::of(ring);
    if shower.width < side || shower.depth < side {
        return Vec::new();
    }
    let side = side.units();
    let at = |x: i32, y: i32| {
        let from = Pt::new(x, y);
        Shape::solid(Bounds::of([from, Pt::new(x + side, y + side)]).ring())
    };
    let (low, high) = (all.min, Pt::new(all.max.x - side, all.max.y - side));
    vec![at(low.x, low.y), at(high.x, low.y), at(low.x, high.y), at(high.x, high.y)]
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::element::OverheadKind;
    use plan::{Body, Edition};

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "shower-head";

    /// A shower of 36 in by 60 in from (54, 0) to (90, 60) and a duct across at `y`, so many inches above the floor.
    fn under(y: f64, underside: f64) -> Sample {
        Sample::room(144.0, 120.0)
            .site(|s| s.floor_build = Len::ZERO)
            .overhead(OverheadKind::Duct, at(0.0, y), at(144.0, y), 10.0, underside)
            .furnishing(at(72.0, 0.0), Facing::NORTH, 36.0, 60.0)
            .fresh()
            .tune(|e| match &mut e.body {
                Body::Furnishing(f) => f.name = "Shower".into(),
                other => panic!("{}", other.word()),
            })
    }

    #[test]
    fn clear_pass() {
        under(100.0, 70.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let low = under(30.0, 70.0).edition(edition);
            low.expect(SLUG, &["correction, measured 70\", required 80\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        under(30.0, 80.0).expect_none(SLUG);
        let low = under(30.0, 80.0).tune(|_| {});
        low.expect_none(SLUG);
        let a_unit = Sample::room(144.0, 120.0)
            .site(|s| s.floor_build = Len::UNIT)
            .overhead(OverheadKind::Duct, at(0.0, 30.0), at(144.0, 30.0), 10.0, 80.0)
            .furnishing(at(72.0, 0.0), Facing::NORTH, 36.0, 60.0)
            .fresh()
            .tune(|e| match &mut e.body {
                Body::Furnishing(f) => f.name = "Shower".into(),
                other => panic!("{}", other.word()),
            });
        a_unit.expect(SLUG, &["correction, measured 79 15/16\", required 80\""]);
    }

    #[test]
    fn where_a_corner_is_high_enough_the_head_may_be_there() {
        let part = under(55.0, 70.0);
        part.expect(SLUG, &["verify, measured 70\", required 80\""]);
        assert_eq!(inch(30.0), part.book().length("shower-head-side"));
    }

    #[test]
    fn does_not_apply() {
        under(30.0, 70.0).existing().expect_none(SLUG);
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
