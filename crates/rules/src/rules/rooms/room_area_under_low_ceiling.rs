//! A habitable room with too little floor under a full-height ceiling.

use geometry::twice_area;
use measure::{Area, Len};
use space::{Room, area_at_least};

use super::room_area::area_limit;
use super::words::{capital, room_called, room_elements};
use crate::rules::headroom::ceiling_limit;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "room-area-under-low-ceiling",
    group: Group::Rooms,
    title: "Floor of a habitable room under soffits and ducts",
    page: "\
What
Floor under a furred ceiling lower than the required ceiling height doesn't count to the 70 sq ft of a habitable room.

Why
Ducts and soffits may come down to 6 ft 4 in without limit of their share, but a room that lies mostly under them is
not the room that the code means.

Source
IRC R304.3 (2018, 2021), R312.3 (2024), all from memory.

How it is measured
The floor of the room less what lies under overheads that hang lower than the ceiling height its use demands.

Cannot see
Sloped ceilings.

Exceptions
Whether a duct counts as a furred ceiling is left to the office, so this is marked to verify.

Remedies
Gather the ducts in a narrower soffit, or enlarge the room.
",
    cites: &["room-area-height"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "Floor under low soffits and ducts may not count to the room, and what is left is too little by itself.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    let Some(least) = area_limit(sheet, room.room_use).map(|limit| limit.value) else {
        return;
    };
    let Some(height) = ceiling_limit(sheet, room.room_use) else { return };
    // Too small or too low as it is: other rules say so.
    if room.area < least || room.highest < height.limit.value || room.lowest >= height.limit.value {
        return;
    }
    if room.area >= least + low_area(sheet, room, height.limit.value) {
        return;
    }
    let counted = area_at_least(sheet.facts, room.index, height.limit.value);
    if counted >= least {
        return;
    }
    let title = format!("{} has too little floor at full height", capital(&room_called(room)));
    out.push(
        Finding::new(
            Severity::Verify,
            sheet.book.cite("room-area-height"),
            RULE.slug,
            room_elements(room),
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Area(counted), Quantity::Area(least))
        .assuming("floor under ducts and soffits counts to the room")
        .at(Place::Floor(room.index)),
    );
}

/// The area of everything that hangs lower than a height near a room, also where it reaches beyond: at most
/// so much of the floor lies under it.
fn low_area(sheet: &Sheet<'_>, room: &Room, height: Len) -> Area {
    sheet
        .facts
        .overheads_near(room.shape.bounds())
        .filter(|o| o.clear < height)
        .map(|o| Area::from_square_units((twice_area(&o.ring) + 1) / 2))
        .sum()
}

#[cfg(test)]
mod tests {
    use plan::element::{OverheadKind, RoomUse};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "room-area-under-low-ceiling";

    /// A den of 10 x 10 ft with a soffit along its west wall, 6 ft 6 in above the floor.
    fn den(soffit: f64, room_use: RoomUse) -> Sample {
        let x = soffit / 2.0;
        Sample::room(120.0, 120.0).tag(at(100.0, 100.0), "Den", room_use).overhead(
            OverheadKind::Soffit,
            at(x, 0.0),
            at(x, 120.0),
            soffit,
            78.0,
        )
    }

    #[test]
    fn clear_pass() {
        den(24.0, RoomUse::Den).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let verify = "verify, measured 60.0 sq ft, required 70.0 sq ft";
        den(48.0, RoomUse::Den).expect(SLUG, &[verify]);
    }

    #[test]
    fn at_the_limit() {
        // 36 of 120 in under the soffit leaves exactly 70 sq ft.
        den(36.0, RoomUse::Den).expect_none(SLUG);
        assert_eq!(den(36.03125, RoomUse::Den).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        den(48.0, RoomUse::Storage).expect_none(SLUG);
        // Too low all over: the ceiling's own rule says so.
        den(48.0, RoomUse::Den).site(|s| s.joist_underside = inch(82.0)).expect_none(SLUG);
    }
}
