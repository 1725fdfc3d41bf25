//! Openings for combustion air that are too small.

use plan::Element;
use plan::detail::room::{AIR_OPENING, COMBUSTION_AIR};

use super::burners::{Burners, burners};
use crate::answer::Answer;
use crate::rules::rooms::words::{capital, room_called};
use crate::{Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "combustion-openings",
    group: Group::Heat,
    title: "Openings for combustion air",
    page: "\
What
Each of two openings to another room has 1 sq in of free area for each 1,000 BTU/h of all appliances, and at least 100 sq in;
one begins within 12 in of the top and one within 12 in of the bottom of the room, and none is narrower than 3 in. Each of two
openings straight outdoors, or by upright ducts, has 1 sq in for each 4,000 BTU/h; by level ducts 1 sq in for each 2,000. One
opening outdoors, high up, has 1 sq in for each 3,000 and no less than the vent connectors together.

Why
A closed door must not choke the burner.

Source
IRC G2407.5.3.1, G2407.6.1, G2407.6.2, G2407.10 (IFGC 304.5 to 304.10): 2018 to 2024.

How it is measured
From what is stated at the tag of the room: where the air comes from, and the free area of each opening. A louvre of wood
counts a quarter of its face, one of metal three quarters, where the maker gives no free area. Inputs as stated; rounded up.

Cannot see
Where the openings are, their screens, and whether the next room is large enough itself. A fan gives 0.35 cu ft a minute for
each 1,000 BTU/h, interlocked.

Exceptions
Rooms that hold air enough: see the rule on room volume.

Remedies
Larger or further louvres; ducts from outdoors; a direct-vent appliance. Licensed work.
",
    cites: &[
        "combustion-indoor",
        "combustion-indoor-least",
        "combustion-outdoor-two",
        "combustion-outdoor-level",
        "combustion-outdoor-one",
    ],
    check,
    remedies: None,
};

const WHY: &str = "A closed door must not choke the burner.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for group in burners(sheet) {
        let Some(tag) = group.tag(sheet).and_then(|id| sheet.plan().get(id)) else { continue };
        let Some((slug, per, least)) = demand(sheet, &sheet.ask(tag, &COMBUSTION_AIR)) else {
            continue;
        };
        out.extend(judge(sheet, &group, tag, (slug, per, least)));
    }
}

/// The limit that a way of getting air follows, how many BTU/h one square inch serves, and the least free area.
fn demand(sheet: &Sheet<'_>, air: &Answer) -> Option<(&'static str, u64, u64)> {
    let count = |slug| u64::from(sheet.book.count(slug).value);
    let (slug, least) = match air.word()? {
        "two openings to the next room" => ("combustion-indoor", count("combustion-indoor-least")),
        "two openings outdoors" => ("combustion-outdoor-two", 0),
        "two level ducts outdoors" => ("combustion-outdoor-level", 0),
        "one opening outdoors" => ("combustion-outdoor-one", 0),
        _ => return None,
    };
    Some((slug, count(slug), least))
}

fn judge(
    sheet: &Sheet<'_>,
    group: &Burners<'_>,
    tag: &Element,
    (slug, per, least): (&'static str, u64, u64),
) -> Option<Finding> {
    let room = group.rooms.first()?;
    let free = sheet.ask(tag, &AIR_OPENING);
    let unknown = group.appliances.iter().find(|b| b.input.value.is_none());
    let required = group.input().map(|input| input.div_ceil(per).max(least));
    if let (Some(free), Some(required)) = (free.number(), required)
        && u64::from(free) >= required
    {
        return None;
    }
    let measured = match free.number() {
        Some(n) => format!("{n} sq in"),
        None => "not stated".to_owned(),
    };
    let asked = match required {
        Some(n) => format!("{n} sq in each"),
        None => format!("1 sq in for each {per} BTU/h"),
    };
    let title = format!("The openings for combustion air of {} are too small", room_called(room));
    let title = match (free.number(), required) {
        (Some(_), Some(_)) => title,
        _ => format!(
            "{}: the openings for combustion air can't be judged yet",
            capital(&room_called(room))
        ),
    };
    let mut about = group.ids();
    about.push(tag.id);
    let finding = Finding::new(
        Severity::Correction,
        sheet.book.cite(slug),
        RULE.slug,
        about,
        Phrase::text(title),
        WHY,
    )
    .figures(Quantity::Words(measured), Quantity::Words(asked))
    .at(Place::Point(room.label_at))
    .resting_on(&free);
    Some(match unknown {
        Some(burner) => finding.resting_on(&burner.input),
        None => finding,
    })
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;
    use plan::detail::heat::{FUEL, INPUT, VENT};
    use plan::element::{RoomUse, ServiceKind};

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "combustion-openings";

    /// A utility room with a furnace of 150,000 BTU/h, air from these openings of this free area.
    fn utility(air: &'static str, free: u32) -> Sample {
        Sample::room(120.0, 120.0)
            .service(ServiceKind::Furnace, at(60.0, 0.0), Facing::NORTH)
            .state(&FUEL, Value::Word("natural gas"))
            .state(&VENT, Value::Word("natural draft"))
            .state(&INPUT, Value::Number(150_000))
            .tag(at(60.0, 100.0), "Utility", RoomUse::Mechanical)
            .state(&COMBUSTION_AIR, Value::Word(air))
            .state(&AIR_OPENING, Value::Number(free))
    }

    #[test]
    fn clear_pass() {
        utility("two openings to the next room", 200).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            utility("two openings to the next room", 60)
                .edition(edition)
                .expect(SLUG, &["correction, measured 60 sq in, required 150 sq in each"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // 150,000 BTU/h: T3 of the fact sheet, 1 sq in for each 1,000, 4,000, 2,000 and 3,000.
        for (air, least) in [
            ("two openings to the next room", 150),
            ("two openings outdoors", 38),
            ("two level ducts outdoors", 75),
            ("one opening outdoors", 50),
        ] {
            utility(air, least).expect_none(SLUG);
            assert_eq!(utility(air, least - 1).findings(SLUG).len(), 1, "{air}");
        }
    }

    #[test]
    fn an_indoor_opening_has_at_least_100_square_inches() {
        let small = |free| {
            let room = utility("two openings to the next room", free);
            let furnace = room.plan_elements().find(|e| e.name().starts_with('S')).cloned();
            let mut furnace = furnace.expect("a furnace");
            furnace.details.set(&INPUT, Some(Value::Number(40_000)));
            room.edit(&plan::Edit::Replace(furnace))
        };
        small(100).expect_none(SLUG);
        small(99).expect(SLUG, &["correction, measured 99 sq in, required 100 sq in each"]);
    }

    #[test]
    fn what_is_not_stated_is_asked_for() {
        let bare = utility("two openings outdoors", 40).tune(|e| e.details.set(&AIR_OPENING, None));
        bare.expect(SLUG, &["verify, measured not stated, required 38 sq in each"]);
    }

    #[test]
    fn does_not_apply() {
        utility("the room itself", 0).expect_none(SLUG);
        utility("a fan", 0).expect_none(SLUG);
        Sample::with_room(RoomUse::Mechanical)
            .state(&COMBUSTION_AIR, Value::Word("one opening outdoors"))
            .expect_none(SLUG);
    }
}
