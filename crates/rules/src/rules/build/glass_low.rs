//! A large pane near the floor.

use measure::Area;

use super::glass::{bottom, new_windows};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "glass-low",
    group: Group::Build,
    title: "Safety glass in a large low window",
    page: "\
What
A pane of more than 9 sq ft whose bottom is less than 18 in and whose top is more than 36 in above the floor, within 36 in of
where people walk, is safety glass.

Why
Who stumbles falls through it.

Source
IRC R308.4.3 (2018, 2021), R324.4 (2024).

How it is measured
By the frame, which is larger than the pane, from the finished floor. New windows are checked.

Cannot see
The pane's own size, its glass, and what stands before it: so the finding is to be verified.

Exceptions
A rail in front of the glass; panes of an insulating unit high above the outside ground.

Remedies
Order the window with safety glass, marked in the corner.
",
    cites: &["glass-low-area", "glass-low-bottom", "glass-low-top"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "Who stumbles falls through it.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("glass-low-bottom");
    for (facts, window) in new_windows(sheet) {
        let low = bottom(sheet, window);
        let large = Area::of_rect(window.frame_width, window.frame_height)
            > sheet.book.area("glass-low-area").value;
        let tall = low + window.frame_height > sheet.book.length("glass-low-top");
        if !(large && tall && low < limit.value) {
            continue;
        }
        let title = format!(
            "{} may need safety glass: it is low and large",
            capital(&called(sheet, facts.id))
        );
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
            .assuming("the glass is no safety glass, and people walk within 36 in of it")
            .at(Place::Along(facts.id)),
        );
    }
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::element::Window;

    use crate::rules::way_out::sample::{bedroom, good_window};
    use crate::testing::Sample;

    const SLUG: &str = "glass-low";

    /// A window of `width` by 48 in, its bottom at `sill` above the finished floor.
    fn window(width: Len, sill: Len) -> Sample {
        bedroom(Window { frame_width: width, frame_height: Len::inches(48), sill, ..good_window() })
            .fresh()
    }

    #[test]
    fn clear_pass() {
        window(Len::inches(40), Len::inches(40)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let low = window(Len::inches(40), Len::inches(10)).edition(edition);
            low.expect(SLUG, &["verify, measured 10\", required 18\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        // 27 in by 48 in is 9 sq ft: only more than that counts. The bottom counts below 18 in.
        window(Len::inches(27), Len::inches(10)).expect_none(SLUG);
        assert_eq!(window(Len::inches(27) + Len::UNIT, Len::inches(10)).findings(SLUG).len(), 1);
        window(Len::inches(40), Len::inches(18)).expect_none(SLUG);
        assert_eq!(window(Len::inches(40), Len::inches(18) - Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        window(Len::inches(40), Len::inches(10)).existing().expect_none(SLUG);
    }
}
