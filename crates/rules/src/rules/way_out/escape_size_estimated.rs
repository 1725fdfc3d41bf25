//! A way out whose clear size is only estimated.

use super::candidate::Candidate;
use super::choice::{estimate, faulty};
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-size-estimated",
    group: Group::WayOut,
    title: "Clear size of the escape window is estimated",
    page: "\
What
The way out of a sleeping room or of the basement rests on a window whose clear opening was worked out
from its frame. Enter the figures of the maker's sheet.

Why
Hinges, stops and meeting rails take more than the eye expects: two windows of one frame size may differ
by inches of clear opening.

Source
IRC R310.2.1 (2018), R310.2.2 (2021), R319.2.2 (2024) ask for the opening that normal operation leaves.
The estimate is common practice.

How it is measured
By whether a clear width and height from the maker's sheet are entered.

Cannot see
The window.

Exceptions
A room with another opening that meets every demand by the maker's figures.

Remedies
Enter the maker's clear width and height.
",
    cites: &["escape-size-listed"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "What the open sash leaves clear is known only from the maker's sheet, and a few inches decide \
                   whether a person fits through.";

pub(super) fn judge(_: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    candidate.estimated().then_some(Severity::Verify)
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let citation = sheet.book.cite("escape-size-listed");
        let fault = "has an estimated clear size: enter the maker's figures";
        out.push(
            choice
                .finding(sheet, RULE.slug, severity, citation, fault, WHY)
                .figures(
                    Quantity::Words("estimated from the frame".to_owned()),
                    Quantity::Words("the maker's clear width and height".to_owned()),
                )
                .assuming(estimate(sheet, &choice.candidate)),
        );
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::{ClearOpening, Window};

    use crate::Severity;
    use crate::rules::way_out::sample::{bare_bedroom, bedroom, good_window, with_window};
    use crate::testing::inch;

    const SLUG: &str = "escape-size-estimated";
    const VERIFY: &str =
        "verify, measured estimated from the frame, required the maker's clear width and height";

    fn estimated() -> Window {
        Window { clear: ClearOpening::Estimated, ..good_window() }
    }

    #[test]
    fn clear_pass() {
        bedroom(good_window()).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        // However large the frame: an estimate never passes in silence.
        for edition in Edition::ALL {
            bedroom(estimated()).edition(edition).expect(SLUG, &[VERIFY]);
            let large = Window { frame_width: inch(80.0), frame_height: inch(80.0), ..estimated() };
            bedroom(large).edition(edition).expect(SLUG, &[VERIFY]);
        }
    }

    #[test]
    fn at_the_limit() {
        // A second window with the maker's figures is enough, in whatever order they stand.
        with_window(bedroom(estimated()), good_window()).expect_none(SLUG);
        with_window(bedroom(good_window()), estimated()).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        bare_bedroom().expect_none(SLUG);
    }

    #[test]
    fn an_estimate_is_never_a_correction_of_size() {
        let tight = Window { frame_width: inch(30.0), frame_height: inch(25.0), ..estimated() };
        let sample = bedroom(tight);
        for slug in ["escape-area", "escape-height", "escape-width"] {
            for finding in sample.findings(slug) {
                assert_eq!(finding.severity, Severity::Verify, "{slug}");
                assert!(finding.assumed.iter().any(|a| a.contains("maker")), "{slug}");
            }
        }
        assert!(!sample.findings("escape-area").is_empty());
    }
}
