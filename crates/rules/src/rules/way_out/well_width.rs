//! A well that is too narrow.

use super::candidate::Candidate;
use super::choice::faulty;
use super::fix::change_well;
use crate::{Check, Finding, Group, On, Phrase, Quantity, Remedy, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "well-width",
    group: Group::WayOut,
    title: "Clear width of a well",
    page: "\
What
The well is at least 36 in wide.

Why
Whoever climbs out must find room to stand, turn and be helped, with the sash open beside them.

Source
IRC R310.2.3 (2018), R310.4.1 (2021); the 2024 section was not seen.

How it is measured
The clear width that is entered, along the wall.

Cannot see
A well that isn't a rectangle: enter its least clear sizes.

Exceptions
A ladder or steps may take up to 6 in of it: well-ladder-encroachment looks at that.

Remedies
Make the well 36 in wide; shown before it is made.
",
    cites: &["well-width"],
    check: Check::Plan(&[On::Outside], check),
    remedies: Some(remedies),
};

const WHY: &str = "Whoever climbs out must find room to stand and turn beside the open sash.";

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    let limit = sheet.book.len("well-width").value;
    candidate.well().filter(|well| well.width < limit).map(|_| Severity::Correction)
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let Some(well) = choice.candidate.well() else { continue };
        let limit = sheet.book.len("well-width");
        let fault = "opens to a well that is too narrow";
        out.push(
            choice
                .finding(sheet, RULE.slug, severity, limit.citation, fault, WHY)
                .figures(Quantity::Len(well.width), Quantity::Len(limit.value)),
        );
    }
}

fn remedies(finding: &Finding, sheet: &Sheet<'_>) -> Vec<Remedy> {
    let limit = sheet.book.len("well-width").value;
    let label = |window: &str| {
        Phrase::text(format!("Make the well of {window} ")).inches(limit).then(" wide")
    };
    change_well(finding, sheet, label, |well| well.width = limit)
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use crate::rules::way_out::sample::{bedroom, good_window, window_in_well};

    const SLUG: &str = "well-width";

    #[test]
    fn clear_pass() {
        bedroom(window_in_well(48.0, 40.0, 40.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = bedroom(window_in_well(30.0, 44.0, 40.0)).edition(edition);
            sample.expect(SLUG, &["correction, measured 30\", required 36\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        bedroom(window_in_well(36.0, 40.0, 40.0)).expect_none(SLUG);
        assert_eq!(bedroom(window_in_well(35.984375, 40.0, 40.0)).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        bedroom(good_window()).expect_none(SLUG);
        // A well beside an opening that isn't below the ground is not needed and not judged.
        let mut window = window_in_well(30.0, 44.0, 40.0);
        window.grade = window.sill;
        bedroom(window).expect_none(SLUG);
    }

    #[test]
    fn a_remedy_makes_the_well_large_enough() {
        let remedies = bedroom(window_in_well(30.0, 44.0, 40.0)).remedies(SLUG);
        assert_eq!(remedies.len(), 1);
        assert!(remedies[0].ends_with("36\" wide"), "{remedies:?}");
    }
}
