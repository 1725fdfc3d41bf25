//! Clear space at a water meter.

use plan::element::{ServiceKind, ServicePoint};
use plan::{Element, ElementId};

use crate::front::{Face, Fit, Space};
use crate::rules::rooms::words::called;
use crate::{Check, Finding, Group, Rule, Sheet};

use super::clear_box::{self, Demand};
use super::keep::KEEP;
use super::{buried, panel};

pub(crate) const RULE: Rule = Rule {
    slug: "water-meter-space",
    group: Group::Access,
    title: "Clear space at a water meter",
    page: "\
What
A water meter is not closed in, and before it 30 in are clear, from 12 in below it to 12 in above it.

Why
The utility reads it, changes it and shuts the water off there; where it can't, it charges or cuts off.

Source
Rules of water utilities; they differ widely. The figures are those of one of them that is among the stricter.

How it is measured
From the meter's face straight out, over its own width, to the nearest thing. Closed in: its front lies in furring or a
partition, or in a cavity that these close, and there is no access opening.

Cannot see
The utility's own rules: so the finding is always one to verify.

Exceptions
The water utility decides. Some ask for a height above the floor, or for no cabinet at all.

Remedies
Move the partition or the furnishing that stands in the way by what is missing, or provide an access opening.
",
    cites: &["water-meter-front", "water-meter-around"],
    check: Check::Services(&[ServiceKind::WaterMeter], KEEP, check),
    remedies: Some(remedies),
};

const WHY: &str = "The utility reads it, changes it and shuts the water off there.";

/// The space before a meter and how it fits.
pub(super) fn measure(sheet: &Sheet<'_>, id: ElementId, service: &ServicePoint) -> (Space, Fit) {
    let around = sheet.book.length("water-meter-around");
    let floor = sheet.plan().site.floor_build;
    let space = Space {
        width: service.width,
        depth: sheet.book.length("water-meter-front"),
        bottom: floor.max(service.bottom - around),
        top: service.bottom + service.height + around,
    };
    let covers: Vec<ElementId> = buried::elements(&space::cover(sheet.facts, id)).collect();
    let fit = Face::of(service.placed()).fit(sheet.facts, space, |solid| {
        solid.element == id || covers.contains(&solid.element) || panel::flush(sheet.facts, solid)
    });
    (space, fit)
}

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let finding = judge(sheet, element, service);
    out.extend(finding.map(|f| f.assuming("the water utility asks for this")));
}

fn judge(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint) -> Option<Finding> {
    let citation = sheet.book.cite("water-meter-front");
    let closed_in = buried::finding(sheet, RULE.slug, citation.clone(), element, service, WHY);
    if closed_in.is_some() {
        return closed_in;
    }
    let keep = sheet.keep(element.id)?;
    let title = format!("Too little space before {}", called(sheet, element.id));
    let demand = Demand { slug: RULE.slug, citation, space: keep.space, title, why: WHY };
    clear_box::finding(sheet, element, service, &keep.fit, demand)
}

fn remedies(finding: &Finding, sheet: &Sheet<'_>) -> Vec<crate::Remedy> {
    match finding.measured {
        Some(crate::Quantity::Len(_)) => clear_box::remedies(finding, sheet),
        _ => buried::remedies(finding, sheet),
    }
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::ElementId;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "water-meter-space";

    /// A meter 8 in deep and a partition `clear` before it.
    fn before_a_partition(kind: ServiceKind, clear: Len) -> Sample {
        let y = inch(8.0) + clear;
        Sample::room(144.0, 120.0)
            .service(kind, at(72.0, 0.0), Facing::NORTH)
            .tune_service(|s| s.depth = inch(8.0))
            .partition_by_left_face(Pt::at(inch(144.0), y), Pt::at(Len::ZERO, y))
    }

    #[test]
    fn clear_pass() {
        before_a_partition(ServiceKind::WaterMeter, inch(48.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        before_a_partition(ServiceKind::WaterMeter, inch(20.0))
            .expect(SLUG, &["verify, measured 20\", required 30\""]);
    }

    #[test]
    fn at_the_limit() {
        before_a_partition(ServiceKind::WaterMeter, inch(30.0)).expect_none(SLUG);
        before_a_partition(ServiceKind::WaterMeter, inch(30.0) - Len::UNIT)
            .expect(SLUG, &["verify, measured 29 15/16\", required 30\""]);
    }

    #[test]
    fn does_not_apply() {
        before_a_partition(ServiceKind::FixtureValve, inch(20.0)).expect_none(SLUG);
    }

    /// One American city asks for 12 in above and below (services.md A7, water-meter-space).
    #[test]
    fn a_shelf_12_in_below_it_is_far_enough() {
        // The meter begins 18 in above the floor; a shelf fills up to `top`.
        let shelf = |top: f64| {
            Sample::room(144.0, 120.0)
                .service(ServiceKind::WaterMeter, at(72.0, 0.0), Facing::NORTH)
                .furnishing(at(72.0, 10.0), Facing::NORTH, 30.0, 20.0)
                .tune(move |e| {
                    if let plan::Body::Furnishing(f) = &mut e.body {
                        f.height = inch(top);
                    }
                })
        };
        shelf(6.0).expect_none(SLUG);
        shelf(6.25).expect(SLUG, &["verify, measured 2\", required 30\""]);
    }

    #[test]
    fn closed_in_it_is_one_to_verify() {
        let sample = Sample::room(144.0, 120.0)
            .furring(ElementId(1))
            .service(ServiceKind::WaterMeter, at(72.0, 0.0), Facing::NORTH)
            .tune_service(|s| s.depth = inch(4.0));
        sample.expect(SLUG, &["verify, measured behind furring, required an access opening"]);
        let remedies = sample.remedies(SLUG);
        assert_eq!(remedies, ["Provide an access opening of 12\" × 12\" for water meter S6"]);
    }
}
