//! A toilet too near the wall beside it.

use super::fixtures::{Fixture, beside, fixture};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Reach, Rule, Severity, Sheet};
use plan::Element;
use plan::element::BodyKind;

pub(crate) const RULE: Rule = Rule {
    slug: "toilet-side",
    group: Group::Build,
    title: "Clear space beside a toilet",
    page: "\
What
From the middle of a toilet to a wall, a partition or another fixture beside it are at least 15 in.

Why
It is where the elbows are.

Source
IRC R307.1, P2705.1 (2018, 2021); R327.1 (2024, low confidence).

How it is measured
From the middle of the box square to its facing, over its whole depth, to the next thing on either side, from 1 in to 60 in above
the finished floor. New furnishings whose name has the word toilet or wc are taken for toilets.

Cannot see
Where the bowl sits in its box, if not in the middle; a paper holder or a rail on the wall.

Exceptions
None.

Remedies
Move the toilet, which moves its drain, or the wall.
",
    cites: &["toilet-side"],
    check: Check::Things(&[BodyKind::Furnishing], &[Reach::Limit("toilet-side")], check),
    remedies: None,
};

const WHY: &str = "It is where the elbows are.";

fn check(sheet: &Sheet<'_>, element: &Element, out: &mut Vec<Finding>) {
    let Some((element, furnishing, kind)) = fixture(element) else { return };
    if kind != Fixture::Toilet {
        return;
    }
    let limit = sheet.book.len("toilet-side");
    let (clear, side) = beside(sheet, element, furnishing);
    if clear >= limit.value {
        return;
    }
    let middle = furnishing.placed().centre();
    let title =
        format!("{} is too near what stands beside it", capital(&called(sheet, element.id)));
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
        .at(Place::Span(middle, middle + side.step(clear))),
    );
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::{Body, Edition};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "toilet-side";

    /// A toilet whose middle is `side` from the west wall.
    fn toilet(name: &'static str, side: Len) -> Sample {
        let room = Sample::room(120.0, 100.0);
        room.furnishing(at(60.0, 0.0), Facing::NORTH, 20.0, 28.0).tune(move |e| {
            if let Body::Furnishing(f) = &mut e.body {
                f.name = name.to_owned();
                f.at.x = side.units();
            }
            e.state = plan::State::New;
        })
    }

    #[test]
    fn clear_pass() {
        toilet("toilet", inch(18.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let near = toilet("toilet", inch(12.0)).edition(edition);
            near.expect(SLUG, &["correction, measured 12\", required 15\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        toilet("toilet", inch(15.0)).expect_none(SLUG);
        assert_eq!(toilet("toilet", inch(15.0) - Len::UNIT).findings(SLUG).len(), 1);
        // A cabinet 14 in from the middle.
        let cabinet =
            toilet("toilet", inch(40.0)).furnishing(at(64.0, 0.0), Facing::NORTH, 20.0, 20.0);
        cabinet.expect(SLUG, &["correction, measured 14\", required 15\""]);
    }

    #[test]
    fn does_not_apply() {
        toilet("wash basin", inch(12.0)).expect_none(SLUG);
    }
}
