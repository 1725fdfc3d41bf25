//! A ceiling that is too low for what the room is used as.

use super::limits::{LET_BE, ceiling_limit};
use crate::rules::rooms::words::{capital, room_called, room_elements};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};
use space::Room;

pub(crate) const RULE: Rule = Rule {
    slug: "ceiling-height",
    group: Group::Headroom,
    title: "Ceiling height",
    page: "\
What
Habitable rooms and halls have a ceiling at least 7 ft high; baths, toilet and laundry rooms 6 ft 8 in; the parts of a
basement that aren't lived in 6 ft 8 in. In the basement of an existing house the 2024 edition asks for 6 ft 8 in
(habitable rooms; halls are read with them) and 6 ft 4 in (baths, toilet and laundry rooms).

Why
Tall people, smoke under the ceiling, and doors that are 6 ft 8 in high.

Source
IRC R305.1, R305.1.1 (2018, 2021); R313.1, R313.1.1, R313.1.2 (2024).

How it is measured
From the finished floor to the finished ceiling: the joists' underside above the slab, less the ceiling build-up, less
the floor build-up. What hangs lower is looked at by projection-height, unless it covers the whole room: then it is the
ceiling.

Cannot see
Sloped ceilings, the spot over a fixture or a shower head, and a ceiling that hangs lower in this room than elsewhere
(draw it as a soffit).

Exceptions
Beams, ducts and other obstructions: see projection-height. Closets are commonly let be and are marked to verify, and so
are storage and utility rooms where the house stands already; its unfinished part is left as it is.

Remedies
A thinner ceiling or floor build-up: board on the joists instead of lay-in tiles, thinner flooring.
",
    cites: &[
        "ceiling-habitable",
        "ceiling-wet",
        "ceiling-other",
        "ceiling-existing-habitable",
        "ceiling-existing-hall",
        "ceiling-existing-wet",
    ],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str =
    "Measured from finished floor to finished ceiling, the room is lower than its use allows.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    let Some(height) = ceiling_limit(sheet, room.room_use) else { return };
    if room.highest >= height.limit.value {
        return;
    }
    let title = format!("The ceiling of {} is too low", room_called(room));
    let finding = Finding::new(
        Severity::Correction,
        height.limit.citation,
        RULE.slug,
        room_elements(room),
        Phrase::text(capital(&title)),
        WHY,
    )
    .figures(Quantity::Len(room.highest), Quantity::Len(height.limit.value))
    .at(Place::Floor(room.index));
    out.push(if height.gravest > Severity::Correction {
        finding.assuming(LET_BE)
    } else {
        finding
    });
}

#[cfg(test)]
mod tests {
    use plan::element::{OverheadKind, RoomUse};
    use plan::{CeilingBuild, Edition};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "ceiling-height";

    /// A room with so many inches from the slab to open joists.
    fn room(room_use: RoomUse, height: f64) -> Sample {
        Sample::room(144.0, 120.0)
            .tag(at(72.0, 60.0), "Room", room_use)
            .site(|s| s.joist_underside = inch(height))
    }

    #[test]
    fn clear_pass() {
        for room_use in RoomUse::ALL {
            room(room_use, 96.0).expect_none(SLUG);
            room(room_use, 96.0).new_house().expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let low = room(RoomUse::Den, 78.0).new_house().edition(edition);
            low.expect(SLUG, &["correction, measured 78\", required 84\""]);
        }
    }

    /// The limit of every use, in inches: in a new house, and in an existing one by edition.
    #[test]
    fn at_the_limit() {
        let existing = |limit: f64, room_use: RoomUse, edition: Edition| {
            room(room_use, limit).edition(edition).expect_none(SLUG);
            let short = room(room_use, limit - 0.015625).edition(edition);
            assert_eq!(short.findings(SLUG).len(), 1, "{room_use:?} {edition:?}");
        };
        let new = |limit: f64, room_use: RoomUse| {
            for edition in Edition::ALL {
                room(room_use, limit).new_house().edition(edition).expect_none(SLUG);
                let short = room(room_use, limit - 0.015625).new_house().edition(edition);
                assert_eq!(short.findings(SLUG).len(), 1, "{room_use:?} {edition:?}");
            }
        };
        let lived_in = [
            RoomUse::Bedroom,
            RoomUse::Office,
            RoomUse::Den,
            RoomUse::FamilyRoom,
            RoomUse::Gym,
            RoomUse::Kitchen,
            RoomUse::Hall,
        ];
        for room_use in lived_in {
            new(84.0, room_use);
            existing(84.0, room_use, Edition::E2018);
            existing(84.0, room_use, Edition::E2021);
            existing(80.0, room_use, Edition::E2024);
        }
        for room_use in [RoomUse::Bath, RoomUse::Laundry] {
            new(80.0, room_use);
            existing(80.0, room_use, Edition::E2018);
            existing(80.0, room_use, Edition::E2021);
            existing(76.0, room_use, Edition::E2024);
        }
        for room_use in [RoomUse::Closet, RoomUse::Storage, RoomUse::Mechanical, RoomUse::Workshop]
        {
            new(80.0, room_use);
            for edition in Edition::ALL {
                existing(80.0, room_use, edition);
            }
        }
        new(80.0, RoomUse::Unfinished);
    }

    #[test]
    fn does_not_apply() {
        room(RoomUse::Unfinished, 70.0).expect_none(SLUG);
    }

    #[test]
    fn the_build_ups_of_ceiling_and_floor_are_taken_off() {
        let built = |ceiling: f64, floor: f64| {
            room(RoomUse::Den, 85.0).site(|s| {
                s.ceiling = CeilingBuild::Board(inch(ceiling));
                s.floor_build = inch(floor);
            })
        };
        built(0.5, 0.5).expect_none(SLUG);
        let low = built(0.5, 0.515625);
        low.expect(SLUG, &["correction, measured 83 15/16\", required 84\""]);
        let tiles = room(RoomUse::Den, 86.0).site(|s| s.ceiling = CeilingBuild::LayIn(inch(4.0)));
        tiles.expect(SLUG, &["correction, measured 82\", required 84\""]);
    }

    #[test]
    fn rooms_that_are_not_lived_in_are_left_to_the_office() {
        let low = "verify, measured 78\", required 80\"";
        room(RoomUse::Storage, 78.0).expect(SLUG, &[low]);
        room(RoomUse::Closet, 78.0).new_house().expect(SLUG, &[low]);
        let correction = "correction, measured 78\", required 80\"";
        room(RoomUse::Storage, 78.0).new_house().expect(SLUG, &[correction]);
    }

    #[test]
    fn a_soffit_over_the_whole_room_is_its_ceiling() {
        let soffit = |width: f64| {
            room(RoomUse::Den, 96.0).overhead(
                OverheadKind::Soffit,
                at(width / 2.0, 0.0),
                at(width / 2.0, 120.0),
                width,
                80.0,
            )
        };
        soffit(144.0).expect(SLUG, &["correction, measured 80\", required 84\""]);
        soffit(120.0).expect_none(SLUG);
    }
}
