//! Bedrooms and fuel without a carbon monoxide alarm.

use plan::detail::heat::FUEL;
use plan::detail::site::{ATTACHED_GARAGE, FUEL_IN_HOUSE};
use plan::element::{RoomUse, ServiceKind};
use space::Room;

use super::devices::{behind_door, drawn, in_room, room_of};
use crate::rules::build::garage::is_garage;
use crate::rules::rooms::words::{called, capital, room_called, room_elements, rooms_called};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

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
propane or oil, or where it is stated of the house. An attached garage is stated, or drawn as a room with a door into
another one. An alarm counts in a room or hall on the other side of one of the bedroom's doors; where a furnace or water
heater that burns fuel stands in the bedroom or in a bath behind its door, one in the bedroom is asked for as well. Where no such alarm is drawn at all it is advice; where some are, what is missing is to
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
    check: Check::Plan(&[On::Service(ServiceKind::CoAlarm), On::Service(ServiceKind::Furnace), On::Service(ServiceKind::WaterHeater)], check),
    remedies: None,
};

const FUELS: &[&str] = &["natural gas", "propane", "oil"];
const WHY: &str = "It has no smell, and who sleeps does not wake.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !needs_alarms(sheet) {
        return;
    }
    let bedrooms = || sheet.facts.rooms.iter().filter(|r| r.room_use == RoomUse::Bedroom);
    let without: Vec<&Room> =
        bedrooms().filter(|room| !behind_door(sheet, ServiceKind::CoAlarm, room)).collect();
    // Where none is drawn at all, the line about the outside says enough.
    if drawn(sheet, ServiceKind::CoAlarm) {
        out.extend(bedrooms().filter_map(|room| inside(sheet, room)));
    }
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
    rooms.iter().fold(finding, |finding, room| finding.at(Place::Label(room.index)))
}

/// The finding that a bedroom with something that burns in it, or in its bath, has no alarm of its own.
fn inside(sheet: &Sheet<'_>, room: &Room) -> Option<Finding> {
    let facts = sheet.facts;
    let baths = room.openings.iter().filter_map(|id| facts.opening(*id)).flat_map(|o| o.rooms());
    let baths = baths.filter(|r| facts.room(*r).room_use == RoomUse::Bath);
    let places: Vec<_> = baths.chain([room.index]).collect();
    let burner = sheet.services().find(|(element, point)| {
        matches!(point.kind, ServiceKind::Furnace | ServiceKind::WaterHeater)
            && room_of(sheet, point).is_some_and(|r| places.contains(&r))
            && !sheet.ask(element, &FUEL).is(&["electric"])
    });
    let (element, _) = burner?;
    if !in_room(sheet, ServiceKind::CoAlarm, room.index).is_empty() {
        return None;
    }
    let title = format!(
        "{} needs a carbon monoxide alarm inside: {} burns in it or in its bath",
        capital(&room_called(room)),
        called(sheet, element.id)
    );
    let (citation, slug) = (sheet.book.cite("co-alarm"), RULE.slug);
    let mut about = vec![element.id];
    about.extend(room_elements(room));
    let finding = Finding::new(Severity::Verify, citation, slug, about, Phrase::text(title), WHY)
        .figures(
            Quantity::Words("none inside".to_owned()),
            Quantity::Words("one inside".to_owned()),
        );
    let finding = match sheet.ask(element, &FUEL).is(FUELS) {
        true => finding.assuming("every alarm is drawn"),
        false => finding.assuming("it burns fuel, and every alarm is drawn"),
    };
    Some(finding.at(Place::Label(room.index)))
}

/// Whether the house burns fuel or has an attached garage, as drawn or stated.
fn needs_alarms(sheet: &Sheet<'_>) -> bool {
    let yes = |detail| sheet.ask_site(detail).yes() == Some(true);
    let burns = |element| sheet.ask(element, &FUEL).is(FUELS);
    [ServiceKind::GasValve, ServiceKind::GasMeter].iter().any(|k| drawn(sheet, *k))
        || sheet.services().any(|(element, _)| burns(element))
        || yes(&FUEL_IN_HOUSE)
        || yes(&ATTACHED_GARAGE)
        || garage_opens(sheet)
}

/// Whether a garage is drawn that has a door into another room.
fn garage_opens(sheet: &Sheet<'_>) -> bool {
    let facts = sheet.facts;
    let other = |r| !is_garage(facts.room(r));
    let mut garages = facts.rooms.iter().filter(|room| is_garage(room));
    garages.any(|garage| facts.openings_of(garage.index).any(|o| o.rooms().any(other)))
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

    #[test]
    fn a_drawn_garage_counts() {
        let house = |other, door| {
            let rooms = Sample::room(240.0, 120.0).partition(at(120.0, 0.0), at(120.0, 120.0));
            let wall = rooms.last();
            let rooms = if door { rooms.door(wall, 40.0, 32.0) } else { rooms };
            let rooms = rooms.tag(at(60.0, 60.0), "Bedroom", RoomUse::Bedroom);
            rooms.tag(at(180.0, 60.0), "Other", other).findings(SLUG).len()
        };
        assert_eq!(house(RoomUse::Garage, true), 1);
        assert_eq!((house(RoomUse::Garage, false), house(RoomUse::Storage, true)), (0, 0));
    }

    #[test]
    fn something_that_burns_in_the_bedroom_asks_for_one_inside() {
        let heater = |fuel| {
            let house = with(180.0).service(ServiceKind::WaterHeater, at(60.0, 0.0), Facing::NORTH);
            house.state(&FUEL, Value::Word(fuel))
        };
        let gas = heater("natural gas");
        gas.expect(SLUG, &["verify, measured none inside, required one inside"]);
        heater("electric").expect_none(SLUG);
        let alarm = gas.service(ServiceKind::CoAlarm, at(60.0, 60.0), Facing::NORTH);
        alarm.expect_none(SLUG);
    }
}
