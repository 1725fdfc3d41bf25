//! Bedrooms and fuel without a carbon monoxide alarm.

use plan::detail::heat::FUEL;
use plan::detail::site::{ATTACHED_GARAGE, FUEL_IN_HOUSE};
use plan::element::{RoomUse, ServiceKind};
use space::Room;

use super::devices::{behind_door, drawn};
use crate::rules::rooms::words::{capital, room_elements, rooms_called};
use crate::{Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "co-alarm",
    group: Group::Electrical,
    title: "Carbon monoxide alarm outside a sleeping room",
    page: "\
What
A house that burns fuel, or has an attached garage with an opening into it, has a carbon monoxide alarm outside each
sleeping area; inside the bedroom too where the appliance stands in it or in its bath.

Why
It has no smell, and who sleeps does not wake.

Source
IRC R315.2.1, R315.3 (2018, 2021); R311.2.1, R311.3 (2024).

How it is measured
The house burns fuel where a gas valve or gas meter is on the plan, where a furnace or water heater is stated to run on gas,
propane or oil, or where it is stated of the house; or the house is stated to have an attached garage. An alarm counts in a room or hall on the other
side of one of the bedroom's doors. Where no such alarm is drawn at all it is advice; where some are, what is missing is to
be verified.

Cannot see
Fuel and a garage that are neither drawn nor stated, alarms that are not drawn, and combined alarms drawn as smoke
alarms.

Exceptions
A house that burns no fuel and has no attached garage.

Remedies
Add a carbon monoxide alarm, or one that tells both, outside the bedroom.
",
    cites: &["co-alarm"],
    check,
    remedies: None,
};

const WHY: &str = "It has no smell, and who sleeps does not wake.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !needs_alarms(sheet) {
        return;
    }
    let bedrooms = sheet.facts.rooms.iter().filter(|r| r.room_use == RoomUse::Bedroom);
    let without: Vec<&Room> =
        bedrooms.filter(|room| !behind_door(sheet, ServiceKind::CoAlarm, room)).collect();
    if without.is_empty() {
        return;
    }
    // Without a single alarm the plan says nothing of alarms: one line for all bedrooms.
    if !drawn(sheet, ServiceKind::CoAlarm) {
        out.push(finding(sheet, Severity::Advice, &without, "not drawn"));
        return;
    }
    for room in without {
        let finding = finding(sheet, Severity::Verify, &[room], "none outside it");
        out.push(finding.assuming("every alarm is drawn"));
    }
}

fn finding(sheet: &Sheet<'_>, severity: Severity, rooms: &[&Room], measured: &str) -> Finding {
    let (name, several) = rooms_called(rooms);
    let title = match several {
        true => format!("{} have no carbon monoxide alarm outside them", capital(&name)),
        false => format!("{} has no carbon monoxide alarm outside it", capital(&name)),
    };
    let about = rooms.iter().flat_map(|room| room_elements(room)).collect();
    let citation = sheet.book.cite("co-alarm");
    let finding = Finding::new(severity, citation, RULE.slug, about, Phrase::text(title), WHY)
        .figures(
            Quantity::Words(measured.to_owned()),
            Quantity::Words("one outside it".to_owned()),
        );
    rooms.iter().fold(finding, |finding, room| finding.at(Place::Point(room.label_at)))
}

/// Whether the house burns fuel or has an attached garage, as drawn or stated.
fn needs_alarms(sheet: &Sheet<'_>) -> bool {
    let yes = |detail| sheet.ask_site(detail).yes() == Some(true);
    let burns = |element| sheet.ask(element, &FUEL).is(&["natural gas", "propane", "oil"]);
    [ServiceKind::GasValve, ServiceKind::GasMeter].iter().any(|k| drawn(sheet, *k))
        || sheet.services().any(|(element, _)| burns(element))
        || yes(&FUEL_IN_HOUSE)
        || yes(&ATTACHED_GARAGE)
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "co-alarm";

    /// A bedroom west of a hall with a gas valve, a door between.
    fn house(room_use: RoomUse) -> Sample {
        let rooms = Sample::room(240.0, 120.0).partition(at(120.0, 0.0), at(120.0, 120.0));
        let wall = rooms.last();
        rooms
            .door(wall, 40.0, 32.0)
            .tag(at(60.0, 60.0), "Bedroom", room_use)
            .tag(at(180.0, 60.0), "Hall", RoomUse::Hall)
            .service(ServiceKind::GasValve, at(240.0, 20.0), Facing::WEST)
    }

    fn with(x: f64) -> Sample {
        house(RoomUse::Bedroom).service(ServiceKind::CoAlarm, at(x, 60.0), Facing::NORTH)
    }

    #[test]
    fn clear_pass() {
        with(180.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let none = house(RoomUse::Bedroom).edition(edition);
            none.expect(SLUG, &["advice, measured not drawn, required one outside it"]);
            let inside = with(60.0).edition(edition);
            inside.expect(SLUG, &["verify, measured none outside it, required one outside it"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Just on the other side of the partition counts.
        with(127.0).expect_none(SLUG);
        assert_eq!(with(113.0).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        house(RoomUse::Office).expect_none(SLUG);
        // Nothing says that the house burns fuel.
        let electric = Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Bedroom", RoomUse::Bedroom);
        electric.expect_none(SLUG);
    }

    #[test]
    fn fuel_and_a_garage_may_be_stated() {
        let bedroom = || Sample::with_room(RoomUse::Bedroom);
        for detail in [&FUEL_IN_HOUSE, &ATTACHED_GARAGE] {
            let stated = |value| bedroom().state_site(detail, value).findings(SLUG).len();
            assert_eq!((stated(Value::Yes), stated(Value::No)), (1, 0));
        }
        let furnace = |fuel| {
            let room = bedroom().service(ServiceKind::Furnace, at(100.0, 0.0), Facing::NORTH);
            room.state(&FUEL, Value::Word(fuel)).findings(SLUG).len()
        };
        assert_eq!((furnace("oil"), furnace("electric")), (1, 0));
    }
}
