//! A bath fixture without room before it.

use plan::Element;
use plan::element::BodyKind;
use space::clear_before;

use super::fixtures::{Fixture, fixture, heights};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Reach, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "fixture-front",
    group: Group::Build,
    title: "Clear space before bath fixtures",
    page: "\
What
In front of a toilet, a basin or a tub 21 in are clear; in front of a shower 24 in.

Why
One sits down, bends down and dries off there.

Source
IRC R307.1 with its figure, P2705.1 (2018, 2021); R327.1 (2024, low confidence).

How it is measured
Straight out from the front of the box, over its whole width, from 1 in to 60 in above the finished floor. New
furnishings whose name has one of the words toilet, wc, basin, lavatory, vanity, tub or shower are taken for fixtures; the front is the
side away from the back edge.

Cannot see
Which side of a shower opens, the bowl of a basin in a longer top, and a fixture by another name.

Exceptions
Some places ask for 24 in before a toilet.

Remedies
Move the fixture, or the wall before it.
",
    cites: &["fixture-front", "shower-front"],
    check: Check::Things(&[BodyKind::Furnishing], &[Reach::Limit("fixture-front"), Reach::Limit("shower-front")], check),
    remedies: None,
};

const WHY: &str = "One sits down, bends down and dries off there.";

fn check(sheet: &Sheet<'_>, element: &Element, out: &mut Vec<Finding>) {
    let Some((element, furnishing, kind)) = fixture(element) else { return };
    let limit = sheet.book.len(match kind {
        Fixture::Shower => "shower-front",
        Fixture::Toilet | Fixture::Basin | Fixture::Tub => "fixture-front",
    });
    let placed = furnishing.placed();
    let front = (placed, placed.width);
    let clear = clear_before(sheet.facts, front, heights(sheet), &[element.id], limit.value);
    if clear >= limit.value {
        return;
    }
    let front = placed.front();
    let title = format!("{} has too little room before it", capital(&called(sheet, element.id)));
    out.push(
        Finding::new(
            Severity::Correction,
            limit.citation,
            RULE.slug,
            vec![element.id],
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Len(clear), Quantity::Len(limit.value))
        .at(Place::Span(front, front + placed.facing.step(clear))),
    );
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::{Body, Edition};

    use crate::testing::{Sample, at};

    const SLUG: &str = "fixture-front";

    /// A fixture 28 in deep at the south wall of a room that is `clear` deeper.
    fn fixture(name: &str, clear: f64) -> Sample {
        let room = Sample::room(120.0, 28.0 + clear);
        room.furnishing(at(60.0, 0.0), Facing::NORTH, 20.0, 28.0).tune(|e| {
            if let Body::Furnishing(f) = &mut e.body {
                f.name = name.to_owned();
            }
            e.state = plan::State::New;
        })
    }

    #[test]
    fn clear_pass() {
        fixture("toilet", 40.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let near = fixture("toilet", 18.0).edition(edition);
            near.expect(SLUG, &["correction, measured 18\", required 21\""]);
            let shower = fixture("shower", 22.0).edition(edition);
            shower.expect(SLUG, &["correction, measured 22\", required 24\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        fixture("toilet", 21.0).expect_none(SLUG);
        fixture("shower", 24.0).expect_none(SLUG);
        let unit = Len::UNIT.to_inches();
        assert_eq!(fixture("toilet", 21.0 - unit).findings(SLUG).len(), 1);
        assert_eq!(fixture("shower", 24.0 - unit).findings(SLUG).len(), 1);
    }

    #[test]
    fn a_place_may_ask_for_more() {
        let hopkins =
            |clear: f64| fixture("toilet", clear).site(|s| s.place = "hopkins-mn".to_owned());
        hopkins(24.0).expect_none(SLUG);
        hopkins(22.0).expect(SLUG, &["correction, measured 22\", required 24\""]);
    }

    #[test]
    fn does_not_apply() {
        fixture("shelf", 10.0).expect_none(SLUG);
        fixture("toilet", 10.0).existing().expect_none(SLUG);
    }
}
