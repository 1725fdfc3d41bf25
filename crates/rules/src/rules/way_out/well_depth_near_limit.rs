//! A well just shallow enough to need no ladder.

use measure::Len;

use super::candidate::Candidate;
use super::choice::faulty;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "well-depth-near-limit",
    group: Group::WayOut,
    title: "Well just shallow enough to need no ladder",
    page: "\
What
A well without a ladder that is within 2 in of the depth that needs one is measured again.

Why
The ground settles and is raised, and the text doesn't say whether the rim or the ground counts.

Source
Common practice; the limit of 44 in is that of well-ladder.

How it is measured
The depth that is entered, from the floor of the well up to the outside ground.

Cannot see
The rim of the well.

Exceptions
A well with a ladder.

Remedies
Measure again, or put a ladder in.
",
    cites: &["well-depth-margin", "well-ladder-depth"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "A little more earth around the well makes a ladder due, and the text doesn't say whether the rim or \
                   the ground counts.";

/// Advice: it doesn't weigh when the nearest opening is chosen.
fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    let limit = sheet.book.len("well-ladder-depth").value;
    let margin = sheet.book.len("well-depth-margin").value;
    let near = |depth: Len| depth <= limit && depth > limit - margin;
    candidate.well().filter(|well| !well.ladder && near(well.depth)).map(|_| Severity::Advice)
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let Some(well) = choice.candidate.well() else { continue };
        let limit = sheet.book.len("well-ladder-depth").value;
        let citation = sheet.book.cite("well-depth-margin");
        let fault = "opens to a well that is almost deep enough for a ladder";
        out.push(
            choice
                .finding(sheet, RULE.slug, severity, citation, fault, WHY)
                .figures(Quantity::Len(well.depth), Quantity::Len(limit)),
        );
    }
}

#[cfg(test)]
mod tests {
    use crate::rules::way_out::sample::{bedroom, good_window, window_in_well, with_ladder};

    const SLUG: &str = "well-depth-near-limit";

    #[test]
    fn clear_pass() {
        bedroom(window_in_well(48.0, 40.0, 36.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let sample = bedroom(window_in_well(48.0, 40.0, 43.0));
        sample.expect(SLUG, &["advice, measured 43\", required 44\""]);
    }

    #[test]
    fn at_the_limit() {
        bedroom(window_in_well(48.0, 40.0, 42.0)).expect_none(SLUG);
        assert_eq!(bedroom(window_in_well(48.0, 40.0, 42.015625)).findings(SLUG).len(), 1);
        assert_eq!(bedroom(window_in_well(48.0, 40.0, 44.0)).findings(SLUG).len(), 1);
        bedroom(window_in_well(48.0, 40.0, 44.015625)).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        bedroom(good_window()).expect_none(SLUG);
        bedroom(with_ladder(window_in_well(48.0, 40.0, 43.0), 4.0)).expect_none(SLUG);
    }
}
