//! An escape opening that is too narrow.

use super::candidate::Candidate;
use super::choice::faulty;
use crate::{Check, Finding, Group, On, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-width",
    group: Group::WayOut,
    title: "Net clear width of the escape opening",
    page: "\
What
The clear opening is at least 20 in wide, whatever its area.

Why
Shoulders must pass, and those of a firefighter with a breathing set.

Source
IRC R310.2.1 (2018), R310.2.2 (2021), R319.2.2 (2024).

How it is measured
The horizontal of the clear opening, across the wall. A well that stops the sash is judged by
well-sash-strikes.

Cannot see
The clear size of a window without the maker's figures: an estimate is marked to verify.

Exceptions
A like-for-like replacement window in the maker's largest size for the old frame (escape-replacement). An existing
window where the occupancy changes may be smaller (escape-kept-window).

Remedies
A wider window, or one of another kind: a slider leaves less than half its width clear.
",
    cites: &["escape-width", "escape-kept-width", "escape-either-way"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "Shoulders must pass, and those of a firefighter with a breathing set.";

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    (!candidate.replaces(sheet) && short(sheet, candidate)).then(|| candidate.size_severity())
}

/// Whether it falls short, no matter whether it is excused.
pub(super) fn short(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> bool {
    candidate.sized() && candidate.facts.clear_width < candidate.clear_limits(sheet).0.value
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let limit = choice.candidate.clear_limits(sheet).0;
        let opening = choice.candidate.facts;
        out.push(
            choice
                .size_finding(sheet, RULE.slug, severity, limit.citation, "is too narrow", WHY)
                .figures(Quantity::Len(opening.clear_width), Quantity::Len(limit.value))
                .at(Place::Along(opening.id)),
        );
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::DoorOperation;

    use crate::rules::way_out::sample::{bedroom, bedroom_with_door, good_window, window};

    const SLUG: &str = "escape-width";

    #[test]
    fn clear_pass() {
        bedroom(good_window()).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = bedroom(window(18.0, 50.0)).edition(edition);
            sample.expect(SLUG, &["correction, measured 18\", required 20\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        bedroom(window(20.0, 42.0)).expect_none(SLUG);
        assert_eq!(bedroom(window(19.9921875, 42.0)).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        // A door of ordinary size.
        bedroom_with_door(DoorOperation::Hinged, 36.0).expect_none(SLUG);
    }

    #[test]
    fn height_and_width_are_not_exchanged() {
        let turned = bedroom(window(24.0, 20.0));
        assert_eq!(turned.findings(SLUG).len(), 0);
    }
}
