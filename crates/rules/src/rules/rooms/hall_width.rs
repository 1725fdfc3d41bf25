//! A hall that is too narrow.

use geometry::{Shape, overlay};
use plan::element::RoomUse;
use space::Room;

use super::core::{core, least_hall_width};
use super::words::{capital, room_called, room_elements};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "hall-width",
    group: Group::Rooms,
    title: "Width of a hall",
    page: "\
What
A hallway is at least 36 in wide, finished wall to finished wall.

Why
It is the way out for everyone behind it, and the way in for a stretcher or a water heater.

Source
IRC R311.6 (2018, 2021), R318.6 (2024).

How it is measured
A square 36 in wide must get through the hall from each of its doors to every other. Niches without a door don't count.
A door that only a narrower stretch leads to is marked to verify: the code is silent on short passages.

Cannot see
What hangs on the walls or stands in the hall: handrails, radiators, shelves, columns.

Exceptions
None for one- and two-family dwellings.

Remedies
Move a partition.
",
    cites: &["hall-width"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "The hall is the way out for everyone behind it, and the way in for a stretcher or a water heater.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    if room.room_use != RoomUse::Hall {
        return;
    }
    let limit = sheet.book.len("hall-width");
    let measured = least_hall_width(sheet.facts, room.index, limit.value);
    if measured >= limit.value {
        return;
    }
    let title = format!("{} is too narrow", capital(&room_called(room)));
    let mut finding = Finding::new(
        Severity::Correction,
        limit.citation,
        RULE.slug,
        room_elements(room),
        Phrase::text(title),
        WHY,
    )
    .figures(Quantity::Len(measured), Quantity::Len(limit.value));
    let wide = core(sheet.facts, room.index, limit.value);
    for part in narrow_parts(&room.shape, &wide) {
        finding = finding.at(Place::Area(part.outer));
    }
    if wide.len() == 1 {
        finding = finding.assuming("the narrow stretch before a door counts as hall");
    }
    out.push(finding);
}

/// What of the hall is not wide enough.
fn narrow_parts(hall: &Shape, wide: &[Shape]) -> Vec<Shape> {
    let rings: Vec<_> = wide.iter().map(|part| part.outer.clone()).collect();
    overlay::shape_difference(std::slice::from_ref(hall), &rings)
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::RoomUse;

    use crate::testing::{Sample, at};

    const SLUG: &str = "hall-width";

    /// A hall between the south wall and a partition 4 1/2 in thick, with a door to the room behind.
    fn hall(width: f64) -> Sample {
        let y = width + 2.25;
        let sample = Sample::room(240.0, 200.0).partition(at(0.0, y), at(240.0, y));
        let partition = sample.last();
        sample.door(partition, 60.0, 30.0).tag(at(120.0, width / 2.0), "Hall", RoomUse::Hall)
    }

    #[test]
    fn clear_pass() {
        hall(48.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = hall(33.5).edition(edition);
            sample.expect(SLUG, &["correction, measured 33 1/2\", required 36\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        hall(36.0).expect_none(SLUG);
        hall(35.984375).expect(SLUG, &["correction, measured 35 15/16\", required 36\""]);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(240.0, 30.0).tag(at(120.0, 15.0), "Store", RoomUse::Storage).expect_none(SLUG);
    }

    /// A hall 48 in wide and 240 in long with a pilaster that leaves a gap in its middle.
    fn pinched(gap: f64) -> Sample {
        Sample::shell(&[
            at(0.0, 0.0),
            at(240.0, 0.0),
            at(240.0, 48.0),
            at(126.0, 48.0),
            at(126.0, gap),
            at(114.0, gap),
            at(114.0, 48.0),
            at(0.0, 48.0),
        ])
        .tag(at(60.0, 20.0), "Hall", RoomUse::Hall)
    }

    #[test]
    fn a_pinch_in_the_middle_counts() {
        pinched(36.0).expect_none(SLUG);
        pinched(34.0).expect(SLUG, &["correction, measured 34\", required 36\""]);
    }

    #[test]
    fn a_niche_without_a_door_does_not_count() {
        let niche = Sample::shell(&[
            at(0.0, 0.0),
            at(240.0, 0.0),
            at(240.0, 48.0),
            at(126.0, 48.0),
            at(126.0, 60.0),
            at(100.0, 60.0),
            at(100.0, 48.0),
            at(0.0, 48.0),
        ]);
        let hall = niche.tag(at(60.0, 20.0), "Hall", RoomUse::Hall);
        hall.expect_none(SLUG);
        // With a door at its end it is a short narrow passage, which the code is silent on. Its north wall is the
        // fifth that was drawn.
        let wall = hall.facts().plan.elements().iter().nth(4).expect("a wall").id;
        let door = hall.door(wall, 1.0, 24.0);
        door.expect(SLUG, &["verify, measured 26\", required 36\""]);
    }
}
