//! A beam, duct or soffit that hangs too low in a room.

use std::cmp::Reverse;

use geometry::{Shape, overlay};
use measure::Len;
use space::{OverheadFacts, Room};

use super::limits::{LET_BE, projection_limit};
use crate::rules::rooms::words::{called, capital, room_called, room_elements};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "projection-height",
    group: Group::Headroom,
    title: "Height under beams, ducts and soffits",
    page: "\
What
Beams, girders, ducts, pipes and soffits in a basement may come down to 6 ft 4 in above the finished floor.

Why
Heads. The text sets no limit on how much of the ceiling may hang so low.

Source
IRC R305.1 exception 3, R305.1.1 (2018, 2021); R313.1 exception 3, R313.1.1, R313.1.2 (2024).

How it is measured
From the finished floor to the underside that is entered, the floor build-up taken off. A bare beam, duct or pipe counts
as it hangs; its board, once boxed in, hangs lower: draw it as a soffit. One finding for each room, about everything
that hangs too low in it; the lowest is measured, the largest piece of floor under it is painted first.

Cannot see
The board around a bare duct that will be boxed in. Lights, dampers and hangers that hang lower still.

Exceptions
2024 (and 2021, from memory) also lets beams 36 in apart come down to 6 ft 6 in on any storey; in a basement 6 ft 4 in is
allowed already, so that nothing is asked about their spacing. Some places measure the ceiling to the lowest projection.
Closets, and storage and utility rooms where the house stands already, are marked to verify; its unfinished part is left
as it is.

Remedies
Move the duct or pipe over a room that isn't lived in, or into the joists. A beam carries the house: ask an engineer.
",
    cites: &["projection", "projection-existing", "projection-other"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "Whoever walks under it may strike their head; the code lets things hang below the ceiling, but not this low.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    let Some(height) = projection_limit(sheet, room.room_use) else { return };
    let limit = height.limit.value;
    if room.lowest >= limit {
        return;
    }
    let low = hanging_below(sheet, room, limit);
    let Some(lowest) = low.iter().min_by_key(|o| (o.clear, o.id)) else { return };
    let mut elements = room_elements(room);
    elements.extend(low.iter().map(|o| o.id));
    let name = capital(&called(sheet, lowest.id));
    let mut finding = Finding::new(
        Severity::Correction,
        height.limit.citation,
        RULE.slug,
        elements,
        Phrase::text(format!("{name} hangs too low in {}", room_called(room))),
        WHY,
    )
    .figures(Quantity::Len(lowest.clear), Quantity::Len(limit));
    for piece in floor_under(room, &low) {
        finding = finding.at(Place::Area(piece.outer));
    }
    out.push(if height.gravest > Severity::Correction {
        finding.assuming(LET_BE)
    } else {
        finding
    });
}

/// What hangs lower than a height over a room's floor.
fn hanging_below<'a>(sheet: &Sheet<'a>, room: &Room, limit: Len) -> Vec<&'a OverheadFacts> {
    sheet
        .facts
        .overheads_near(room.shape.bounds())
        .filter(|o| o.clear < limit && o.hangs_over(&room.shape))
        .collect()
}

/// The pieces of the room's floor under the overheads, the largest first.
fn floor_under(room: &Room, overheads: &[&OverheadFacts]) -> Vec<Shape> {
    let rings: Vec<_> = overheads.iter().map(|o| o.ring.clone()).collect();
    let mut pieces = overlay::shape_intersect(std::slice::from_ref(&room.shape), &rings);
    pieces.sort_by_key(|piece| Reverse(piece.area()));
    pieces
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::element::{OverheadKind, RoomUse};
    use plan::{Edition, House};

    use crate::Place;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "projection-height";

    /// A room with a duct 24 in wide across it, so many inches above the slab.
    fn ducted(room_use: RoomUse, under: f64) -> Sample {
        Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Room", room_use).overhead(
            OverheadKind::Duct,
            at(0.0, 40.0),
            at(144.0, 40.0),
            24.0,
            under,
        )
    }

    #[test]
    fn clear_pass() {
        ducted(RoomUse::Den, 82.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = ducted(RoomUse::Den, 75.0).edition(edition);
            sample.expect(SLUG, &["correction, measured 75\", required 76\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        for edition in Edition::ALL {
            for house in [House::New, House::Existing] {
                let hung = |under: Len| {
                    ducted(RoomUse::Den, 80.0)
                        .tune(|e| {
                            if let plan::Body::Overhead(o) = &mut e.body {
                                o.underside = under;
                            }
                        })
                        .edition(edition)
                        .site(|s| s.house = house)
                };
                hung(Len::inches(76)).expect_none(SLUG);
                let low = hung(Len::inches(76) - Len::UNIT);
                low.expect(SLUG, &["correction, measured 75 15/16\", required 76\""]);
            }
        }
        // From the finished floor.
        let floor = |build: f64| ducted(RoomUse::Den, 76.5).site(|s| s.floor_build = inch(build));
        floor(0.5).expect_none(SLUG);
        assert_eq!(floor(0.515625).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        ducted(RoomUse::Unfinished, 60.0).expect_none(SLUG);
        // Over the next room only.
        let beside = Sample::room(240.0, 120.0)
            .partition(at(120.0, 0.0), at(120.0, 120.0))
            .tag(at(60.0, 60.0), "Den", RoomUse::Den)
            .tag(at(180.0, 60.0), "Rest", RoomUse::Unfinished)
            .overhead(OverheadKind::Duct, at(180.0, 0.0), at(180.0, 120.0), 24.0, 70.0);
        beside.expect_none(SLUG);
    }

    #[test]
    fn one_finding_for_a_room_paints_the_largest_piece_first() {
        let two = ducted(RoomUse::Den, 75.0).overhead(
            OverheadKind::Pipe,
            at(20.0, 60.0),
            at(20.0, 100.0),
            4.0,
            74.0,
        );
        let findings = two.findings(SLUG);
        assert_eq!(findings.len(), 1);
        assert_eq!(findings[0].measured, Some(crate::Quantity::Len(inch(74.0))));
        assert_eq!(findings[0].elements.len(), 3);
        let areas: Vec<_> = findings[0]
            .places
            .iter()
            .map(|place| match place {
                Place::Area(ring) => geometry::twice_area(ring),
                other => panic!("{other:?}"),
            })
            .collect();
        assert_eq!(areas.len(), 2);
        assert!(areas[0] > areas[1]);
    }

    #[test]
    fn rooms_that_are_not_lived_in_are_left_to_the_office() {
        let store = ducted(RoomUse::Storage, 75.0);
        store.expect(SLUG, &["verify, measured 75\", required 76\""]);
        let new = ducted(RoomUse::Storage, 75.0).new_house();
        new.expect(SLUG, &["correction, measured 75\", required 76\""]);
    }
}
