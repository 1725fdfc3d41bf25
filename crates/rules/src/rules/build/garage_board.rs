//! A wall between a garage and the house without board.

use geometry::Pt;
use measure::Len;
use plan::element::{BodyKind, Layer, Material, Partition, Side};
use plan::{Body, Element};

use super::garage::is_garage;
use crate::rules::rooms::words::{called, capital};
use crate::rules::stated::is_new;
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "garage-board",
    group: Group::Build,
    title: "Board on the garage side of a wall",
    page: "\
What
The garage side of a wall to the house has gypsum board of at least 1/2 in.

Why
Fuel burns hot and fast; the board buys the minutes.

Source
IRC Table R302.6: 2018 to 2024.

How it is measured
New partitions with a garage on one side and another room on the other: the layers of board on the garage side of the studs.

Cannot see
The ceiling: below habitable rooms 5/8 in of type X, and 1/2 in on what carries that floor. Joints and what is opened later.

Exceptions
A garage 3 ft and more from the house.

Remedies
Board on the garage side, patched wherever it is opened.
",
    cites: &["garage-board"],
    check: Check::Plan(&[On::Kind(BodyKind::Partition), On::Floors], check),
    remedies: None,
};

const WHY: &str = "Fuel burns hot and fast; the board buys the minutes.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !sheet.facts.rooms.iter().any(is_garage) {
        return;
    }
    let limit = sheet.book.len("garage-board");
    let partitions = sheet.facts.standing(&[BodyKind::Partition]);
    for element in partitions.filter(|e| is_new(sheet, e)) {
        let Body::Partition(wall) = &element.body else { continue };
        let Some(board) = garage_board(sheet, element, wall).filter(|b| *b < limit.value) else {
            continue;
        };
        let title = format!(
            "{} has too little board on the garage side",
            capital(&called(sheet, element.id))
        );
        let mut finding = Finding::new(
            Severity::Correction,
            limit.citation.clone(),
            RULE.slug,
            vec![element.id],
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Len(board), Quantity::Len(limit.value));
        finding.places.push(Place::Of(element.id));
        out.push(finding);
    }
}

/// The board on the garage side of a wall that parts a garage from another room somewhere along it.
fn garage_board(sheet: &Sheet<'_>, element: &Element, wall: &Partition) -> Option<Len> {
    let facts = sheet.facts.wall(element.id)?;
    let outwards = geometry::Facing::along(facts.line.b - facts.line.a)?.left();
    let garage = |at: Pt| sheet.facts.room_at(at).map(|room| is_garage(sheet.facts.room(room)));
    // A room begins at a face: a point an inch off it tells which one.
    let step = Len::inches(1);
    let found = (1..16).find_map(|part| {
        let along =
            |seg: geometry::Seg| seg.point_at(Len::from_units(seg.len().units() / 16 * part));
        let left = garage(along(facts.left) + outwards.step(step));
        let right = garage(along(facts.right) + outwards.back().step(step));
        match (left, right) {
            (Some(true), Some(false)) => Some(Side::Left),
            (Some(false), Some(true)) => Some(Side::Right),
            _ => None,
        }
    })?;
    let board = |layer: &&Layer| layer.material == Material::Board;
    let outside = |layer: &&Layer| layer.material != Material::Stud;
    Some(match found {
        Side::Left => {
            wall.layers.iter().take_while(outside).filter(board).map(|l| l.thickness).sum()
        }
        Side::Right => {
            wall.layers.iter().rev().take_while(outside).filter(board).map(|l| l.thickness).sum()
        }
    })
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "garage-board";

    /// A wall with board of this thickness on its left, the garage's, side.
    fn wall(board: Len) -> Sample {
        Sample::room(240.0, 120.0)
            .tag(at(60.0, 60.0), "Garage", RoomUse::Garage)
            .tag(at(180.0, 60.0), "Room", RoomUse::Hall)
            .partition(at(120.0, 0.0), at(120.0, 120.0))
            .tune(|e| match &mut e.body {
                Body::Partition(p) => p.layers[0].thickness = board,
                other => panic!("{}", other.word()),
            })
    }

    #[test]
    fn clear_pass() {
        wall(inch(0.625)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let thin = wall(inch(0.375)).edition(edition);
            thin.expect(SLUG, &["correction, measured 3/8\", required 1/2\""]);
            let bare = wall(inch(0.5)).edition(edition).tune(|e| match &mut e.body {
                Body::Partition(p) => drop(p.layers.remove(0)),
                other => panic!("{}", other.word()),
            });
            bare.expect(SLUG, &["correction, measured 0\", required 1/2\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        wall(inch(0.5)).expect_none(SLUG);
        assert_eq!(wall(inch(0.5) - Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(240.0, 120.0)
            .tag(at(60.0, 60.0), "Store", RoomUse::Storage)
            .partition(at(120.0, 0.0), at(120.0, 120.0))
            .expect_none(SLUG);
        wall(inch(0.25)).existing().expect_none(SLUG);
    }
}
