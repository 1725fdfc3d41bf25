//! The alarms of a sleeping room, which the plan doesn't draw.

use plan::element::RoomUse;

use crate::rules::rooms::words::{capital, room_called, room_elements};
use crate::{Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

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
It isn't: alarms are not elements of the plan. Every sleeping room gets this advice.

Cannot see
The alarms, their wiring, and their distances from baths and cookers.

Exceptions
None. Finishing a basement under a permit brings the alarms of the whole dwelling to the layout of a new one.

Remedies
Place and wire the alarms, all sounding together, and show them on the permit drawing.
",
    cites: &["bedroom-alarms"],
    check,
    remedies: None,
};

const WHY: &str = "Who sleeps doesn't smell smoke: smoke alarm in the room and outside it, not drawn here, verify.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for room in sheet.facts.rooms.iter().filter(|r| r.room_use == RoomUse::Bedroom) {
        let title = format!("{} needs alarms, which are not drawn", capital(&room_called(room)));
        out.push(
            Finding::new(
                Severity::Advice,
                sheet.book.cite("bedroom-alarms"),
                RULE.slug,
                room_elements(room),
                Phrase::text(title),
                WHY,
            )
            .figures(
                Quantity::Words("not drawn".into()),
                Quantity::Words("smoke alarm in the room and outside it".into()),
            )
            .at(Place::Point(room.label_at)),
        );
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::RoomUse;

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
        // One line for each sleeping room.
        let two = Sample::room(288.0, 120.0)
            .partition(at(144.0, 0.0), at(144.0, 120.0))
            .tag(at(72.0, 60.0), "West", RoomUse::Bedroom)
            .tag(at(216.0, 60.0), "East", RoomUse::Bedroom);
        two.expect(SLUG, &[ADVICE, ADVICE]);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
