//! Service space before a furnace or water heater.

use plan::element::{ServiceKind, ServicePoint};
use plan::{Element, ElementId};

use crate::front::{Face, Fit, Space};
use crate::rules::rooms::words::called;
use crate::{Check, Finding, Group, Rule, Sheet};

use super::clear_box::{self, Demand};
use super::keep::KEEP;
use super::panel;

pub(crate) const RULE: Rule = Rule {
    slug: "appliance-service-space",
    group: Group::Access,
    title: "Service space before a furnace or water heater",
    page: "\
What
At the service side of a furnace or water heater there is a level space of 30 in by 30 in, as high as the appliance and at
least 30 in.

Why
Whoever cleans a burner or changes a blower kneels there with tools and the parts beside them.

Source
IRC M1305.1; for water heaters P2801.4, which sends to it.

How it is measured
From the appliance's service side straight out. The space need not be centred: it is slid to either side as long as it
covers the service side, or stays before it where the appliance is wider. It may reach out through an open door: a
furnace closet may be shallow where the room before its door is clear.

Cannot see
The clearances to what can burn, which stand on the appliance's label. Height above the space, and pipes before it.

Exceptions
Room heaters may have 18 in. Furniture that can be pushed aside makes the finding one to verify.

Remedies
Move the partition or the furnishing that stands in the way by what is missing.
",
    cites: &["appliance-service-space", "water-heater-service-space"],
    check: Check::Services(&[ServiceKind::Furnace, ServiceKind::WaterHeater], KEEP, check),
    remedies: Some(clear_box::remedies),
};

fn slug(kind: ServiceKind) -> &'static str {
    match kind {
        ServiceKind::WaterHeater => "water-heater-service-space",
        _ => "appliance-service-space",
    }
}

/// The space before a furnace or water heater and how it fits.
pub(super) fn measure(sheet: &Sheet<'_>, id: ElementId, service: &ServicePoint) -> (Space, Fit) {
    let side = sheet.book.length(slug(service.kind));
    let floor = sheet.plan().site.floor_build;
    let top = (service.bottom + service.height).max(floor + side);
    let space = Space { width: side, depth: side, bottom: floor, top };
    let fit = Face::of(service.placed())
        .fit(sheet.facts, space, |solid| solid.element == id || panel::flush(sheet.facts, solid));
    (space, fit)
}

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    out.extend(judge(sheet, element, service));
}

fn judge(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint) -> Option<Finding> {
    let keep = sheet.keep(element.id)?;
    let demand = Demand {
        slug: RULE.slug,
        citation: sheet.book.cite(slug(service.kind)),
        space: keep.space,
        title: format!("Too little service space before {}", called(sheet, element.id)),
        why: "Whoever services it kneels there with tools and the parts beside them.",
    };
    clear_box::finding(sheet, element, service, &keep.fit, demand)
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "appliance-service-space";

    /// An appliance 24 in deep on the south wall and a partition `clear` before its service side.
    fn before_a_partition(kind: ServiceKind, clear: Len) -> Sample {
        let y = inch(24.0) + clear;
        Sample::room(144.0, 120.0)
            .service(kind, at(72.0, 0.0), Facing::NORTH)
            .tune_service(|s| s.depth = inch(24.0))
            .partition_by_left_face(Pt::at(inch(144.0), y), Pt::at(Len::ZERO, y))
    }

    #[test]
    fn clear_pass() {
        before_a_partition(ServiceKind::Furnace, inch(48.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let furnace = before_a_partition(ServiceKind::Furnace, inch(26.0));
        furnace.expect(SLUG, &["correction, measured 26\", required 30\""]);
        assert_eq!(furnace.findings(SLUG)[0].citation.text, "2021 IRC M1305.1");
        assert_eq!(furnace.remedies(SLUG), ["Move W6 by 4\""]);
        let heater = before_a_partition(ServiceKind::WaterHeater, inch(26.0));
        let finding = &heater.findings(SLUG)[0];
        assert_eq!(finding.citation.marked(), "2021 IRC P2801.4 with M1305.1 (seen second-hand)");
    }

    #[test]
    fn at_the_limit() {
        before_a_partition(ServiceKind::Furnace, inch(30.0)).expect_none(SLUG);
        before_a_partition(ServiceKind::Furnace, inch(30.0) - Len::UNIT)
            .expect(SLUG, &["correction, measured 29 15/16\", required 30\""]);
    }

    #[test]
    fn does_not_apply() {
        before_a_partition(ServiceKind::WaterMeter, inch(10.0)).expect_none(SLUG);
    }

    /// services.md T7 AX7: a furnace closet with a 30 in door, 14 in from the unit to the door, the room beyond clear.
    #[test]
    fn the_space_reaches_through_an_open_door() {
        let closet = |door: f64| {
            let sample = before_a_partition(ServiceKind::Furnace, inch(14.0));
            let wall = sample.last();
            // The partition runs from east to west: a door over the middle of the furnace.
            sample.door(wall, 72.0 - door / 2.0, door)
        };
        closet(30.0).expect_none(SLUG);
        closet(29.0).expect(SLUG, &["correction, measured 29\", required 30\""]);
    }

    #[test]
    fn loose_furniture_is_one_to_verify() {
        let with = |fixed| {
            Sample::room(144.0, 120.0)
                .service(ServiceKind::Furnace, at(72.0, 0.0), Facing::NORTH)
                .furnishing(at(72.0, 50.0), Facing::NORTH, 40.0, 20.0)
                .tune(move |e| {
                    if let plan::Body::Furnishing(f) = &mut e.body {
                        f.fixed = fixed;
                    }
                })
        };
        with(false).expect(SLUG, &["verify, measured 21\", required 30\""]);
        with(true).expect(SLUG, &["correction, measured 21\", required 30\""]);
    }
}
