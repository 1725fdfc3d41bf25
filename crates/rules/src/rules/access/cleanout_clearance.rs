//! Clear distance straight out from a cleanout.

use geometry::{Bounds, Ring, Shape, convex_overlap};
use measure::Len;
use plan::element::{Mount, ServiceKind, ServicePoint};
use plan::{Element, ElementId};
use space::SolidKind;

use crate::front::{Face, Fit, Space};
use crate::rules::rooms::words::called;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

use super::clear_box::{self, Demand};
use super::keep::KEEP;
use super::{buried, judge, panel};

pub(crate) const RULE: Rule = Rule {
    slug: "cleanout-clearance",
    group: Group::Access,
    title: "Clear distance straight out from a cleanout",
    page: "\
What
Straight out from the face of a cleanout 18 in are clear.

Why
A drain snake is fed in straight; in less room the drain can't be cleared, and the floor is under water.

Source
IRC P3005.2.9, for pipes of 6 in and less.

How it is measured
Square to the opening: from a cleanout on a wall out into the room, over its own width and height; from a cleanout in the
floor straight up to the lowest thing over it. What covers it, with an access door, does not count.

Cannot see
The size of the pipe: from 8 in on the distance is 36 in. The underside of a stair over a floor cleanout.

Exceptions
States on the uniform plumbing code have 12 in for pipes of 2 in and less. Furniture that can be pushed aside makes the
finding one to verify.

Remedies
Move the partition or the furnishing that stands in the way by what is missing.
",
    cites: &["cleanout-clearance"],
    check: Check::Services(&[ServiceKind::Cleanout], KEEP, check),
    remedies: Some(clear_box::remedies),
};

/// The space before a cleanout on a wall, or one that looks sideways, and how it fits.
pub(super) fn measure(sheet: &Sheet<'_>, id: ElementId, service: &ServicePoint) -> (Space, Fit) {
    let space = Space {
        width: service.width,
        depth: sheet.book.length("cleanout-clearance"),
        bottom: service.bottom.max(sheet.plan().site.floor_build),
        top: service.bottom + service.height,
    };
    let covers: Vec<ElementId> = buried::elements(&space::cover(sheet.facts, id)).collect();
    let fit = Face::of(service.placed()).fit(sheet.facts, space, |solid| {
        solid.element == id || covers.contains(&solid.element) || panel::flush(sheet.facts, solid)
    });
    (space, fit)
}

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    out.extend(match service.mount {
        Mount::Floor => upwards(sheet, element, service),
        Mount::Wall | Mount::Ceiling => sideways(sheet, element, service),
    });
}

const WHY: &str = "A drain snake is fed in straight; in less room the drain can't be cleared.";

fn sideways(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint) -> Option<Finding> {
    let keep = sheet.keep(element.id)?;
    let demand = Demand {
        slug: RULE.slug,
        citation: sheet.book.cite("cleanout-clearance"),
        space: keep.space,
        title: format!("Too little room before {}", called(sheet, element.id)),
        why: WHY,
    };
    clear_box::finding(sheet, element, service, &keep.fit, demand)
}

/// A cleanout in the floor: the height up to the lowest thing over it.
fn upwards(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint) -> Option<Finding> {
    let limit = sheet.book.len("cleanout-clearance");
    let ring: Ring = service.placed().corners().to_vec();
    let bounds = Bounds::of(&ring);
    let top = (service.bottom + service.height).max(sheet.plan().site.floor_build);
    let solids = sheet
        .facts
        .solids_near(bounds)
        .filter(|s| s.element != element.id && s.kind != SolidKind::Stair && s.top > top)
        .filter(|s| convex_overlap(&ring, &s.ring))
        .map(|s| (s.bottom, s.element));
    let region = Shape { outer: ring.clone(), holes: Vec::new() };
    let overheads = sheet.facts.overheads_near(bounds).filter(|o| o.hangs_over(&region));
    let (lowest, by) = solids.chain(overheads.map(|o| (o.underside, o.id))).min()?;
    let clear = (lowest - top).max(Len::ZERO);
    if clear >= limit.value {
        return None;
    }
    let title = format!("Too little room over {}", called(sheet, element.id));
    let finding = Finding::new(
        Severity::Correction,
        limit.citation,
        RULE.slug,
        vec![element.id, by],
        Phrase::text(title),
        WHY,
    )
    .figures(Quantity::Len(clear), Quantity::Len(limit.value))
    .at(Place::Area(ring));
    Some(judge::unless_existing(sheet, judge::unless_loose(sheet, finding, &[by])))
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::element::{Mount, OverheadKind, ServiceKind};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "cleanout-clearance";

    /// A cleanout 4 in deep on the south wall and a partition `clear` before it.
    fn before_a_partition(kind: ServiceKind, clear: Len) -> Sample {
        let y = inch(4.0) + clear;
        Sample::room(144.0, 120.0)
            .service(kind, at(72.0, 0.0), Facing::NORTH)
            .partition_by_left_face(Pt::at(inch(144.0), y), Pt::at(Len::ZERO, y))
    }

    #[test]
    fn clear_pass() {
        before_a_partition(ServiceKind::Cleanout, inch(30.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let sample = before_a_partition(ServiceKind::Cleanout, inch(15.0));
        sample.expect(SLUG, &["correction, measured 15\", required 18\""]);
        assert_eq!(sample.remedies(SLUG), ["Move W6 by 3\""]);
    }

    #[test]
    fn at_the_limit() {
        before_a_partition(ServiceKind::Cleanout, inch(18.0)).expect_none(SLUG);
        before_a_partition(ServiceKind::Cleanout, inch(18.0) - Len::UNIT)
            .expect(SLUG, &["correction, measured 17 15/16\", required 18\""]);
    }

    #[test]
    fn does_not_apply() {
        before_a_partition(ServiceKind::WaterMeter, inch(15.0)).expect_none(SLUG);
    }

    /// A floor cleanout, its plug 1 in above the slab, under a duct.
    fn in_the_floor(underside: f64) -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Cleanout, at(72.0, 60.0), Facing::NORTH)
            .tune_service(|s| {
                (s.mount, s.bottom, s.height) = (Mount::Floor, Len::ZERO, inch(1.0));
            })
            .overhead(OverheadKind::Duct, at(0.0, 62.0), at(144.0, 62.0), 20.0, underside)
    }

    /// services.md T7 AX12: a floor cleanout with 20 in over it passes; here under a duct.
    #[test]
    fn a_floor_cleanout_is_measured_upwards() {
        in_the_floor(21.0).expect_none(SLUG);
        in_the_floor(19.0).expect_none(SLUG);
        in_the_floor(18.5).expect(SLUG, &["verify, measured 17 1/2\", required 18\""]);
    }

    #[test]
    fn a_shelf_on_it_can_be_pushed_aside() {
        let sample = in_the_floor(90.0).furnishing(at(72.0, 55.0), Facing::NORTH, 30.0, 20.0);
        sample.expect(SLUG, &["verify, measured 0\", required 18\""]);
        assert_eq!(sample.findings(SLUG)[0].assumed, ["shelf B7 stays where it is drawn"]);
    }
}
