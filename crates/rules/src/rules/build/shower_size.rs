//! A shower that is too small.

use measure::Area;
use plan::Element;
use plan::element::BodyKind;

use super::fixtures::{Fixture, fixture};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "shower-size",
    group: Group::Build,
    title: "Size of a shower",
    page: "\
What
A shower has at least 900 sq in inside, and a square of 30 in fits into it.

Why
One turns round in it with the eyes shut.

Source
IRC P2708.1 (all editions).

How it is measured
By the box that is drawn, which is the outside: a box that is too small is too small inside as well. New furnishings
whose name has the word shower are taken for showers.

Cannot see
The inside, which is smaller by the walls of the stall.

Exceptions
25 in on one side where the inside has 1,300 sq in (from memory); such a box is marked to verify.

Remedies
A larger shower.
",
    cites: &["shower-area", "shower-side"],
    check: Check::Things(&[BodyKind::Furnishing], &[], check),
    remedies: None,
};

const WHY: &str = "One turns round in it with the eyes shut.";

fn check(sheet: &Sheet<'_>, element: &Element, out: &mut Vec<Finding>) {
    let Some((element, furnishing, kind)) = fixture(element) else { return };
    if kind != Fixture::Shower {
        return;
    }
    let least = sheet.book.len("shower-side");
    let limit = sheet.book.area("shower-area");
    let area = Area::of_rect(furnishing.width, furnishing.depth);
    let side = furnishing.width.min(furnishing.depth);
    let (measured, required, citation) = if side < least.value {
        (Quantity::Len(side), Quantity::Len(least.value), least.citation)
    } else if area < limit.value {
        (Quantity::Area(area), Quantity::Area(limit.value), limit.citation)
    } else {
        return;
    };
    let title = format!("{} is too small", capital(&called(sheet, element.id)));
    let finding = Finding::new(
        Severity::Correction,
        citation,
        RULE.slug,
        vec![element.id],
        Phrase::text(title),
        WHY,
    )
    .figures(measured, required)
    .at(Place::Under(element.id));
    let long = area >= Area::of_rect(measure::Len::inches(26), measure::Len::inches(50));
    out.push(match long && side >= measure::Len::inches(25) {
        true => finding.assuming("the exception for a long shower is not in force"),
        false => finding,
    });
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::{Body, Edition, State};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "shower-size";

    fn shower(name: &'static str, width: Len, depth: Len) -> Sample {
        let room = Sample::room(200.0, 200.0);
        room.furnishing(at(100.0, 0.0), Facing::NORTH, 20.0, 28.0).tune(move |e| {
            if let Body::Furnishing(f) = &mut e.body {
                (f.name, f.width, f.depth) = (name.to_owned(), width, depth);
            }
            e.state = State::New;
        })
    }

    #[test]
    fn clear_pass() {
        shower("shower", inch(36.0), inch(36.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let small = shower("shower", inch(28.0), inch(36.0)).edition(edition);
            small.expect(SLUG, &["correction, measured 28\", required 30\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        // 30 in by 30 in are 900 sq in.
        shower("shower", inch(30.0), inch(30.0)).expect_none(SLUG);
        assert_eq!(shower("shower", inch(30.0), inch(30.0) - Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn a_long_shower_is_to_be_verified() {
        let long = shower("shower", inch(26.0), inch(60.0));
        long.expect(SLUG, &["verify, measured 26\", required 30\""]);
    }

    #[test]
    fn does_not_apply() {
        shower("cabinet", inch(10.0), inch(10.0)).expect_none(SLUG);
    }
}
