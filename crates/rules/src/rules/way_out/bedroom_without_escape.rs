//! A sleeping room with no opening that could serve as its way out.

use plan::element::WindowOperation;
use space::Room;

use super::candidate::{Candidate, candidates};
use super::choice::{WAS_A_BEDROOM, whose};
use super::need::Need;
use crate::rules::rooms::words::capital;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "bedroom-without-escape",
    group: Group::WayOut,
    title: "Escape opening of a sleeping room",
    page: "\
What
Each sleeping room, and in 2024 each room that a sleeping loft opens to, has an escape opening of its own: a window or door that a sleeper opens from inside
and climbs out of, straight to the outdoors.

Why
A fire between the bed and the stair leaves no other way out, and a firefighter no other way in.

Source
IRC R310.1 (2018, 2021), R319.1 (2024).

How it is measured
Every window and door in a foundation wall of the room is looked at. Fixed glass doesn't count. A
window whose clear size is only estimated counts when its frame is at least as large as the clear
opening must be. Where one could serve, the other rules of this family judge it.

Cannot see
Whether the foundation wall stands against open air: an opening into a garage, a crawl space or a
closed porch does not serve.

Exceptions
A room that is stated to be a storm shelter (see escape-shelter-exception). Sleeping rooms of a sprinklered
basement (see escape-sprinkler-exception). A room that was a bedroom
before the work, in a house that stands, is marked to verify instead.

Remedies
None that is an edit of the plan alone: cutting a foundation wall needs a permit and often an engineer.
",
    cites: &["bedroom-escape", "loft-escape"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "In a fire the stair may be cut off: who sleeps here must be able to climb out, and a \
                   firefighter to climb in.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    let index = room.index;
    let needs = sheet.needs();
    let place = needs.binary_search_by_key(&Some(index), |need| need.room);
    let Ok(need) = place.map(|i| needs[i]) else { return };
    let outside = candidates(sheet.facts, need.room);
    if !outside.iter().any(|c| c.could_serve(sheet)) {
        let elements = room.tag.into_iter().chain(outside.iter().map(|c| c.facts.id)).collect();
        let mut finding = Finding::new(
            need.gravest,
            sheet.book.cite("bedroom-escape"),
            RULE.slug,
            elements,
            title(sheet, need),
            WHY,
        )
        .figures(
            Quantity::Words(lacking(&outside).to_owned()),
            Quantity::Words("one escape opening".to_owned()),
        )
        .at(Place::Floor(room.index));
        if need.gravest > Severity::Correction {
            finding = finding.assuming(WAS_A_BEDROOM);
        }
        out.push(finding);
    }
}

fn title(sheet: &Sheet<'_>, need: Need) -> Phrase {
    Phrase::text(format!("{} has no way out but the stair", capital(&whose(sheet, need))))
}

/// What there is instead of an escape opening.
pub(super) fn lacking(outside: &[Candidate<'_>]) -> &'static str {
    let fixed = |c: &Candidate<'_>| c.window().map(|w| w.operation) == Some(WindowOperation::Fixed);
    if outside.is_empty() {
        "none"
    } else if outside.iter().all(fixed) {
        "fixed glass only"
    } else {
        "no frame large enough"
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::{ClearOpening, RoomUse, Window, WindowOperation};

    use crate::rules::way_out::sample::{bare_bedroom, bedroom, good_window, window, with_window};
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "bedroom-without-escape";
    const NONE: &str = "correction, measured none, required one escape opening";

    #[test]
    fn clear_pass() {
        bedroom(good_window()).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            bare_bedroom().edition(edition).expect(SLUG, &[NONE]);
        }
    }

    fn estimated(width: f64, height: f64) -> Window {
        Window {
            frame_width: inch(width),
            frame_height: inch(height),
            clear: ClearOpening::Estimated,
            ..good_window()
        }
    }

    #[test]
    fn at_the_limit() {
        // 30 x 24 in is exactly 5.0 sq ft, the least for a grade-floor opening.
        bedroom(estimated(30.0, 24.0)).expect_none(SLUG);
        let small = "correction, measured no frame large enough, required one escape opening";
        bedroom(estimated(30.0, 23.984375)).expect(SLUG, &[small]);
        bedroom(estimated(29.984375, 24.0)).expect(SLUG, &[small]);
    }

    #[test]
    fn does_not_apply() {
        for room_use in RoomUse::ALL.into_iter().filter(|u| *u != RoomUse::Bedroom) {
            Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Room", room_use).expect_none(SLUG);
        }
    }

    #[test]
    fn fixed_glass_is_no_opening() {
        let glass = Window { operation: WindowOperation::Fixed, ..good_window() };
        let only = "correction, measured fixed glass only, required one escape opening";
        bedroom(glass.clone()).expect(SLUG, &[only]);
        with_window(bedroom(glass), good_window()).expect_none(SLUG);
    }

    #[test]
    fn an_opening_of_the_next_room_does_not_serve() {
        // The partition leaves the window to the den in the west.
        let sample = with_window(Sample::room(240.0, 120.0), window(30.0, 42.0))
            .partition(at(120.0, 0.0), at(120.0, 120.0))
            .tag(at(60.0, 60.0), "Den", RoomUse::Den)
            .tag(at(180.0, 60.0), "Guest room", RoomUse::Bedroom);
        sample.expect(SLUG, &[NONE]);
    }

    #[test]
    fn a_bedroom_that_was_there_is_left_to_the_office() {
        let was = "verify, measured none, required one escape opening";
        bare_bedroom().existing().expect(SLUG, &[was]);
        bare_bedroom().existing().new_house().expect(SLUG, &[NONE]);
    }

    #[test]
    fn a_room_with_a_sleeping_loft_is_one_from_2024_on() {
        use plan::detail::{Value, room::SLEEPING_LOFT};
        let den = |edition| {
            let den = Sample::with_room(RoomUse::Den).edition(edition);
            den.state(&SLEEPING_LOFT, Value::Yes)
        };
        den(Edition::E2018).expect_none(SLUG);
        den(Edition::E2021).expect_none(SLUG);
        den(Edition::E2024).expect(SLUG, &[NONE]);
    }
}
