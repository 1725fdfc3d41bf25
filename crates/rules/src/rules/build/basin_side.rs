//! A basin too near the wall or the tub beside it.

use measure::Len;
use plan::Element;
use plan::element::BodyKind;

use super::fixtures::{Fixture, beside, fixture};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Reach, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "basin-side",
    group: Group::Build,
    title: "Clear space beside a basin",
    page: "\
What
From the edge of a basin to a wall, a tub or another fixture beside it are at least 4 in.

Why
Hands reach the edge, and the wall beside it can be cleaned.

Source
IRC Figure R307.1 (2018, 2021); R327.1 (2024, low confidence). A source outside the code reads the figure so; others ask
for 15 in from the middle. It is therefore to be verified.

How it is measured
From both sides of the box square to its facing, over its whole depth, to the next thing, from 1 in to 60 in above the
finished floor. New furnishings whose name has the word basin, lavatory or sink are taken for basins; a vanity is let be,
as its cabinet may touch the wall.

Cannot see
Where the bowl sits in its box: the box is taken for the bowl.

Exceptions
A basin set into a cabinet: call the box a vanity.

Remedies
Move the basin, or choose a smaller one.
",
    cites: &["basin-side"],
    check: Check::Things(&[BodyKind::Furnishing], &[Reach::Limit("basin-side")], check),
    remedies: None,
};

const WHY: &str = "Hands reach the edge, and the wall beside it can be cleaned.";

fn check(sheet: &Sheet<'_>, element: &Element, out: &mut Vec<Finding>) {
    let Some((element, furnishing, kind)) = fixture(element) else { return };
    if kind != Fixture::Basin || furnishing.name_holds("vanity") {
        return;
    }
    let limit = sheet.book.len("basin-side");
    let placed = furnishing.placed();
    let (from_middle, side) = beside(sheet, element, furnishing);
    let half = Len::from_units(placed.width.units() / 2);
    let clear = (from_middle - half).max(Len::ZERO);
    if clear >= limit.value {
        return;
    }
    let edge = placed.centre() + side.step(half);
    let title =
        format!("{} is too near what stands beside it", capital(&called(sheet, element.id)));
    out.push(
        Finding::new(
            Severity::Verify,
            limit.citation,
            RULE.slug,
            vec![element.id],
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Len(clear), Quantity::Len(limit.value))
        .assuming("the box is the basin, not a cabinet with a basin in it")
        .at(Place::Span(edge, edge + side.step(clear))),
    );
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::{Body, Edition};

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "basin-side";

    /// A basin 20 in wide whose edge is `side` from the west wall.
    fn basin(name: &'static str, side: Len) -> Sample {
        let room = Sample::room(120.0, 100.0);
        room.furnishing(at(60.0, 0.0), Facing::NORTH, 20.0, 18.0).tune(move |e| {
            if let Body::Furnishing(f) = &mut e.body {
                f.name = name.to_owned();
                f.at.x = (side + inch(10.0)).units();
            }
            e.state = plan::State::New;
        })
    }

    #[test]
    fn clear_pass() {
        basin("wash basin", inch(10.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let near = basin("wash basin", inch(2.0)).edition(edition);
            near.expect(SLUG, &["verify, measured 2\", required 4\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        basin("wash basin", inch(4.0)).expect_none(SLUG);
        assert_eq!(basin("wash basin", inch(4.0) - Len::UNIT).findings(SLUG).len(), 1);
        // A tub 3 in beside it.
        let tub = basin("sink", inch(30.0)).furnishing(at(68.0, 0.0), Facing::NORTH, 30.0, 60.0);
        tub.expect(SLUG, &["verify, measured 3\", required 4\""]);
    }

    #[test]
    fn does_not_apply() {
        basin("vanity", inch(0.0)).expect_none(SLUG);
        basin("toilet", inch(0.0)).expect_none(SLUG);
    }
}
