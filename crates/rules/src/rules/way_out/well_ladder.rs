//! A deep well without a ladder.

use super::candidate::Candidate;
use super::choice::faulty;
use super::fix::change_well;
use crate::{Check, Finding, Group, On, Phrase, Quantity, Remedy, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "well-ladder",
    group: Group::WayOut,
    title: "Ladder of a deep well",
    page: "\
What
A well deeper than 44 in has a permanent ladder or steps.

Why
Who has climbed out of the window must also get out of the hole.

Source
IRC R310.2.3.1 (2018), R310.4.2 (2021); the 2024 section was not seen.

How it is measured
The depth that is entered, from the floor of the well up to the outside ground. Exactly 44 in needs no
ladder.

Cannot see
The ladder's rungs (12 in wide inside, 3 in off the wall, at most 18 in apart), and whether the open sash
leaves it usable. Where the rim stands above the ground, the text doesn't say which is meant.

Exceptions
The ladder need not meet the rules for stairs.

Remedies
Put a ladder in; shown before it is made. It may take up to 6 in of the well's required size.
",
    cites: &["well-ladder-depth"],
    check: Check::Plan(&[On::Outside], check),
    remedies: Some(remedies),
};

const WHY: &str = "Who has climbed out of the window must also get out of the well.";

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    let limit = sheet.book.len("well-ladder-depth").value;
    candidate.well().filter(|well| !well.ladder && well.depth > limit).map(|_| Severity::Correction)
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let Some(well) = choice.candidate.well() else { continue };
        let limit = sheet.book.len("well-ladder-depth");
        let fault = "opens to a deep well without a ladder";
        out.push(
            choice
                .finding(sheet, RULE.slug, severity, limit.citation, fault, WHY)
                .figures(Quantity::Len(well.depth), Quantity::Len(limit.value)),
        );
    }
}

fn remedies(finding: &Finding, sheet: &Sheet<'_>) -> Vec<Remedy> {
    let label = |window: &str| Phrase::text(format!("Put a ladder in the well of {window}"));
    change_well(finding, sheet, label, |well| well.ladder = true)
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use crate::rules::way_out::sample::{bedroom, good_window, window_in_well, with_ladder};

    const SLUG: &str = "well-ladder";

    #[test]
    fn clear_pass() {
        bedroom(with_ladder(window_in_well(48.0, 40.0, 60.0), 4.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = bedroom(window_in_well(48.0, 40.0, 60.0)).edition(edition);
            sample.expect(SLUG, &["correction, measured 60\", required 44\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        bedroom(window_in_well(48.0, 40.0, 44.0)).expect_none(SLUG);
        let deeper = bedroom(window_in_well(48.0, 40.0, 44.015625));
        deeper.expect(SLUG, &["correction, measured 44 1/16\", required 44\""]);
    }

    #[test]
    fn does_not_apply() {
        bedroom(good_window()).expect_none(SLUG);
    }

    #[test]
    fn a_remedy_puts_the_ladder_in() {
        let remedies = bedroom(window_in_well(48.0, 40.0, 60.0)).remedies(SLUG);
        assert_eq!(remedies.len(), 1);
        assert!(remedies[0].starts_with("Put a ladder in the well of window N"), "{remedies:?}");
    }
}
