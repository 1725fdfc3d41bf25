//! An escape opening that is too low.

use super::candidate::Candidate;
use super::choice::faulty;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-height",
    group: Group::WayOut,
    title: "Net clear height of the escape opening",
    page: "\
What
The clear opening is at least 24 in high, whatever its area.

Why
A low gap stops a person at the hips and chest, and a breathing set on the back.

Source
IRC R310.2.1 (2018), R310.2.2 (2021), R319.2.2 (2024).

How it is measured
The vertical of the clear opening. It is bound to its direction: an opening 24 in wide and 20 in high
fails, though one 20 in wide and 24 in high is allowed.

Cannot see
The clear size of a window without the maker's figures: an estimate is marked to verify.

Exceptions
A like-for-like replacement window in the maker's largest size for the old frame (escape-replacement). An existing
window where the occupancy changes may be smaller (escape-kept-window). Some places let the
least height and the least width change places.

Remedies
A taller window, or one of another kind: a hung window leaves less than half its height clear.
",
    cites: &["escape-height", "escape-kept-height", "escape-either-way"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "A gap this low stops a person, and a breathing set on the back.";

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    (!candidate.replaces(sheet) && short(sheet, candidate)).then(|| candidate.size_severity())
}

/// Whether it falls short, no matter whether it is excused.
pub(super) fn short(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> bool {
    candidate.sized() && candidate.facts.clear_height < candidate.clear_limits(sheet).1.value
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let limit = choice.candidate.clear_limits(sheet).1;
        let opening = choice.candidate.facts;
        out.push(
            choice
                .size_finding(sheet, RULE.slug, severity, limit.citation, "is too low", WHY)
                .figures(Quantity::Len(opening.clear_height), Quantity::Len(limit.value)),
        );
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::DoorOperation;

    use crate::rules::way_out::sample::{bedroom, bedroom_with_door, good_window, window};

    const SLUG: &str = "escape-height";

    #[test]
    fn clear_pass() {
        bedroom(good_window()).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = bedroom(window(50.0, 20.0)).edition(edition);
            sample.expect(SLUG, &["correction, measured 20\", required 24\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        bedroom(window(34.5, 24.0)).expect_none(SLUG);
        assert_eq!(bedroom(window(34.5, 23.9921875)).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        // A door of ordinary size.
        bedroom_with_door(DoorOperation::Hinged, 36.0).expect_none(SLUG);
    }

    #[test]
    fn height_and_width_are_not_exchanged() {
        let turned = bedroom(window(24.0, 20.0));
        assert_eq!(turned.findings(SLUG).len(), 1);
    }
}
