//! A well that is too small.

use measure::Area;

use super::candidate::Candidate;
use super::choice::faulty;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "well-area",
    group: Group::WayOut,
    title: "Clear area of a well",
    page: "\
What
The horizontal clear area of the well is at least 9 sq ft.

Why
Whoever climbs out must find room to stand, turn and be helped, with the sash open beside them.

Source
IRC R310.2.3 (2018), R310.4.1 (2021); the 2024 section was not seen.

How it is measured
Clear width times clear projection, the ladder not taken off. 36 x 36 in is exactly 9 sq ft.

Cannot see
A well that isn't a rectangle: enter its least clear sizes.

Exceptions
A ladder or steps may take up to 6 in of it: well-ladder-encroachment looks at that.

Remedies
A larger well.
",
    cites: &["well-area"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "Whoever climbs out must find room to stand and turn beside the open sash.";

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    let limit = sheet.book.area("well-area").value;
    candidate
        .well()
        .filter(|well| Area::of_rect(well.width, well.projection) < limit)
        .map(|_| Severity::Correction)
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let Some(well) = choice.candidate.well() else { continue };
        let limit = sheet.book.area("well-area");
        let fault = "opens to a well that is too small";
        out.push(choice.finding(sheet, RULE.slug, severity, limit.citation, fault, WHY).figures(
            Quantity::Area(Area::of_rect(well.width, well.projection)),
            Quantity::Area(limit.value),
        ));
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use crate::rules::way_out::sample::{bedroom, good_window, window_in_well};

    const SLUG: &str = "well-area";

    #[test]
    fn clear_pass() {
        bedroom(window_in_well(48.0, 40.0, 40.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = bedroom(window_in_well(36.0, 30.0, 40.0)).edition(edition);
            sample.expect(SLUG, &["correction, measured 7.5 sq ft, required 9.0 sq ft"]);
        }
    }

    #[test]
    fn at_the_limit() {
        bedroom(window_in_well(36.0, 36.0, 40.0)).expect_none(SLUG);
        assert_eq!(bedroom(window_in_well(36.0, 35.984375, 40.0)).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        bedroom(good_window()).expect_none(SLUG);
        // A well beside an opening that isn't below the ground is not needed and not judged.
        let mut window = window_in_well(36.0, 30.0, 40.0);
        window.grade = window.sill;
        bedroom(window).expect_none(SLUG);
    }
}
