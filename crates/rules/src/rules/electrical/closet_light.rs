//! A light too near to what a closet stores.

use geometry::{Pt, gap, orient};
use measure::Len;
use plan::Element;
use plan::detail::electrical::LIGHT_KIND;
use plan::element::{RoomUse, ServiceKind, ServicePoint, Side};
use space::Room;

use super::devices::in_room;
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "closet-light",
    group: Group::Electrical,
    title: "Light in a closet",
    page: "\
What
Between a light and the storage space of a closet there are at least 12 in from an enclosed surface light, 6 in from a
recessed or a fluorescent one. Bare and hanging lamps are not allowed. Above the rod the storage space is 12 in deep along the
back and side walls, or as deep as the shelf where that is more.

Why
A lamp sets the blanket on the top shelf alight.

Source
NEC 410.2, 410.16: 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
From the outline of the light to the nearest wall of the closet that has no door, less the 12 in of storage along it. The
kind of light is as stated; an enclosed surface light is assumed.

Cannot see
Shelves deeper than 12 in, and rods reached from both sides. That clothes fill 24 in from the wall below the rod.

Exceptions
Lights listed for use in the storage space. A light on the wall above the door.

Remedies
Set it above the door, or take a recessed enclosed one. The code asks for no light in a closet.
",
    cites: &["closet-light-surface", "closet-light-recessed", "closet-storage-depth"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str = "A lamp sets the blanket on the top shelf alight.";

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    if room.room_use == RoomUse::Closet {
        let lights = in_room(sheet, ServiceKind::Light, room.index);
        lights.into_iter().for_each(|light| one(sheet, room, light, out));
    }
}

fn one(
    sheet: &Sheet<'_>,
    room: &Room,
    (element, light): (&Element, &ServicePoint),
    out: &mut Vec<Finding>,
) {
    let kind = sheet.ask(element, &LIGHT_KIND);
    if kind.is(&["listed for closets"]) {
        return;
    }
    let slug = match kind.is(&["surface, enclosed"]) {
        true => "closet-light-surface",
        false => "closet-light-recessed",
    };
    let limit = sheet.book.len(slug);
    let name = capital(&called(sheet, element.id));
    let at = Place::Point(light.placed().centre());
    let ids = vec![element.id];
    let found = |title: String, measured, required| {
        let severity = Severity::Correction;
        let citation = limit.citation.clone();
        Finding::new(severity, citation, RULE.slug, ids.clone(), Phrase::text(title), WHY)
            .figures(measured, required)
            .resting_on(&kind)
            .at(at.clone())
    };
    if kind.is(&["bare or hanging lamp"]) {
        let words = |w: &str| Quantity::Words(w.to_owned());
        out.push(found(
            format!("{name} is a bare or hanging lamp in a closet"),
            words("bare or hanging lamp"),
            words("enclosed"),
        ));
        return;
    }
    let storage = sheet.book.length("closet-storage-depth");
    let Some(to_wall) = to_storage_wall(sheet, room, &light.placed().corners()) else {
        return;
    };
    let measured = (to_wall - storage).max(Len::ZERO);
    if measured < limit.value {
        out.push(found(
            format!("{name} is too near to what the closet stores"),
            Quantity::Len(measured),
            Quantity::Len(limit.value),
        ));
    }
}

/// How far the nearest wall without a door is from the light.
fn to_storage_wall(sheet: &Sheet<'_>, room: &Room, light: &[Pt]) -> Option<Len> {
    let doors: Vec<_> = room
        .openings
        .iter()
        .filter(|id| sheet.facts.is_door(**id))
        .filter_map(|id| sheet.facts.opening(*id))
        .flat_map(|o| [o.face(Side::Left), o.face(Side::Right)])
        .collect();
    let has_door =
        |a: Pt, b: Pt| doors.iter().any(|d| orient(a, b, d.a) == 0 && orient(a, b, d.b) == 0);
    room.shape
        .perimeter_edges()
        .filter(|edge| !has_door(edge.a, edge.b))
        .map(|edge| gap(light, &[edge.a, edge.b]).len)
        .min()
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "closet-light";

    /// A closet of 96 in by 72 in with a door in its south wall, and a light of 6 in whose middle lies `y` in from
    /// the back wall, in the middle of the width.
    fn closet(from_back: f64) -> Sample {
        let room = Sample::room(96.0, 72.0).tag(at(48.0, 30.0), "Closet", RoomUse::Closet);
        let host = room.facts().plan.elements().iter().next().expect("a wall").id;
        room.door(host, 30.0, 32.0)
            .service(ServiceKind::Light, at(48.0, 72.0 - from_back - 3.0), Facing::NORTH)
            .fresh()
    }

    #[test]
    fn clear_pass() {
        closet(40.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            // Its edge is 17 in from the back wall: 5 in from what is stored. The kind of light is assumed.
            closet(20.0).edition(edition).expect(SLUG, &["verify, measured 5\", required 12\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        let surface = Value::Word("surface, enclosed");
        closet(27.0).state(&LIGHT_KIND, surface).expect_none(SLUG);
        closet(27.0 - 1.0 / 64.0)
            .state(&LIGHT_KIND, surface)
            .expect(SLUG, &["correction, measured 11 15/16\", required 12\""]);
        let recessed = Value::Word("recessed, enclosed");
        closet(21.0).state(&LIGHT_KIND, recessed).expect_none(SLUG);
        closet(21.0 - 1.0 / 64.0)
            .state(&LIGHT_KIND, recessed)
            .expect(SLUG, &["correction, measured 5 15/16\", required 6\""]);
    }

    #[test]
    fn a_bare_lamp_is_not_allowed_anywhere_in_a_closet() {
        let bare = Value::Word("bare or hanging lamp");
        closet(40.0)
            .state(&LIGHT_KIND, bare)
            .expect(SLUG, &["correction, measured bare or hanging lamp, required enclosed"]);
    }

    #[test]
    fn the_wall_of_the_door_stores_nothing() {
        // 66 in from the back wall is 3 in from the door's wall.
        closet(66.0).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        closet(20.0).state(&LIGHT_KIND, Value::Word("listed for closets")).expect_none(SLUG);
        Sample::with_room(RoomUse::Den)
            .service(ServiceKind::Light, at(20.0, 20.0), Facing::NORTH)
            .expect_none(SLUG);
    }
}
