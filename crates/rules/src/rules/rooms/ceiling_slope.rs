//! A sloped ceiling that leaves too little height over the floor that a room needs.

use measure::Area;
use plan::detail::Detail;
use plan::detail::room::{FLOOR_AT_HEIGHT, FLOOR_OVER_FIVE, SLOPED_CEILING};

use super::area_limit;
use super::words::{capital, room_called, room_elements};
use crate::rules::headroom::ceiling_limit;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "ceiling-slope",
    group: Group::Headroom,
    title: "Sloped ceiling",
    page: "\
What
Under a sloped ceiling at least half of the floor that a habitable room needs lies under the height of a level ceiling, and
none of that floor under less than 5 ft.

Why
A room in which one stands in one corner alone is a closet.

Source
IRC R305.1 exception 1 (2018, 2021), R313.1 exception 1 and R313.1.2 (2024).

How it is measured
By what is stated at the tag of a room that is lived in: the floor under the full height, 7 ft or in an existing house with
2024 6 ft 8 in, against half of 70 sq ft; the floor under 5 ft or more against all of it. Until they are stated they are asked
for.

Cannot see
The slope: ceilings are drawn level.

Exceptions
None. It is the needed 70 sq ft that count, not the whole room.

Remedies
Raise the low side, or leave the lowest part to a closet behind a wall.
",
    cites: &["ceiling-slope-share", "ceiling-slope-low"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "Floor under the low part of the slope doesn't count to the room.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for room in &sheet.facts.rooms {
        let Some(tag) = room.tag.and_then(|id| sheet.plan().get(id)) else { continue };
        let (Some(area), Some(height)) =
            (area_limit(sheet, room.room_use), ceiling_limit(sheet, room.room_use))
        else {
            continue;
        };
        if sheet.ask(tag, &SLOPED_CEILING).yes() != Some(true) {
            continue;
        }
        let share = sheet.book.count("ceiling-slope-share");
        let half = area.value.square_units() * i128::from(share.value) / 100;
        let low = sheet.book.len("ceiling-slope-low");
        let demands: [(&'static Detail, Area, _, _); 2] = [
            (&FLOOR_AT_HEIGHT, Area::from_square_units(half), share.citation, height.limit.value),
            (&FLOOR_OVER_FIVE, area.value, low.citation, low.value),
        ];
        for (detail, required, citation, high) in demands {
            let answer = sheet.ask(tag, detail);
            let floor = answer.number().map(|n| Area::square_feet(n.into()));
            if floor.is_some_and(|floor| floor >= required) {
                continue;
            }
            let high = measure::System::Imperial.len(high, measure::Precision::Tape);
            let title = format!(
                "{} has too little floor under {high} of its slope",
                capital(&room_called(room))
            );
            let measured = match floor {
                Some(floor) => Quantity::Area(floor),
                None => Quantity::Words("not stated".to_owned()),
            };
            out.push(
                Finding::new(
                    Severity::Correction,
                    citation,
                    RULE.slug,
                    room_elements(room),
                    Phrase::text(title),
                    WHY,
                )
                .figures(measured, Quantity::Area(required))
                .resting_on(&answer)
                .at(Place::Label(room.index)),
            );
        }
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "ceiling-slope";

    fn sloped(room_use: RoomUse, full: u32, over_five: u32) -> Sample {
        Sample::with_room(room_use)
            .state(&SLOPED_CEILING, Value::Yes)
            .state(&FLOOR_AT_HEIGHT, Value::Number(full))
            .state(&FLOOR_OVER_FIVE, Value::Number(over_five))
    }

    #[test]
    fn clear_pass() {
        sloped(RoomUse::Den, 60, 100).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let low = sloped(RoomUse::Den, 20, 50).edition(edition);
            let half = "correction, measured 20.0 sq ft, required 35.0 sq ft";
            low.expect(SLUG, &[half, "correction, measured 50.0 sq ft, required 70.0 sq ft"]);
        }
    }

    #[test]
    fn the_height_that_counts_is_lower_in_an_existing_house_with_2024() {
        let title = |edition| {
            let low = sloped(RoomUse::Den, 20, 100).edition(edition);
            low.findings(SLUG)[0].title.say(measure::System::Imperial)
        };
        assert!(title(Edition::E2021).contains("7' 0\""), "{}", title(Edition::E2021));
        assert!(title(Edition::E2024).contains("6' 8\""), "{}", title(Edition::E2024));
    }

    #[test]
    fn at_the_limit() {
        sloped(RoomUse::Den, 35, 70).expect_none(SLUG);
        assert_eq!(sloped(RoomUse::Den, 34, 70).findings(SLUG).len(), 1);
        assert_eq!(sloped(RoomUse::Den, 35, 69).findings(SLUG).len(), 1);
    }

    #[test]
    fn the_floor_is_asked_for() {
        let open = Sample::with_room(RoomUse::Den).state(&SLOPED_CEILING, Value::Yes);
        let asked = |feet| format!("verify, measured not stated, required {feet}.0 sq ft");
        open.expect(SLUG, &[&asked(35), &asked(70)]);
    }

    #[test]
    fn does_not_apply() {
        Sample::with_room(RoomUse::Den).expect_none(SLUG);
        sloped(RoomUse::Storage, 5, 5).expect_none(SLUG);
    }
}
