//! A hall of bedrooms open to a room with a much higher ceiling: both need a smoke alarm.

use measure::Len;
use plan::element::{RoomUse, ServiceKind};
use space::Room;

use super::devices::{drawn, in_room};
use crate::rules::rooms::words::{capital, room_called, room_elements};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "alarm-tall-room",
    group: Group::Electrical,
    title: "Smoke alarms where a hall opens to a taller room",
    page: "\
What
Where a room stands open to a hall that serves bedrooms, and its ceiling is 24 in or more above the hall's, a smoke alarm
is in the hall and one in that room.

Why
Smoke fills the higher ceiling first and reaches the hall's alarm late.

Source
IRC R314.3 item 5 (2018, 2021; from memory); R310.3 item 5 (2024).

How it is measured
From the highest ceiling of the one to the highest ceiling of the other, across cased openings. A hall serves bedrooms
where one of its doors leads to one. It is asked once a smoke alarm is drawn.

Cannot see
Alarms that are not drawn, and an opening to the level above, as over a stair.

Exceptions
None.

Remedies
Add a smoke alarm in the room or hall that has none.
",
    cites: &["alarm-tall-room"],
    check: Check::Rooms(check),
    remedies: None,
};

const WHY: &str = "Smoke fills the higher ceiling first and reaches the hall's alarm late.";

fn check(sheet: &Sheet<'_>, hall: &Room, out: &mut Vec<Finding>) {
    if !drawn(sheet, ServiceKind::SmokeAlarm) {
        return;
    }
    let facts = sheet.facts;
    if !serves_bedrooms(sheet, hall) {
        return;
    }
    let limit = sheet.book.len("alarm-tall-room");
    for room in facts.open_to(hall.index) {
        let higher: Len = room.highest - hall.highest;
        if higher < limit.value {
            continue;
        }
        for without in [hall, room] {
            if !in_room(sheet, ServiceKind::SmokeAlarm, without.index).is_empty() {
                continue;
            }
            let title = format!(
                "{} needs a smoke alarm: the ceilings of {} and {} differ",
                capital(&room_called(without)),
                room_called(hall),
                room_called(room)
            );
            out.push(
                Finding::new(
                    Severity::Verify,
                    limit.citation.clone(),
                    RULE.slug,
                    room_elements(without),
                    Phrase::text(title),
                    WHY,
                )
                .figures(Quantity::Len(higher), Quantity::Words("an alarm in both".to_owned()))
                .assuming("every alarm is drawn")
                .at(Place::Label(without.index)),
            );
        }
    }
}

fn serves_bedrooms(sheet: &Sheet<'_>, room: &Room) -> bool {
    let facts = sheet.facts;
    let bedroom = |r| facts.room(r).room_use == RoomUse::Bedroom;
    let doors = room.openings.iter().filter(|id| facts.is_door(**id));
    room.room_use == RoomUse::Hall
        && doors.filter_map(|id| facts.opening(*id)).any(|door| door.rooms().any(bedroom))
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::element::{DoorOperation, OverheadKind};

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "alarm-tall-room";

    /// A bedroom, a hall under a soffit that hangs `drop` below the ceiling, and a family room open to the hall.
    fn house(drop: f64) -> Sample {
        let rooms = Sample::room(360.0, 120.0).partition(at(120.0, 0.0), at(120.0, 120.0));
        let bedroom_wall = rooms.last();
        let rooms = rooms.partition(at(240.0, 0.0), at(240.0, 120.0));
        let family_wall = rooms.last();
        let site = rooms.facts().plan.site.clone();
        let ceiling = (site.joist_underside - site.ceiling.drop()).to_inches();
        rooms
            .door(bedroom_wall, 40.0, 32.0)
            .door(family_wall, 40.0, 40.0)
            .tune_door(|d| d.operation = DoorOperation::Cased)
            .tag(at(60.0, 60.0), "Bedroom", RoomUse::Bedroom)
            .tag(at(180.0, 60.0), "Hall", RoomUse::Hall)
            .tag(at(300.0, 60.0), "Family", RoomUse::FamilyRoom)
            .overhead(OverheadKind::Soffit, at(180.0, 0.0), at(180.0, 120.0), 120.0, ceiling - drop)
    }

    fn alarm(house: Sample, x: f64) -> Sample {
        house.service(ServiceKind::SmokeAlarm, at(x, 60.0), Facing::NORTH)
    }

    #[test]
    fn clear_pass() {
        alarm(alarm(house(30.0), 180.0), 300.0).expect_none(SLUG);
        alarm(house(6.0), 180.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let family = alarm(house(30.0), 180.0).edition(edition);
            family.expect(SLUG, &["verify, measured 30\", required an alarm in both"]);
            let hall = alarm(house(30.0), 300.0).edition(edition);
            hall.expect(SLUG, &["verify, measured 30\", required an alarm in both"]);
            assert_eq!(alarm(house(30.0), 60.0).edition(edition).findings(SLUG).len(), 2);
        }
    }

    #[test]
    fn at_the_limit() {
        assert_eq!(alarm(house(24.0), 180.0).findings(SLUG).len(), 1);
        alarm(house(23.875), 180.0).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        // No alarm is drawn; then storey-alarm speaks.
        house(30.0).expect_none(SLUG);
    }
}
