//! A window of a bath.

use plan::element::RoomUse;

use super::glass::{bottom, new_windows};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "glass-in-bath",
    group: Group::Build,
    title: "Safety glass in a bath",
    page: "\
What
Glass beside a tub, shower or sauna whose bottom is less than 60 in above the standing surface is safety glass.

Why
A wet floor, and glass within an arm's reach.

Source
IRC R308.4.5 (2018, 2021), R324.4 (2024); from memory.

How it is measured
New windows of baths, from the finished floor to the bottom of the frame.

Cannot see
Whether the window is beside a tub or shower, and its glass: so the finding is to be verified.

Exceptions
Glass more than 60 in, level, from the water's edge.

Remedies
Order the window with safety glass, marked in the corner.
",
    cites: &["glass-in-bath"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "A wet floor, and glass within an arm's reach.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("glass-in-bath");
    let bath = |r| sheet.facts.room(r).room_use == RoomUse::Bath;
    for (facts, window) in new_windows(sheet).filter(|(o, _)| o.rooms().any(bath)) {
        let low = bottom(sheet, window);
        if low >= limit.value {
            continue;
        }
        let title =
            format!("{} may need safety glass: it is in a bath", capital(&called(sheet, facts.id)));
        out.push(
            Finding::new(
                Severity::Verify,
                limit.citation.clone(),
                RULE.slug,
                vec![facts.id],
                Phrase::text(title),
                WHY,
            )
            .figures(Quantity::Len(low), Quantity::Len(limit.value))
            .assuming("the window is beside a tub or shower, and its glass is no safety glass")
            .at(Place::Along(facts.id)),
        );
    }
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::element::Window;

    use super::*;
    use crate::rules::way_out::sample::{good_window, with_window};
    use crate::testing::{Sample, at};

    const SLUG: &str = "glass-in-bath";

    fn window(sill: Len, room_use: RoomUse) -> Sample {
        let room = Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Bath", room_use);
        with_window(room, Window { sill, ..good_window() }).fresh()
    }

    #[test]
    fn clear_pass() {
        window(Len::inches(64), RoomUse::Bath).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let low = window(Len::inches(40), RoomUse::Bath).edition(edition);
            low.expect(SLUG, &["verify, measured 40\", required 60\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        window(Len::inches(60), RoomUse::Bath).expect_none(SLUG);
        assert_eq!(window(Len::inches(60) - Len::UNIT, RoomUse::Bath).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        window(Len::inches(40), RoomUse::Den).expect_none(SLUG);
        window(Len::inches(40), RoomUse::Bath).existing().expect_none(SLUG);
    }
}
