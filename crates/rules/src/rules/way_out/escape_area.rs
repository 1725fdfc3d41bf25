//! An escape opening with too little clear area.

use measure::{Area, Len};

use super::candidate::{Candidate, candidates};
use super::choice::{Choice, faulty};
use crate::{Check, Finding, Group, On, Phrase, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-area",
    group: Group::WayOut,
    title: "Net clear area of the escape opening",
    page: "\
What
The net clear opening is at least 5.7 sq ft, or 5.0 sq ft for a grade-floor opening.

Why
A person, and a firefighter with a breathing set, must pass through it.

Source
IRC R310.2.1 (2018, 2021), R319.2.1 (2024); grade-floor opening: R202.

How it is measured
Clear width times clear height, without tolerance: 820.8 sq in and 720 sq in. An opening is a grade-floor
one when its bottom is at most 44 in above or below the outside ground beside it, measured to the yard
and not to the floor of a well. The 2018 edition gives 5.0 sq ft to every below-grade opening too.
Openings do not add: one of them must be large enough by itself.

Cannot see
The clear size of a window without the maker's figures: an estimate is marked to verify. The ground
outside a door: a door needs the full 5.7 sq ft.

Exceptions
A like-for-like replacement window in the maker's largest size for the old frame (escape-replacement). An existing
window where the occupancy changes may be smaller (escape-kept-window).

Remedies
A larger window, or one of another kind: a casement leaves the most of its frame clear.
",
    cites: &[
        "escape-area",
        "escape-area-grade-floor",
        "escape-area-below-grade",
        "escape-grade-floor-reach",
        "escape-kept-area",
    ],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "A person, and a firefighter with a breathing set, must fit through.";

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    (!candidate.replaces(sheet) && short(sheet, candidate)).then(|| candidate.size_severity())
}

/// Whether it falls short, no matter whether it is excused.
pub(super) fn short(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> bool {
    candidate.sized() && candidate.area() < candidate.area_limit(sheet).value
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let limit = choice.candidate.area_limit(sheet);
        let measured = choice.candidate.area();
        let mut finding = choice
            .size_finding(sheet, RULE.slug, severity, limit.citation, "is too small", WHY)
            .figures(Quantity::Area(measured), Quantity::Area(limit.value));
        finding.why = why(sheet, &choice, limit.value - measured);
        out.push(finding);
    }
}

/// Why, with what a shortfall of at most a square inch and a second opening mean.
fn why(sheet: &Sheet<'_>, choice: &Choice<'_>, short: Area) -> Phrase {
    let mut text = WHY.to_owned();
    if short <= Area::of_rect(Len::inches(1), Len::inches(1)) {
        text += " The shortfall is within 1 sq in: some offices round, ask yours.";
    }
    if candidates(sheet.facts, choice.need.room).len() > 1 {
        text += " Openings do not add: one must be large enough by itself.";
    }
    Phrase::text(text)
}

#[cfg(test)]
mod tests {
    use measure::{Len, System};
    use plan::Edition;
    use plan::element::{RoomUse, Window};

    use crate::rules::way_out::sample::{bedroom, good_window, window, with_window};
    use crate::testing::{Sample, at};

    const SLUG: &str = "escape-area";

    /// A window whose bottom is this far above the outside ground, in inches.
    fn above(mut window: Window, inches: i32) -> Window {
        window.grade = window.sill - Len::inches(inches);
        window
    }

    #[test]
    fn clear_pass() {
        bedroom(good_window()).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let sample = bedroom(window(20.0, 24.0));
        sample.expect(SLUG, &["correction, measured 3.3 sq ft, required 5.0 sq ft"]);
    }

    #[test]
    fn at_the_limit() {
        bedroom(window(30.0, 24.0)).expect_none(SLUG);
        let short = bedroom(window(30.0, 23.9921875));
        assert_eq!(short.findings(SLUG).len(), 1);
        // 34.2 x 24 in would be exactly 5.7 sq ft; 1/64 in of width decides above the ground.
        bedroom(above(window(34.203125, 24.0), 45)).expect_none(SLUG);
        assert_eq!(bedroom(above(window(34.1875, 24.0), 45)).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        let office = Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Office", RoomUse::Office);
        with_window(office, window(20.0, 20.0)).expect_none(SLUG);
    }

    #[test]
    fn a_grade_floor_opening_is_44_in_above_or_below_the_ground() {
        let tight = || window(30.0, 24.0);
        for edition in Edition::ALL {
            for inches in [-44, 44] {
                bedroom(above(tight(), inches)).edition(edition).expect_none(SLUG);
            }
            assert_eq!(bedroom(above(tight(), 45)).edition(edition).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn the_2018_edition_lets_every_below_grade_opening_be_smaller() {
        let deep = above(window(30.0, 24.0), -60);
        bedroom(deep.clone()).edition(Edition::E2018).expect_none(SLUG);
        for edition in [Edition::E2021, Edition::E2024] {
            let sample = bedroom(deep.clone()).edition(edition);
            sample.expect(SLUG, &["correction, measured 5.0 sq ft, required 5.7 sq ft"]);
        }
    }

    #[test]
    fn a_shortfall_within_a_square_inch_says_that_offices_round() {
        let said = |w: f64, h: f64| {
            let findings = bedroom(above(window(w, h), 45)).findings(SLUG);
            findings[0].why.say(System::Imperial)
        };
        assert!(said(20.0, 41.0).contains("some offices round"));
        assert!(!said(34.0, 24.0).contains("some offices round"));
    }
}
