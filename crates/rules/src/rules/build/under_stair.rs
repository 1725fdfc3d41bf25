//! A closed room under the stair.

use geometry::overlay;
use plan::Body;
use plan::detail::stair::UNDERSIDE_LINED;
use plan::element::{BodyKind, RoomUse};
use space::Room;

use crate::rules::rooms::words::{capital, room_called, room_elements};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "under-stair",
    group: Group::Build,
    title: "Board in a closet under the stair",
    page: "\
What
An enclosed space under a stair that can be reached has 1/2 in gypsum board on its walls, on the underside of the stair and
on its soffits, on the enclosed side.

Why
What is stored there burns, and the stair above it is the way out.

Source
IRC R302.7 (all editions).

How it is measured
A closet, store or mechanical room whose floor lies partly below the flight, and what is stated of the stair's lining; until it is,
the finding is to be verified.

Cannot see
What is stored there, and the walls of the space.

Exceptions
A space that is sealed off, or open.

Remedies
Line it with 1/2 in board.
",
    cites: &["under-stair"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "What is stored there burns, and the stair above it is the way out.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    let closed = |u| matches!(u, RoomUse::Closet | RoomUse::Storage | RoomUse::Mechanical);
    if room.tag.is_none() || !closed(room.room_use) {
        return;
    }
    for flight in sheet.facts.standing(&[BodyKind::Stair]) {
        let Body::Stair(stair) = &flight.body else { continue };
        // The room that one comes down into is not under the flight.
        if sheet.facts.room_at(stair.foot) == Some(room.index) {
            continue;
        }
        let ring = stair.placed().corners().to_vec();
        let below = overlay::intersect(&[ring], std::slice::from_ref(&room.shape.outer));
        let Some(part) = below.into_iter().next() else { continue };
        let lined = sheet.ask(flight, &UNDERSIDE_LINED);
        if lined.yes() == Some(true) {
            continue;
        }
        let title = format!("{} lies under the stair", capital(&room_called(room)));
        let mut elements = room_elements(room);
        elements.push(flight.id);
        let finding = Finding::new(
            Severity::Correction,
            sheet.book.cite("under-stair"),
            RULE.slug,
            elements,
            Phrase::text(title),
            WHY,
        )
        .figures(
            Quantity::Words("lining not drawn".to_owned()),
            Quantity::Words("1/2 in board on the enclosed side".to_owned()),
        )
        .at(Place::Area(part.outer));
        out.push(if lined.stated {
            finding
        } else {
            finding.assuming("the space can be reached and is not lined")
        });
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "under-stair";
    const LINED: &str =
        "verify, measured lining not drawn, required 1/2 in board on the enclosed side";

    /// A stair up north from 30 in; a partition across the basement at `y`, a closet north of it.
    fn closet(y: f64, room_use: RoomUse) -> Sample {
        Sample::room(200.0, 240.0)
            .stair(at(100.0, 30.0), Facing::NORTH)
            .partition(at(0.0, y), at(200.0, y))
            .tag(at(20.0, y + 20.0), "Closet", room_use)
            .tag(at(20.0, 10.0), "Hall", RoomUse::Hall)
    }

    #[test]
    fn clear_pass() {
        // The flight of 13 treads of 10 in ends at 160 in.
        closet(180.0, RoomUse::Closet).expect_none(SLUG);
    }

    #[test]
    fn by_what_is_stated() {
        // The stair was added first: state it there.
        let stated = |value: Value| {
            let sample = closet(120.0, RoomUse::Closet);
            let stair = sample.plan_elements().find(|e| matches!(e.body, Body::Stair(_)));
            let mut stair = stair.expect("a stair").clone();
            stair.details.set(&UNDERSIDE_LINED, Some(value));
            sample.edit(&plan::Edit::Replace(stair))
        };
        stated(Value::Yes).expect_none(SLUG);
        assert_eq!(stated(Value::No).findings(SLUG)[0].severity, Severity::Correction);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            closet(120.0, RoomUse::Closet).edition(edition).expect(SLUG, &[LINED]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Half of the partition is 2 1/4 in: its far face meets the end of the flight.
        let top = closet(120.0, RoomUse::Closet);
        let end = top
            .plan_elements()
            .find_map(|e| match &e.body {
                Body::Stair(s) => Some(s.length().to_inches() + 30.0),
                _ => None,
            })
            .expect("the stair");
        closet(end - 2.25, RoomUse::Closet).expect_none(SLUG);
        assert_eq!(closet(end - 2.25 - 0.0625, RoomUse::Closet).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        closet(120.0, RoomUse::Hall).expect_none(SLUG);
    }
}
