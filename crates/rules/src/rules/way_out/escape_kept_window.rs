//! An existing window that serves in a smaller size because the occupancy changes.

use super::candidate::Candidate;
use super::choice::faulty;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-kept-window",
    group: Group::WayOut,
    title: "Existing escape window at a change of occupancy",
    page: "\
What
Where the occupancy changes, a window that was there before serves as escape opening from 4.0 sq ft, 22 in high and 20 in
wide on.

Why
The exception lets an old building be used in another way. It is no free pass for a new bedroom in a house.

Source
IRC R310.7.1 (2021) and R319 (2024), both from memory; the 2018 edition has no such exception.

How it is measured
By what is stated of the window, which must be marked as existing. Where it is smaller than an escape opening must be and
large enough for the exception, it is marked to verify; below the exception's figures escape-area, escape-height and
escape-width speak.

Cannot see
Whether the permit is for a change of occupancy: a new room in a house that stays a house is none.

Exceptions
None.

Remedies
Ask the department in writing, or choose a window of full size.
",
    cites: &["escape-kept-window", "escape-kept-area", "escape-kept-height", "escape-kept-width"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "It is smaller than an escape opening must be; only where the occupancy changes may an existing window \
                   of this size stay.";

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    let excused = candidate.kept(sheet) && meets(sheet, candidate) && !full(sheet, candidate);
    excused.then_some(Severity::Verify)
}

/// Whether it meets the figures of the exception.
fn meets(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> bool {
    let (width, height) = candidate.clear_limits(sheet);
    candidate.sized()
        && candidate.area() >= candidate.area_limit(sheet).value
        && candidate.facts.clear_width >= width.value
        && candidate.facts.clear_height >= height.value
}

/// Whether it needs no exception.
fn full(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> bool {
    candidate.area() >= candidate.full_area_limit(sheet).value
        && candidate.facts.clear_width >= sheet.book.length("escape-width")
        && candidate.facts.clear_height >= sheet.book.length("escape-height")
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let citation = sheet.book.cite(RULE.slug);
        let fault = "rests on the exception for a change of occupancy";
        let required = choice.candidate.full_area_limit(sheet).value;
        out.push(
            choice
                .finding(sheet, RULE.slug, severity, citation, fault, WHY)
                .figures(Quantity::Area(choice.candidate.area()), Quantity::Area(required))
                .assuming("the permit is for a change of occupancy"),
        );
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::detail::opening::OCCUPANCY;
    use plan::element::Window;

    use crate::rules::way_out::sample::{bedroom, good_window, window};
    use crate::testing::Sample;

    const SLUG: &str = "escape-kept-window";
    const NEWER: [Edition; 2] = [Edition::E2021, Edition::E2024];

    fn kept(window: Window) -> Sample {
        bedroom(window).existing().state(&OCCUPANCY, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        kept(good_window()).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in NEWER {
            let small = kept(window(25.0, 25.0)).edition(edition);
            small.expect(SLUG, &["verify, measured 4.3 sq ft, required 5.0 sq ft"]);
            small.expect_none("escape-area");
        }
    }

    #[test]
    fn at_the_limit() {
        for edition in NEWER {
            // 24 x 24 in are 4.0 sq ft.
            kept(window(24.0, 24.0)).edition(edition).expect_none("escape-area");
            assert_eq!(kept(window(24.0, 24.0)).edition(edition).findings(SLUG).len(), 1);
            let less = kept(window(24.0, 23.9921875)).edition(edition);
            less.expect_none(SLUG);
            less.expect("escape-area", &["correction, measured 3.9 sq ft, required 4.0 sq ft"]);
            kept(window(30.0, 22.0)).edition(edition).expect_none("escape-height");
            let low = kept(window(30.0, 21.9921875)).edition(edition);
            low.expect("escape-height", &["correction, measured 21 15/16\", required 22\""]);
            kept(window(20.0, 30.0)).edition(edition).expect_none("escape-width");
        }
    }

    #[test]
    fn the_2018_edition_has_no_such_exception() {
        let small = kept(window(25.0, 25.0)).edition(Edition::E2018);
        small.expect_none(SLUG);
        assert_eq!(small.findings("escape-area").len(), 1);
    }

    #[test]
    fn does_not_apply() {
        // Not stated, and a new window.
        bedroom(window(25.0, 25.0)).expect_none(SLUG);
        let new = bedroom(window(25.0, 25.0)).fresh().state(&OCCUPANCY, Value::Yes);
        new.expect_none(SLUG);
        assert_eq!(new.findings("escape-area").len(), 1);
    }
}
