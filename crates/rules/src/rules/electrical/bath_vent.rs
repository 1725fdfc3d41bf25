//! A bath that nothing airs.

use measure::Area;
use plan::detail::opening::OPENABLE_AREA;
use plan::element::{RoomUse, ServiceKind, Window, WindowOperation};
use space::Room;

use super::devices::{in_room, was_there};
use crate::rules::bedroom::glazing::frames_of;
use crate::rules::rooms::words::{capital, room_called, room_elements};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "bath-vent",
    group: Group::Electrical,
    title: "Window or exhaust fan of a bath",
    page: "\
What
A bath has a window of at least 3 sq ft, half of it to open, or light and an exhaust fan that blows outdoors.

Why
What a shower steams off stays in the walls.

Source
IRC R303.3 (2018, 2021), R325.2 (2024).

How it is measured
A window counts by its glass, or where that is not stated by its frame, where it opens and leads outdoors; half of 3 sq ft
must open, where it is stated how much does; a fan where it is drawn over the bath's floor. The glass
is smaller than the frame, so a window that only just counts is worth a second look.

Cannot see
A fan that is not drawn, which is why the finding is to be verified; where its duct ends and what it moves.

Exceptions
Rooms that were there before the work.

Remedies
Add an exhaust fan with a duct to outdoors: 50 cfm, or 20 cfm where it runs always.
",
    cites: &["bath-vent", "bath-window"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "What a shower steams off stays in the walls.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    let limit = sheet.book.area("bath-window");
    if room.room_use != RoomUse::Bath || was_there(sheet, room) {
        return;
    }
    let opens = |w: &Window| w.operation != WindowOperation::Fixed;
    let window = frames_of(sheet.facts, room, opens);
    let little = opens_too_little(sheet, room, limit.value).filter(|_| window >= limit.value);
    let large = window >= limit.value && little.is_none();
    if large || !in_room(sheet, ServiceKind::ExhaustFan, room.index).is_empty() {
        return;
    }
    let (measured, required) = match little {
        Some(open) => (open, half(limit.value)),
        None => (window, limit.value),
    };
    let title =
        format!("{} has no fan and no window that is large enough", capital(&room_called(room)));
    out.push(
        Finding::new(
            Severity::Verify,
            sheet.book.cite("bath-vent"),
            RULE.slug,
            room_elements(room),
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Area(measured), Quantity::Area(required))
        .assuming("the exhaust fan is not drawn")
        .at(Place::Label(room.index)),
    );
}

/// What is stated to open of the windows, where that is less than half of the least window. One of which it is not stated is
/// taken to open far enough.
fn opens_too_little(sheet: &Sheet<'_>, bath: &Room, least: Area) -> Option<Area> {
    let windows: Vec<Option<u32>> = sheet
        .facts
        .openings_of(bath.index)
        .filter(|o| o.outside)
        .filter_map(|o| sheet.plan().get(o.id))
        .filter(|e| OPENABLE_AREA.fits(&e.body))
        .map(|e| sheet.ask(e, &OPENABLE_AREA).number())
        .collect();
    let stated = windows.into_iter().sum::<Option<u32>>()?;
    let open = Area::square_inch_hundredths(i128::from(stated) * 100);
    (open < half(least)).then_some(open)
}

fn half(area: Area) -> Area {
    Area::from_square_units(area.square_units() / 2)
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::Edition;

    use super::*;
    use crate::rules::way_out::sample::{good_window, with_window};
    use crate::testing::{Sample, at};

    const SLUG: &str = "bath-vent";

    fn bath() -> Sample {
        Sample::room(96.0, 60.0).tag(at(48.0, 30.0), "Bath", RoomUse::Bath)
    }

    fn framed(width: Len, height: Len) -> Sample {
        with_window(bath(), Window { frame_width: width, frame_height: height, ..good_window() })
    }

    #[test]
    fn clear_pass() {
        bath().service(ServiceKind::ExhaustFan, at(48.0, 30.0), Facing::NORTH).expect_none(SLUG);
    }

    #[test]
    fn half_of_it_opens() {
        use plan::detail::Value;
        let opens = |inches: u32| {
            framed(Len::inches(24), Len::inches(24)).state(&OPENABLE_AREA, Value::Number(inches))
        };
        // 1.5 sq ft are 216 sq in.
        opens(216).expect_none(SLUG);
        opens(215).expect(SLUG, &["verify, measured 1.4 sq ft, required 1.5 sq ft"]);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            bath()
                .edition(edition)
                .expect(SLUG, &["verify, measured 0.0 sq ft, required 3.0 sq ft"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // 24 in by 18 in: 3 sq ft.
        framed(Len::inches(24), Len::inches(18)).expect_none(SLUG);
        assert_eq!(framed(Len::inches(24), Len::inches(18) - Len::UNIT).findings(SLUG).len(), 1);
        let fixed = Window {
            operation: WindowOperation::Fixed,
            frame_width: Len::inches(40),
            frame_height: Len::inches(40),
            ..good_window()
        };
        assert_eq!(with_window(bath(), fixed).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(96.0, 60.0).tag(at(48.0, 30.0), "Store", RoomUse::Storage).expect_none(SLUG);
    }
}
