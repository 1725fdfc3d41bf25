//! A fuel-burning appliance in a room that must not have one.

use plan::detail::heat::{FUEL, VENT};
use plan::element::{RoomUse, ServiceKind};

use crate::rules::rooms::words::{called, capital, room_called};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "appliance-room",
    group: Group::Build,
    title: "Furnace or water heater in a bedroom, bath or closet",
    page: "\
What
A fuel-burning appliance does not stand in a sleeping room, a bath or a storage closet, nor takes its air from one.

Why
It uses up the air of who sleeps beside it, and gives back what it should send up the flue.

Source
IRC G2406.2 (303.3), M2005.2: 2018 to 2024.

How it is measured
By the room in which its middle lies, and by its stated fuel and vent: until both are stated the finding is to be verified.

Cannot see
An enclosure with a tight door that opens to outdoor air: set the finding aside with that reason.

Exceptions
Direct-vent appliances; electric ones; a dedicated enclosure with a solid weather-stripped door and all air from outdoors.

Remedies
Another room, a direct-vent appliance, or a sealed enclosure.
",
    cites: &["appliance-room"],
    check: Check::Plan(&[On::Service(ServiceKind::Furnace), On::Service(ServiceKind::WaterHeater)], check),
    remedies: None,
};

const WHY: &str =
    "It uses up the air of who sleeps beside it, and gives back what it should send up the flue.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let burns = |k| matches!(k, ServiceKind::Furnace | ServiceKind::WaterHeater);
    for (element, appliance) in sheet.services().filter(|(_, s)| burns(s.kind)) {
        let at = appliance.placed().centre();
        let Some(room) = sheet.facts.room_at(at).map(|i| sheet.facts.room(i)) else { continue };
        if !matches!(room.room_use, RoomUse::Bedroom | RoomUse::Bath | RoomUse::Closet) {
            continue;
        }
        let (fuel, vent) = (sheet.ask(element, &FUEL), sheet.ask(element, &VENT));
        if fuel.is(&["electric"]) || vent.is(&["direct vent"]) {
            continue;
        }
        let known = fuel.stated && vent.stated;
        let title =
            format!("{} stands in {}", capital(&called(sheet, element.id)), room_called(room));
        let finding = Finding::new(
            Severity::Correction,
            sheet.book.cite("appliance-room"),
            RULE.slug,
            vec![element.id],
            Phrase::text(title),
            WHY,
        )
        .figures(
            Quantity::Words(format!("in a {}", room.room_use.word())),
            Quantity::Words("another room, or outdoor air".to_owned()),
        )
        .at(Place::Point(at));
        out.push(if known {
            finding
        } else {
            finding.assuming("it burns fuel and takes its air from the room")
        });
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "appliance-room";

    fn room(kind: ServiceKind, room_use: RoomUse) -> Sample {
        Sample::room(144.0, 120.0).tag(at(72.0, 20.0), "Room", room_use).service(
            kind,
            at(72.0, 110.0),
            Facing::SOUTH,
        )
    }

    #[test]
    fn clear_pass() {
        room(ServiceKind::Furnace, RoomUse::Mechanical).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let said = |word: &str| {
                format!("verify, measured in a {word}, required another room, or outdoor air")
            };
            let sleeping = room(ServiceKind::Furnace, RoomUse::Bedroom).edition(edition);
            sleeping.expect(SLUG, &[&said("bedroom")]);
            let bath = room(ServiceKind::WaterHeater, RoomUse::Bath).edition(edition);
            bath.expect(SLUG, &[&said("bath")]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The next room is another room, however near.
        let two = Sample::room(144.0, 240.0)
            .partition(at(0.0, 120.0), at(144.0, 120.0))
            .tag(at(72.0, 60.0), "Bedroom", RoomUse::Bedroom)
            .tag(at(72.0, 200.0), "Plant", RoomUse::Mechanical)
            .service(ServiceKind::WaterHeater, at(72.0, 122.25), Facing::NORTH);
        two.expect_none(SLUG);
    }

    #[test]
    fn by_its_fuel_and_vent() {
        let stated = |fuel, vent| {
            room(ServiceKind::Furnace, RoomUse::Bedroom)
                .state(&FUEL, Value::Word(fuel))
                .state(&VENT, Value::Word(vent))
        };
        stated("electric", "draft hood").expect_none(SLUG);
        stated("natural gas", "direct vent").expect_none(SLUG);
        let burns = stated("natural gas", "draft hood").findings(SLUG);
        assert_eq!(burns[0].severity, Severity::Correction);
    }

    #[test]
    fn does_not_apply() {
        room(ServiceKind::Panel, RoomUse::Bedroom).expect_none(SLUG);
    }
}
