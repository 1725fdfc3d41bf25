//! The spaces before service points, each measured once for all rules, and the keep-clear boxes of them.

use geometry::Ring;
use measure::Len;
use plan::element::{Mount, ServiceKind, ServicePoint};
use plan::{Body, Element, ElementId};

use crate::front::{Fit, Space};
use crate::{KeepClear, Reach, Sheet};

use super::{
    appliance_service_space, cleanout_clearance, filter_pull_out, panel, panel_dedicated_space,
    water_meter_space,
};

/// The space before a service point and how it fits.
#[derive(Clone, Debug)]
pub(crate) struct Keep {
    pub service: ElementId,
    pub space: Space,
    pub fit: Fit,
    /// At a panel: the clear height over it at the place where it is highest, and that place.
    pub head: Option<(Len, Ring)>,
    /// Its keep-clear box, and at a panel that of the space over it.
    pub boxes: Vec<KeepClear>,
}

/// The spaces before all service points that ask for one, in the order of their ids.
pub(crate) fn keeps(sheet: &Sheet<'_>) -> Vec<Keep> {
    sheet.services().filter_map(|(element, _)| keep(sheet, element)).collect()
}

/// The service points before which a space may be asked for.
pub(crate) const KEEP_KINDS: &[ServiceKind] = &[
    ServiceKind::Panel,
    ServiceKind::Disconnect,
    ServiceKind::Furnace,
    ServiceKind::WaterHeater,
    ServiceKind::Cleanout,
    ServiceKind::WaterMeter,
    ServiceKind::AirFilter,
];

/// How far from a service point something may stand that counts for the space before it.
pub(crate) const KEEP: &[Reach] = &[
    Reach::Limit("panel-width"),
    Reach::Limit("panel-depth"),
    Reach::Limit("appliance-service-space"),
    Reach::Limit("water-heater-service-space"),
    Reach::Limit("cleanout-clearance"),
    Reach::Limit("water-meter-front"),
    Reach::Limit("filter-pull-out"),
];

/// The space before a service point, where one is asked for.
pub(crate) fn keep(sheet: &Sheet<'_>, element: &Element) -> Option<Keep> {
    let Body::Service(service) = &element.body else { return None };
    let id = element.id;
    let (rule, word, (space, fit)) = match service.kind {
        ServiceKind::Panel => ("panel-depth", "working space", panel::measure(sheet, id, service)),
        ServiceKind::Disconnect => {
            ("disconnect-space", "working space", panel::measure(sheet, id, service))
        }
        ServiceKind::Furnace | ServiceKind::WaterHeater => {
            let measured = appliance_service_space::measure(sheet, id, service);
            ("appliance-service-space", "service space", measured)
        }
        ServiceKind::Cleanout if service.mount != Mount::Floor => {
            let measured = cleanout_clearance::measure(sheet, id, service);
            ("cleanout-clearance", "rodding space", measured)
        }
        ServiceKind::WaterMeter => {
            ("water-meter-space", "meter space", water_meter_space::measure(sheet, id, service))
        }
        ServiceKind::AirFilter => {
            ("filter-pull-out", "pull-out space", filter_pull_out::measure(sheet, id, service))
        }
        _ => return None,
    };
    let head = (service.kind == ServiceKind::Panel).then(|| panel::head(sheet, &fit));
    let mut keep = Keep { service: id, space, fit, head, boxes: Vec::new() };
    keep.boxes.push(keep.boxed(sheet, rule, word));
    if service.kind == ServiceKind::Panel {
        keep.boxes.push(dedicated(sheet, id, service));
    }
    Some(keep)
}

/// Every keep-clear box, by service point.
pub(crate) fn keep_clears(sheet: &Sheet<'_>) -> Vec<KeepClear> {
    sheet.keeps().iter().flat_map(|keep| keep.boxes.iter().cloned()).collect()
}

impl Keep {
    /// The box at the place where it is clear, and at a panel highest.
    /// `rule` asks for it, and `word` says what it is for.
    fn boxed(&self, sheet: &Sheet<'_>, rule: &'static str, word: &'static str) -> KeepClear {
        let floor = sheet.plan().site.floor_build;
        let low = self.head.as_ref().is_some_and(|(height, _)| *height + floor < self.space.top);
        let ring = self.head.as_ref().map_or(&self.fit.ring, |(_, ring)| ring);
        KeepClear {
            service: self.service,
            rule,
            word,
            ring: ring.clone(),
            bottom: self.space.bottom,
            top: self.space.top,
            breached: low || !self.fit.is_clear(),
        }
    }
}

fn dedicated(sheet: &Sheet<'_>, id: ElementId, service: &ServicePoint) -> KeepClear {
    let (ring, bottom, top) = panel_dedicated_space::column(sheet, service);
    KeepClear {
        service: id,
        rule: "panel-dedicated-space",
        word: "dedicated space",
        ring,
        bottom,
        top: top.min(sheet.plan().site.joist_underside).max(bottom),
        breached: !panel_dedicated_space::foreign(sheet, id, service).is_empty(),
    }
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, twice_area};
    use plan::element::ServiceKind;

    use crate::keep_clears;
    use crate::testing::{Sample, at};

    #[test]
    fn boxes_are_counter_clockwise_and_know_whether_they_are_breached() {
        let sample = Sample::room(200.0, 160.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .service(ServiceKind::Furnace, at(200.0, 80.0), Facing::WEST)
            .service(ServiceKind::Cleanout, at(20.0, 160.0), Facing::SOUTH)
            .partition(at(0.0, 30.0), at(120.0, 30.0));
        let boxes = keep_clears(&sample.facts(), &sample.book());
        let said: Vec<(&str, bool)> = boxes.iter().map(|k| (k.word, k.breached)).collect();
        let expected = [
            ("working space", true),
            ("dedicated space", false),
            ("service space", false),
            ("rodding space", false),
        ];
        assert_eq!(said, expected);
        assert!(boxes.iter().all(|k| twice_area(&k.ring) > 0));
    }

    #[test]
    fn the_boxes_that_are_breached_are_those_with_a_finding() {
        let sample = Sample::room(60.0, 60.0)
            .service(ServiceKind::Panel, at(10.0, 0.0), Facing::NORTH)
            .service(ServiceKind::Furnace, at(40.0, 60.0), Facing::SOUTH)
            .service(ServiceKind::WaterMeter, at(60.0, 20.0), Facing::WEST);
        let (facts, book) = (sample.facts(), sample.book());
        let findings = crate::check(&facts, &book);
        for keep in keep_clears(&facts, &book) {
            let rules: &[&str] = match keep.rule {
                "panel-depth" => &["panel-depth", "panel-width", "panel-height"],
                _ => &[keep.rule],
            };
            let found = findings
                .iter()
                .any(|f| rules.contains(&f.rule) && f.elements.contains(&keep.service));
            assert_eq!(keep.breached, found, "{} of {:?}", keep.word, keep.service);
        }
    }
}
