//! Furniture without the room that its use takes.

use geometry::Placed;
use measure::Len;
use plan::element::{BodyKind, Furnishing};
use plan::{Body, Element};
use space::clear_before;

use super::words::{called, capital};
use crate::{Check, Finding, Group, Limit, Phrase, Place, Quantity, Reach, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "furniture-space",
    group: Group::Rooms,
    title: "Room before and around furniture",
    page: "\
What
A desk has 30 in behind its chair's place, a dresser, chest or wardrobe 36 in before it, a bed 42 in at one side or at its
foot.

Why
A room that looks large enough on paper has no place to dress or to push a chair back.

Source
A federal manual of acceptable practices, volume 4 (1973), as reprinted: advice, no code.

How it is measured
Straight out from the box, over its whole width, to the nearest thing; of a bed the roomiest of both sides and the foot.
Furniture is known by its names: desk, dresser, chest, wardrobe, bed.

Cannot see
Which side of a piece is its front: the side away from its back edge is taken.

Exceptions
Built-in beds and desks.

Remedies
Turn or move the piece, or choose a smaller one.
",
    cites: &["desk-space", "dresser-space", "bed-space"],
    check: Check::Things(&[BodyKind::Furnishing], &[Reach::Limit("desk-space"), Reach::Limit("dresser-space"), Reach::Limit("bed-space")], check),
    remedies: None,
};

const WHY: &str =
    "A room that looks large enough on paper has no place to dress or to push a chair back.";

fn check(sheet: &Sheet<'_>, element: &Element, out: &mut Vec<Finding>) {
    let Body::Furnishing(piece) = &element.body else { return };
    let Some((slug, sides)) = asked(piece) else { return };
    let limit: Limit<Len> = sheet.book.len(slug);
    let floor = sheet.plan().site.floor_build;
    let heights = (floor + Len::inches(1), floor + Len::inches(60));
    let clear =
        |p: Placed| clear_before(sheet.facts, (p, p.width), heights, &[element.id], limit.value);
    let roomiest = sides.into_iter().map(|side| (clear(side), side));
    let Some((clear, side)) = roomiest.max_by_key(|(clear, _)| *clear) else { return };
    if clear >= limit.value {
        return;
    }
    let title = format!("{} has little room", capital(&called(sheet, element.id)));
    out.push(
        Finding::new(
            Severity::Advice,
            limit.citation,
            RULE.slug,
            vec![element.id],
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Len(clear), Quantity::Len(limit.value))
        .at(Place::Span(side.front(), side.front() + side.facing.step(clear))),
    );
}

/// The limit for a piece of furniture, and the boxes before one of which there must be room.
fn asked(piece: &Furnishing) -> Option<(&'static str, Vec<Placed>)> {
    let front = piece.placed();
    if piece.is_called(&["desk"]) {
        Some(("desk-space", vec![front]))
    } else if piece.is_called(&["dresser", "chest", "wardrobe"]) {
        Some(("dresser-space", vec![front]))
    } else if piece.is_called(&["bed"]) {
        let centre = front.centre();
        let side = |facing: geometry::Facing| Placed {
            back: centre - facing.step(front.width / 2),
            facing,
            width: front.depth,
            depth: front.width,
        };
        let left = front.facing.left();
        Some(("bed-space", vec![front, side(left), side(left.back())]))
    } else {
        None
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "furniture-space";

    /// A piece 40 in wide and 30 in deep with its back at the south wall, `before` in of floor before it.
    fn piece(name: &str, before: f64) -> Sample {
        Sample::room(40.0, 30.0 + before).furnishing(at(20.0, 0.0), Facing::NORTH, 40.0, 30.0).tune(
            |e| match &mut e.body {
                Body::Furnishing(f) => f.name = name.to_owned(),
                other => panic!("{}", other.word()),
            },
        )
    }

    #[test]
    fn clear_pass() {
        piece("desk", 60.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let tight = piece("desk", 20.0).edition(edition);
            tight.expect(SLUG, &["advice, measured 20\", required 30\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        for (name, limit) in [("desk", 30.0), ("old dresser", 36.0), ("double bed", 42.0)] {
            piece(name, limit).expect_none(SLUG);
            let less = piece(name, limit - 1.0 / 64.0);
            assert_eq!(less.findings(SLUG).len(), 1, "{name}");
        }
    }

    #[test]
    fn one_side_of_a_bed_is_enough() {
        // No room at the foot, 50 in at the left.
        let bed = Sample::room(90.0, 80.0)
            .furnishing(at(20.0, 0.0), Facing::NORTH, 40.0, 80.0)
            .tune(|e| match &mut e.body {
                Body::Furnishing(f) => f.name = "bed".to_owned(),
                other => panic!("{}", other.word()),
            });
        bed.expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        piece("shelf", 5.0).expect_none(SLUG);
        piece("bedside shelf", 5.0).expect_none(SLUG);
    }
}
