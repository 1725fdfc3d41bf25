//! Return air from a room that it must not come from.

use plan::element::{RoomUse, ServiceKind};

use crate::rules::electrical::devices::{middle, of_kind, room_of};
use crate::rules::rooms::words::{called, capital, room_called};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "return-air-room",
    group: Group::Heat,
    title: "Rooms that give no return air",
    page: "\
What
Return air is not taken from a closet, a bath, a kitchen, or a mechanical or furnace room.

Why
It carries steam, smells and flue gas through the whole house.

Source
IRC M1602.2: 2018 to 2024.

How it is measured
By the use of the room before the return grille.

Cannot see
A unit that serves that space alone.

Exceptions
A unit that serves the space alone; a kitchen inlet at least 10 ft from the cooker.

Remedies
Move the grille to a hall or living room.
",
    cites: &["return-air-room"],
    check: Check::Plan(&[On::Service(ServiceKind::ReturnGrille)], check),
    remedies: None,
};

const WHY: &str = "It carries steam, smells and flue gas through the whole house.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (element, grille) in of_kind(sheet, ServiceKind::ReturnGrille) {
        let Some(room) = room_of(sheet, grille).map(|i| sheet.facts.room(i)) else { continue };
        if !forbidden(room.room_use) {
            continue;
        }
        let title =
            format!("{} takes air from {}", capital(&called(sheet, element.id)), room_called(room));
        out.push(
            Finding::new(
                Severity::Correction,
                sheet.book.cite("return-air-room"),
                RULE.slug,
                vec![element.id],
                Phrase::text(title),
                WHY,
            )
            .figures(
                Quantity::Words(room.room_use.word().to_owned()),
                Quantity::Words("another room".to_owned()),
            )
            .at(Place::Point(middle(grille))),
        );
    }
}

fn forbidden(room_use: RoomUse) -> bool {
    matches!(room_use, RoomUse::Closet | RoomUse::Bath | RoomUse::Kitchen | RoomUse::Mechanical)
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "return-air-room";

    fn grille(room_use: RoomUse) -> Sample {
        let room = Sample::with_room(room_use);
        room.service(ServiceKind::ReturnGrille, at(72.0, 0.0), Facing::NORTH)
    }

    #[test]
    fn clear_pass() {
        grille(RoomUse::Hall).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let bath = grille(RoomUse::Bath).edition(edition);
            bath.expect(SLUG, &["correction, measured bath, required another room"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The line runs between the uses.
        for room_use in RoomUse::ALL {
            let found = grille(room_use).findings(SLUG).len();
            assert_eq!(found, usize::from(forbidden(room_use)), "{room_use:?}");
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::with_room(RoomUse::Bath)
            .service(ServiceKind::SupplyRegister, at(72.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }
}
