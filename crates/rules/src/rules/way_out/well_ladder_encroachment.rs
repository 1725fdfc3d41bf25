//! A ladder that takes too much of its well.

use measure::Len;
use plan::element::Well;

use super::candidate::Candidate;
use super::choice::faulty;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "well-ladder-encroachment",
    group: Group::WayOut,
    title: "Room that a ladder takes from its well",
    page: "\
What
A ladder or steps take at most 6 in from the required size of the well.

Why
The ladder must not fill the well that one stands in.

Source
IRC R310.2.3 exception (2018), R310.4.1 exception (2021); the 2024 section was not seen.

How it is measured
What the ladder takes from the clear projection, less what the well reaches out beyond the required
36 in. A 36 in well with a 6 in ladder passes, and so does a 40 in well with a 10 in ladder.

Cannot see
Whether the open sash leaves the ladder usable. The area that the ladder covers.

Exceptions
None.

Remedies
A ladder nearer to the wall, or a well that reaches farther out.
",
    cites: &["well-ladder-encroachment", "well-projection"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "The ladder fills the well that one must stand and turn in.";

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    let limit = sheet.book.len("well-ladder-encroachment").value;
    candidate.well().filter(|well| encroachment(sheet, well) > limit).map(|_| Severity::Correction)
}

/// What the ladder takes from the required projection: a deeper well has some to spare.
fn encroachment(sheet: &Sheet<'_>, well: &Well) -> Len {
    if !well.ladder {
        return Len::ZERO;
    }
    let spare = well.projection - sheet.book.len("well-projection").value;
    well.ladder_projection - spare.max(Len::ZERO)
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let Some(well) = choice.candidate.well() else { continue };
        let limit = sheet.book.len("well-ladder-encroachment");
        let fault = "opens to a well that its ladder fills";
        let taken = encroachment(sheet, well);
        out.push(
            choice
                .finding(sheet, RULE.slug, severity, limit.citation, fault, WHY)
                .figures(Quantity::Len(taken), Quantity::Len(limit.value)),
        );
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use crate::rules::way_out::sample::{bedroom, good_window, window_in_well, with_ladder};
    use crate::testing::Sample;

    const SLUG: &str = "well-ladder-encroachment";

    fn ladder(projection: f64, takes: f64) -> Sample {
        bedroom(with_ladder(window_in_well(48.0, projection, 60.0), takes))
    }

    #[test]
    fn clear_pass() {
        ladder(40.0, 4.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = ladder(36.0, 9.0).edition(edition);
            sample.expect(SLUG, &["correction, measured 9\", required 6\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        ladder(36.0, 6.0).expect_none(SLUG);
        ladder(36.0, 6.015625).expect(SLUG, &["correction, measured 6 1/16\", required 6\""]);
        ladder(40.0, 10.0).expect_none(SLUG);
        assert_eq!(ladder(40.0, 10.015625).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        bedroom(good_window()).expect_none(SLUG);
        let mut window = with_ladder(window_in_well(48.0, 36.0, 60.0), 9.0);
        if let Some(well) = &mut window.well {
            well.ladder = false;
        }
        bedroom(window).expect_none(SLUG);
    }
}
