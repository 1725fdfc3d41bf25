//! The smoke alarms of a sleeping room.

use plan::element::{RoomUse, ServiceKind};
use space::Room;

use crate::rules::electrical::devices::{behind_door, drawn, in_room};

use crate::rules::rooms::words::{capital, room_called, room_elements, rooms_called};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "bedroom-alarms",
    group: Group::BedroomOrOffice,
    title: "Alarms of a sleeping room",
    page: "\
What
A smoke alarm in the sleeping room and one outside it near its door; one on the storey; a carbon monoxide alarm outside
it where the house burns fuel or has an attached garage.

Why
Who sleeps doesn't smell smoke.

Source
IRC R314.3, R315.3 (2018, 2021); R310.3, R311.3 (2024).

How it is measured
By the smoke alarms that are drawn: one over the room's floor, one in a room or hall on the other side of one of its
doors. Where none is drawn at all it is advice; where some are, what is missing is to be verified.

Cannot see
Alarms that are not drawn, their wiring, whether one behind the next door is near enough, the carbon monoxide alarm's
need, and distances from cookers.

Exceptions
None. Finishing a basement under a permit brings the alarms of the whole dwelling to the layout of a new one.

Remedies
Place and wire the alarms, all sounding together, and show them on the permit drawing.
",
    cites: &["bedroom-alarms"],
    check: Check::Plan(&[On::Service(ServiceKind::SmokeAlarm)], check),
    remedies: None,
};

const WHY: &str =
    "Who sleeps doesn't smell smoke: a smoke alarm in the room and one outside it wake them.";

/// Where a bedroom's smoke alarms are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Alarms {
    pub inside: bool,
    /// In a room or hall on the other side of one of its doors.
    pub outside: bool,
}

pub(super) fn alarms(sheet: &Sheet<'_>, room: &Room) -> Alarms {
    let inside = !in_room(sheet, ServiceKind::SmokeAlarm, room.index).is_empty();
    Alarms { inside, outside: behind_door(sheet, ServiceKind::SmokeAlarm, room) }
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let mut bare: Vec<&Room> = Vec::new();
    for room in sheet.facts.rooms.iter().filter(|r| r.room_use == RoomUse::Bedroom) {
        let measured = match alarms(sheet, room) {
            Alarms { inside: true, outside: true } => continue,
            Alarms { inside: true, .. } => "one in the room, none outside it",
            Alarms { outside: true, .. } => "one outside it, none in the room",
            _ if drawn(sheet, ServiceKind::SmokeAlarm) => "neither",
            _ => {
                bare.push(room);
                continue;
            }
        };
        let title = format!("{} lacks a smoke alarm", capital(&room_called(room)));
        let finding = finding(sheet, Severity::Verify, &[room], title, measured);
        out.push(finding.assuming("every alarm is drawn"));
    }
    if !bare.is_empty() {
        // Without a single alarm the plan says nothing of alarms: one line for all bedrooms.
        let (name, several) = rooms_called(&bare);
        let needs = if several { "need" } else { "needs" };
        let title = format!("{} {needs} alarms, which are not drawn", capital(&name));
        out.push(finding(sheet, Severity::Advice, &bare, title, "not drawn"));
    }
}

fn finding(
    sheet: &Sheet<'_>,
    severity: Severity,
    rooms: &[&Room],
    title: String,
    measured: &str,
) -> Finding {
    let about = rooms.iter().flat_map(|room| room_elements(room)).collect();
    let citation = sheet.book.cite("bedroom-alarms");
    let finding = Finding::new(severity, citation, RULE.slug, about, Phrase::text(title), WHY)
        .figures(
            Quantity::Words(measured.to_owned()),
            Quantity::Words("smoke alarm in the room and outside it".into()),
        );
    rooms.iter().fold(finding, |finding, room| finding.at(Place::Label(room.index)))
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::element::{RoomUse, ServiceKind};

    use crate::testing::{Sample, at};

    const SLUG: &str = "bedroom-alarms";
    const ADVICE: &str =
        "advice, measured not drawn, required smoke alarm in the room and outside it";

    fn room(room_use: RoomUse) -> Sample {
        Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Room", room_use)
    }

    #[test]
    fn clear_pass() {
        room(RoomUse::Office).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            room(RoomUse::Bedroom).edition(edition).expect(SLUG, &[ADVICE]);
        }
    }

    #[test]
    fn at_the_limit() {
        // One line for all sleeping rooms where no alarm is drawn at all.
        let two = Sample::room(288.0, 120.0)
            .partition(at(144.0, 0.0), at(144.0, 120.0))
            .tag(at(72.0, 60.0), "West", RoomUse::Bedroom)
            .tag(at(216.0, 60.0), "East", RoomUse::Bedroom);
        two.expect(SLUG, &[ADVICE]);
        assert_eq!(two.findings(SLUG)[0].elements.len(), 2);
    }

    #[test]
    fn alarms_that_are_drawn_count() {
        let rooms = Sample::room(240.0, 120.0).partition(at(120.0, 0.0), at(120.0, 120.0));
        let wall = rooms.last();
        let rooms = rooms
            .door(wall, 40.0, 32.0)
            .tag(at(60.0, 60.0), "Bedroom", RoomUse::Bedroom)
            .tag(at(180.0, 60.0), "Hall", RoomUse::Hall);
        let with = |places: &[f64]| {
            places.iter().fold(rooms.clone(), |rooms, x| {
                rooms.service(ServiceKind::SmokeAlarm, at(*x, 60.0), Facing::NORTH)
            })
        };
        let needs = "required smoke alarm in the room and outside it";
        with(&[]).expect(SLUG, &[ADVICE]);
        let inside = format!("verify, measured one in the room, none outside it, {needs}");
        with(&[60.0]).expect(SLUG, &[&inside]);
        let outside = format!("verify, measured one outside it, none in the room, {needs}");
        with(&[180.0]).expect(SLUG, &[&outside]);
        with(&[60.0, 180.0]).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
