//! Doors on the way to a furnace or water heater.

use measure::Len;
use plan::ElementId;
use plan::element::{BodyKind, ServiceKind, ServicePoint};
use space::RoomIndex;

use crate::rules::rooms::words::called;
use crate::{Check, Finding, Group, Limit, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

use super::judge;
use super::ways::{Way, Ways};

pub(crate) const RULE: Rule = Rule {
    slug: "appliance-passage",
    group: Group::Access,
    title: "Doors on the way to a furnace or water heater",
    page: "\
What
Every opening on the way to a furnace or water heater is at least 24 in wide, and wide enough for the largest appliance in
the space.

Why
A furnace or water heater lives 15 to 20 years: it must come out, and the next one in, without a saw.

Source
IRC M1305.1.1; for water heaters P2801.4, which sends to it.

How it is measured
From every place where one comes in (the foot of a stair, an outside door) through doors to the room that the appliance
stands in, by the way whose narrowest door is the widest. A door counts by its clear width, which for a hinged door is less
than its leaf. An appliance asks for the smaller of its width and depth. In a plan without stair and outside door the
widest door of the room counts.

Cannot see
The passage between the doors: what stands there, and turns. The height of the doors, and whether the appliance may be tilted or
taken apart. The passage is to be unobstructed on its whole length.

Exceptions
None in the model code.

Remedies
None is offered: choose a wider door.
",
    cites: &["appliance-passage", "water-heater-passage"],
    check: Check::Plan(&[On::Service(ServiceKind::Furnace), On::Service(ServiceKind::WaterHeater), On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn limit(sheet: &Sheet<'_>, kind: ServiceKind) -> Option<Limit<Len>> {
    match kind {
        ServiceKind::Furnace => Some(sheet.book.len("appliance-passage")),
        ServiceKind::WaterHeater => Some(sheet.book.len("water-heater-passage")),
        _ => None,
    }
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let appliances: Vec<(ElementId, &ServicePoint, RoomIndex)> = sheet
        .services()
        .filter(|(_, s)| matches!(s.kind, ServiceKind::Furnace | ServiceKind::WaterHeater))
        .filter_map(|(e, s)| Some((e.id, s, judge::room_of(sheet, s)?.index)))
        .collect();
    if appliances.is_empty() {
        return;
    }
    let ways = Ways::new(sheet);
    for &(id, service, room) in &appliances {
        let Some(limit) = limit(sheet, service.kind) else { continue };
        let in_the_space = appliances.iter().filter(|(_, _, other)| *other == room);
        let largest = in_the_space.map(|(_, s, _)| s.width.min(s.depth)).max();
        let required = limit.value.max(largest.unwrap_or_default());
        let (measured, door) = match ways.to(room) {
            Way::Here => continue,
            Way::Through { clear, .. } if clear >= required => continue,
            Way::Through { clear, narrowest } => (Quantity::Len(clear), Some(narrowest)),
            Way::None => (Quantity::Words("no door".into()), None),
        };
        let mut elements = vec![id];
        elements.extend(door);
        let appliance = called(sheet, id);
        let title = match door {
            Some(door) => format!("The {} is too narrow for {appliance}", called(sheet, door)),
            None => format!("No door leads to {appliance}"),
        };
        let finding = Finding::new(
            Severity::Correction,
            limit.citation,
            RULE.slug,
            elements,
            Phrase::text(title),
            "It must come out one day, and the next one in, without a saw.",
        )
        .figures(measured, Quantity::Len(required))
        .at(match door.and_then(|door| sheet.facts.opening(door)) {
            Some(opening) => Place::Along(opening.id),
            None => Place::Under(id),
        });
        out.push(match door {
            Some(_) => judge::unless_existing(sheet, finding),
            None => finding,
        });
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::element::{DoorOperation, ServiceKind};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "appliance-passage";

    /// A room with a stair, and a mechanical room with a furnace 21 in by 29 in behind a cased opening.
    fn behind_an_opening(clear: f64) -> Sample {
        let sample = Sample::room(240.0, 120.0)
            .stair(at(30.0, 60.0), Facing::EAST)
            .partition(at(180.0, 0.0), at(180.0, 120.0));
        let wall = sample.last();
        sample.opening(wall, 40.0, DoorOperation::Cased, clear).service(
            ServiceKind::Furnace,
            at(210.0, 0.0),
            Facing::NORTH,
        )
    }

    #[test]
    fn clear_pass() {
        behind_an_opening(32.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        behind_an_opening(20.0).expect(SLUG, &["correction, measured 20\", required 24\""]);
    }

    #[test]
    fn at_the_limit() {
        behind_an_opening(24.0).expect_none(SLUG);
        behind_an_opening(23.984375)
            .expect(SLUG, &["correction, measured 23 15/16\", required 24\""]);
        // A hinged door loses clear width at its leaf.
        let leaf = |width| {
            let sample = behind_an_opening(width);
            let door = plan::ElementId(sample.last().0 - 1);
            let mut element = sample.facts().plan.get(door).expect("the door").clone();
            if let plan::Body::Opening(o) = &mut element.body
                && let plan::element::OpeningKind::Door(d) = &mut o.kind
            {
                d.operation = DoorOperation::Hinged;
            }
            sample.edit(&plan::Edit::Replace(element))
        };
        leaf(26.0).expect_none(SLUG);
        leaf(24.0).expect(SLUG, &["correction, measured 22\", required 24\""]);
    }

    #[test]
    fn does_not_apply() {
        // The furnace stands where one comes in.
        Sample::room(240.0, 120.0)
            .stair(at(30.0, 60.0), Facing::EAST)
            .service(ServiceKind::Furnace, at(210.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }

    /// services.md T7 AX8: a water heater of 26 in behind a passage of 24 in.
    #[test]
    fn the_largest_appliance_in_the_space_must_pass() {
        let heater = |clear| {
            behind_an_opening(clear)
                .service(ServiceKind::WaterHeater, at(210.0, 120.0), Facing::SOUTH)
                .tune_service(|s| (s.width, s.depth) = (inch(26.0), inch(26.0)))
        };
        heater(24.0).expect(
            SLUG,
            &[
                "correction, measured 24\", required 26\"",
                "correction, measured 24\", required 26\"",
            ],
        );
        heater(26.0).expect_none(SLUG);
    }

    #[test]
    fn without_any_door_there_is_no_way() {
        Sample::room(240.0, 120.0)
            .stair(at(30.0, 60.0), Facing::EAST)
            .partition(at(180.0, 0.0), at(180.0, 120.0))
            .service(ServiceKind::WaterHeater, at(210.0, 0.0), Facing::NORTH)
            .expect(SLUG, &["correction, measured no door, required 24\""]);
    }

    /// Two ways: a wide door into a closet that leads nowhere does not help; the long way round does.
    #[test]
    fn the_widest_way_counts() {
        let rooms = |second: f64| {
            let sample = Sample::room(240.0, 120.0)
                .stair(at(30.0, 60.0), Facing::EAST)
                .partition(at(180.0, 0.0), at(180.0, 120.0));
            let wall = sample.last();
            let sample = sample
                .opening(wall, 10.0, DoorOperation::Cased, 20.0)
                .partition(at(182.25, 60.0), at(240.0, 60.0));
            let across = sample.last();
            sample
                .opening(across, 10.0, DoorOperation::Cased, 36.0)
                .opening(wall, 70.0, DoorOperation::Cased, second)
                .service(ServiceKind::Furnace, at(215.0, 0.0), Facing::NORTH)
        };
        rooms(30.0).expect_none(SLUG);
        rooms(18.0).expect(SLUG, &["correction, measured 20\", required 24\""]);
    }

    #[test]
    fn a_plan_without_a_way_in_counts_the_rooms_own_doors() {
        let sample = Sample::room(240.0, 120.0).partition(at(180.0, 0.0), at(180.0, 120.0));
        let wall = sample.last();
        sample
            .opening(wall, 40.0, DoorOperation::Cased, 20.0)
            .service(ServiceKind::Furnace, at(210.0, 0.0), Facing::NORTH)
            .expect(SLUG, &["correction, measured 20\", required 24\""]);
    }
}
