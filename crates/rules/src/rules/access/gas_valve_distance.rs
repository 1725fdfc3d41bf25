//! A gas valve in the room of its appliance and near it.

use geometry::{Pt, gap};
use measure::Len;
use plan::detail::heat::GAS_VALVE_AT;
use plan::element::{BodyKind, ServiceKind, ServicePoint};
use plan::{Body, Element, ElementId};

use crate::rules::rooms::words::{called, capital, room_called};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

use super::judge;

pub(crate) const RULE: Rule = Rule {
    slug: "gas-valve-distance",
    group: Group::Access,
    title: "Gas valve near its appliance, in the same room",
    page: "\
What
The gas valve of an appliance is in the same room as the appliance and at most 6 ft from it.

Why
Whoever smells gas at an appliance must find its valve at once. A new wall between the two breaks the rule without anyone
touching the pipe.

Source
IRC G2420.5.1.

How it is measured
In the plan, from the valve to the nearest point of the appliance that it serves. Where the plan does not say which that is,
the nearest furnace or water heater is assumed, and the finding is one to verify.

Cannot see
Appliances that are not drawn, other fuels than gas. Height is left out.

Exceptions
A labelled valve at a manifold within 50 ft that can be reached readily may serve instead, and a decorative appliance may have
its valve elsewhere: a valve that is stated to be one of these is let be here. The uniform mechanical code has the distance
without the same room.

Remedies
None is offered: gas work is for licensed people.
",
    cites: &["gas-valve-distance"],
    check: Check::Plan(&[On::Kind(BodyKind::Service)], check),
    remedies: None,
};

const WHY: &str = "Whoever smells gas at an appliance must find its valve at once.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (element, valve) in sheet.services().filter(|(_, s)| s.kind == ServiceKind::GasValve) {
        out.extend(judge(sheet, element, valve));
    }
}

fn judge(sheet: &Sheet<'_>, element: &Element, valve: &ServicePoint) -> Option<Finding> {
    if sheet.ask(element, &GAS_VALVE_AT).is(&["a manifold", "a decorative appliance"]) {
        return None;
    }
    let (appliance, served, given) = served(sheet, valve)?;
    let limit = sheet.book.len("gas-valve-distance");
    let finding = |measured, required, title: String, places: Vec<Place>| {
        let about = vec![element.id, appliance];
        let citation = limit.citation.clone();
        let title = Phrase::text(title);
        let mut finding =
            Finding::new(Severity::Correction, citation, RULE.slug, about, title, WHY);
        finding.places = places;
        finding.figures(measured, required)
    };
    let (valve_name, name) = (capital(&called(sheet, element.id)), called(sheet, appliance));
    let rooms = (judge::room_of(sheet, valve), judge::room_of(sheet, served));
    let finding = match rooms {
        (Some(a), Some(b)) if a.index != b.index => finding(
            Quantity::Words(format!("in {}", room_called(a))),
            Quantity::Words(format!("in {}", room_called(b))),
            format!("{valve_name} is in another room than {name}"),
            vec![Place::Area(ring(valve)), Place::Area(ring(served))],
        ),
        _ => {
            let gap = gap(&ring(valve), &ring(served));
            if gap.len <= limit.value {
                return None;
            }
            finding(
                Quantity::Len(gap.len),
                Quantity::Len(limit.value),
                format!("{valve_name} is too far from {name}"),
                vec![Place::Span(gap.from, gap.to)],
            )
        }
    };
    Some(if given { finding } else { finding.assuming(format!("it serves {name}, the nearest")) })
}

fn ring(service: &ServicePoint) -> Vec<Pt> {
    service.placed().corners().to_vec()
}

/// The appliance that a valve serves, and whether the plan says so.
fn served<'a>(
    sheet: &Sheet<'a>,
    valve: &ServicePoint,
) -> Option<(ElementId, &'a ServicePoint, bool)> {
    let given = valve.serves.and_then(|id| sheet.plan().get(id)).filter(|e| e.stands());
    if let Some((id, Body::Service(served))) = given.map(|e| (e.id, &e.body)) {
        return Some((id, served, true));
    }
    let distance = |served: &ServicePoint| -> Len { gap(&ring(valve), &ring(served)).len };
    sheet
        .services()
        .filter(|(_, s)| matches!(s.kind, ServiceKind::Furnace | ServiceKind::WaterHeater))
        .map(|(e, s)| (distance(s), e.id, s))
        .min_by_key(|(distance, id, _)| (*distance, *id))
        .map(|(_, id, s)| (id, s, false))
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::ElementId;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "gas-valve-distance";

    /// A water heater 22 in wide at the west end and a valve 4 in wide `far` east of it that serves it.
    fn beside(far: Len) -> Sample {
        Sample::room(240.0, 120.0)
            .service(ServiceKind::WaterHeater, at(11.0, 0.0), Facing::NORTH)
            .service(ServiceKind::GasValve, Pt::at(inch(24.0) + far, Len::ZERO), Facing::NORTH)
            .tune_service(|s| s.serves = Some(ElementId(5)))
    }

    #[test]
    fn clear_pass() {
        beside(inch(24.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        beside(inch(90.0)).expect(SLUG, &["correction, measured 90\", required 72\""]);
    }

    #[test]
    fn at_the_limit() {
        beside(inch(72.0)).expect_none(SLUG);
        beside(inch(72.0) + Len::UNIT)
            .expect(SLUG, &["correction, measured 72 1/16\", required 72\""]);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(240.0, 120.0)
            .service(ServiceKind::GasValve, at(60.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }

    #[test]
    fn the_nearest_appliance_is_assumed() {
        let sample = beside(inch(90.0)).tune_service(|s| s.serves = None);
        sample.expect(SLUG, &["verify, measured 90\", required 72\""]);
        let assumed = &sample.findings(SLUG)[0].assumed;
        assert_eq!(assumed, &["it serves water heater S5, the nearest"]);
    }

    #[test]
    fn a_manifold_valve_may_be_elsewhere() {
        beside(inch(90.0))
            .state(&super::GAS_VALVE_AT, plan::detail::Value::Word("a manifold"))
            .expect_none(SLUG);
    }

    /// services.md T7 AX9: valve 5 ft away, but in the next room after a partition.
    #[test]
    fn a_new_wall_between_them_breaks_it() {
        beside(inch(60.0))
            .partition(at(50.0, 0.0), at(50.0, 120.0))
            .expect(SLUG, &["correction, measured in Room 2, required in Room 1"]);
    }
}
