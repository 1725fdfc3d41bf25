//! Bedrooms and fuel without a carbon monoxide alarm.

use plan::element::{RoomUse, ServiceKind};

use super::devices::{behind_door, drawn};
use crate::rules::rooms::words::{capital, room_called, room_elements};
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
A gas valve or gas meter on the plan says that the house burns fuel. An alarm counts in a room or hall on the other
side of one of the bedroom's doors. Where no such alarm is drawn at all it is advice; where some are, what is missing is to
be verified.

Cannot see
Fuel of which no valve or meter is drawn, a garage, alarms that are not drawn, and combined alarms drawn as smoke
alarms.

Exceptions
None where the house burns fuel.

Remedies
Add a carbon monoxide alarm, or one that tells both, outside the bedroom.
",
    cites: &["co-alarm"],
    check,
    remedies: None,
};

const WHY: &str = "It has no smell, and who sleeps does not wake.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let burns = [ServiceKind::GasValve, ServiceKind::GasMeter].iter().any(|k| drawn(sheet, *k));
    if !burns {
        return;
    }
    let some = drawn(sheet, ServiceKind::CoAlarm);
    for room in sheet.facts.rooms.iter().filter(|r| r.room_use == RoomUse::Bedroom) {
        if behind_door(sheet, ServiceKind::CoAlarm, room) {
            continue;
        }
        let (severity, measured) = match some {
            true => (Severity::Verify, "none outside it"),
            false => (Severity::Advice, "not drawn"),
        };
        let title =
            format!("{} has no carbon monoxide alarm outside it", capital(&room_called(room)));
        let finding = Finding::new(
            severity,
            sheet.book.cite("co-alarm"),
            RULE.slug,
            room_elements(room),
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Words(measured.to_owned()), Quantity::Words("one outside it".to_owned()))
        .at(Place::Point(room.label_at));
        out.push(if some { finding.assuming("every alarm is drawn") } else { finding });
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

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
}
