//! A basement that is lived in, without a smoke alarm.

use plan::element::{RoomUse, ServiceKind};

use super::devices::drawn;
use crate::rules::rooms::uses::habitable;
use crate::rules::rooms::words::room_elements;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "storey-alarm",
    group: Group::Electrical,
    title: "A smoke alarm on the storey",
    page: "\
What
Each storey has a smoke alarm, the basement included. Finishing a basement under a permit brings the alarms of the
whole dwelling to the layout of a new one.

Why
A fire in an empty basement is far along before it is smelled upstairs.

Source
IRC R314.3 (2018, 2021), R310.3 (2024).

How it is measured
Whether the plan shows a smoke alarm at all, where a room is lived in. Bedrooms have a rule of their own.

Cannot see
Alarms that are not drawn, their wiring, and the other storeys.

Exceptions
Exterior work, and plumbing or mechanical work alone, do not bring the alarms of a house up to date.

Remedies
Place and wire the alarms, all sounding together, and show them on the permit drawing.
",
    cites: &["storey-alarm"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "A fire in an empty basement is far along before it is smelled upstairs.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let rooms = &sheet.facts.rooms;
    let slept_in = rooms.iter().any(|r| r.room_use == RoomUse::Bedroom);
    let lived_in = rooms.iter().filter(|r| r.tag.is_some()).find(|r| habitable(r.room_use));
    let Some(room) = lived_in.filter(|_| !slept_in) else { return };
    if drawn(sheet, ServiceKind::SmokeAlarm) {
        return;
    }
    out.push(
        Finding::new(
            Severity::Advice,
            sheet.book.cite("storey-alarm"),
            RULE.slug,
            room_elements(room),
            Phrase::text("The basement needs a smoke alarm, which is not drawn"),
            WHY,
        )
        .figures(Quantity::Words("not drawn".to_owned()), Quantity::Words("one".to_owned()))
        .at(Place::Label(room.index)),
    );
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "storey-alarm";
    const ADVICE: &str = "advice, measured not drawn, required one";

    fn room(room_use: RoomUse) -> Sample {
        Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Room", room_use)
    }

    #[test]
    fn clear_pass() {
        let alarm = (at(72.0, 60.0), Facing::NORTH);
        room(RoomUse::Den).service(ServiceKind::SmokeAlarm, alarm.0, alarm.1).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            room(RoomUse::Den).edition(edition).expect(SLUG, &[ADVICE]);
        }
    }

    #[test]
    fn at_the_limit() {
        // One finding for the whole storey.
        let two = Sample::room(288.0, 120.0)
            .partition(at(144.0, 0.0), at(144.0, 120.0))
            .tag(at(72.0, 60.0), "West", RoomUse::Den)
            .tag(at(216.0, 60.0), "East", RoomUse::Office);
        two.expect(SLUG, &[ADVICE]);
    }

    #[test]
    fn does_not_apply() {
        room(RoomUse::Unfinished).expect_none(SLUG);
        room(RoomUse::Bedroom).expect_none(SLUG);
    }
}
