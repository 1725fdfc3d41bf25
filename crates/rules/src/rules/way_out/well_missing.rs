//! An escape opening below grade without a well.

use super::candidate::Candidate;
use super::choice::faulty;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "well-missing",
    group: Group::WayOut,
    title: "Well of a below-grade escape opening",
    page: "\
What
An escape opening whose bottom is below the outside ground has a well.

Why
Earth against the glass lets nobody out, and drains into the house.

Source
IRC R310.2.2 and R310.2.3 (2018), R310.4 (2021); the 2024 section was not seen.

How it is measured
The bottom of the clear opening against the outside ground beside the window, both from the slab. Ground
at exactly that height needs no well.

Cannot see
Doors below grade and their bulkheads. The drain of the well, its cover, and a deck above it.

Exceptions
None.

Remedies
Give the window a well.
",
    cites: &["well-required"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "Earth stands against the lower part of the opening, so that it can't be opened or climbed out of.";

pub(super) fn judge(_: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    (candidate.below_grade() && candidate.well().is_none()).then_some(Severity::Correction)
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let citation = sheet.book.cite("well-required");
        let fault = "is below the ground and has no well";
        out.push(
            choice
                .finding(sheet, RULE.slug, severity, citation, fault, WHY)
                .figures(Quantity::Words("no well".into()), Quantity::Words("a well".into())),
        );
    }
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::element::{DoorOperation, Window};

    use crate::rules::way_out::sample::{bedroom, bedroom_with_door, good_window, window_in_well};

    const SLUG: &str = "well-missing";

    fn ground(grade: Len) -> Window {
        Window { grade, ..good_window() }
    }

    #[test]
    fn clear_pass() {
        bedroom(window_in_well(48.0, 40.0, 40.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = bedroom(ground(Len::inches(70))).edition(edition);
            sample.expect(SLUG, &["correction, measured no well, required a well"]);
        }
    }

    #[test]
    fn at_the_limit() {
        let bottom = good_window().sill;
        bedroom(ground(bottom)).expect_none(SLUG);
        assert_eq!(bedroom(ground(bottom + Len::UNIT)).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        bedroom_with_door(DoorOperation::Hinged, 36.0).expect_none(SLUG);
    }
}
