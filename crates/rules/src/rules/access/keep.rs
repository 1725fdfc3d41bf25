//! The keep-clear boxes of service points, as the rules of this family measure them.

use geometry::Ring;
use measure::Len;
use plan::element::{Mount, ServiceKind, ServicePoint};
use plan::{Element, ElementId};

use crate::front::{Fit, Space};
use crate::{KeepClear, Sheet};

use super::{
    appliance_service_space, cleanout_clearance, filter_pull_out, panel, panel_dedicated_space,
    water_meter_space,
};

/// Every keep-clear box, by service point.
pub(crate) fn keep_clears(sheet: &Sheet<'_>) -> Vec<KeepClear> {
    let mut boxes = Vec::new();
    for (element, service) in sheet.services() {
        of(sheet, element, service, &mut boxes);
    }
    boxes
}

fn of(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, boxes: &mut Vec<KeepClear>) {
    let id = element.id;
    match service.kind {
        ServiceKind::Panel => {
            boxes.push(working(sheet, id, service));
            boxes.push(dedicated(sheet, id, service));
        }
        ServiceKind::Disconnect => {
            let space = panel::working_space(sheet, service);
            let fit = panel::fit(sheet, id, service);
            boxes.push(fitted(id, "disconnect-space", "working space", space, fit));
        }
        ServiceKind::Furnace | ServiceKind::WaterHeater => {
            let measured = appliance_service_space::measure(sheet, id, service);
            boxes.extend(measured.map(|(space, fit, _)| {
                fitted(id, "appliance-service-space", "service space", space, fit)
            }));
        }
        ServiceKind::Cleanout if service.mount != Mount::Floor => {
            let (space, fit) = cleanout_clearance::measure(sheet, id, service);
            boxes.push(fitted(id, "cleanout-clearance", "rodding space", space, fit));
        }
        ServiceKind::WaterMeter => {
            let (space, fit) = water_meter_space::measure(sheet, id, service);
            boxes.push(fitted(id, "water-meter-space", "meter space", space, fit));
        }
        ServiceKind::AirFilter => {
            let (space, fit) = filter_pull_out::measure(sheet, id, service);
            boxes.push(fitted(id, "filter-pull-out", "pull-out space", space, fit));
        }
        _ => {}
    }
}

fn fitted(
    service: ElementId,
    rule: &'static str,
    word: &'static str,
    space: Space,
    fit: Fit,
) -> KeepClear {
    let breached = !fit.is_clear();
    boxed(service, rule, word, fit.ring, (space.bottom, space.top), breached)
}

fn boxed(
    service: ElementId,
    rule: &'static str,
    word: &'static str,
    ring: Ring,
    (bottom, top): (Len, Len),
    breached: bool,
) -> KeepClear {
    KeepClear { service, rule, word, ring, bottom, top, breached }
}

/// The working space of a panel, at the place where it is clear and highest.
fn working(sheet: &Sheet<'_>, id: ElementId, service: &ServicePoint) -> KeepClear {
    let space = panel::working_space(sheet, service);
    let fit = panel::fit(sheet, id, service);
    let (height, ring) = panel::head(sheet, &fit);
    let low = height + sheet.plan().site.floor_build < space.top;
    let breached = low || !fit.is_clear();
    boxed(id, "panel-depth", "working space", ring, (space.bottom, space.top), breached)
}

fn dedicated(sheet: &Sheet<'_>, id: ElementId, service: &ServicePoint) -> KeepClear {
    let (ring, bottom, top) = panel_dedicated_space::column(sheet, service);
    let top = top.min(sheet.plan().site.joist_underside).max(bottom);
    let breached = !panel_dedicated_space::foreign(sheet, id, service).is_empty();
    boxed(id, "panel-dedicated-space", "dedicated space", ring, (bottom, top), breached)
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
