//! Where an escape opening leads.

use plan::detail::Value;
use plan::detail::opening::LEADS_TO;

use super::candidate::Candidate;
use super::told::Told;
use crate::rules::stated::state_all;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-leads-out",
    group: Group::WayOut,
    title: "Where an escape opening leads",
    page: "\
What
An escape opening leads straight to a public way, or to a yard or court that opens to one. One into a garage, a crawl
space or a closed porch does not count.

Why
Who climbs out must be out, and get away.

Source
IRC R310.1 (2018, 2021); IRC R319.1 (2024).

How it is measured
By what is stated of the opening that a need rests on; an opening that fails is not chosen where another serves. Until it is
stated, the usual is assumed and nothing is said.

Cannot see
The lot.

Exceptions
A court that is closed all round is a known dispute; a gate in it opens from inside.

Remedies
Another opening; or ask the department about the court.
",
    cites: &["escape-leads-out"],
    check: Check::Plan(&[On::Outside], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &LEADS_TO, Value::Word("yard or street"))),
};

const TOLD: Told = Told {
    rule: RULE.slug,
    detail: &LEADS_TO,
    fault: "leads nowhere",
    why: "Who climbs out must be out, and get away.",
};

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    TOLD.judge(sheet, candidate, |a| a.is(&["yard or street", "court with a gate"]))
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let required = Quantity::Words("a yard or court that opens to the street".to_owned());
    TOLD.check(sheet, out, &sheet.book.cite(RULE.slug), &required, judge);
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::rules::way_out::sample::{bedroom, good_window, with_window};
    use crate::testing::Sample;

    const SLUG: &str = "escape-leads-out";

    fn sample() -> Sample {
        bedroom(good_window())
    }

    #[test]
    fn clear_pass() {
        sample().state(&LEADS_TO, Value::Word("yard or street")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&LEADS_TO, Value::Word("garage, porch or crawl space"));
            wrong.expect(SLUG, &["correction, measured garage, porch or crawl space, required a yard or court that opens to the street"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["yard or street", "court with a gate"] {
            sample().state(&LEADS_TO, Value::Word(good)).expect_none(SLUG);
        }
        for bad in ["enclosed court", "garage, porch or crawl space"] {
            assert_eq!(sample().state(&LEADS_TO, Value::Word(bad)).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // A second window serves as well: the other is nobody's way out.
        let wrong = sample().state(&LEADS_TO, Value::Word("enclosed court"));
        with_window(wrong, good_window()).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&LEADS_TO, Value::Word("garage, porch or crawl space"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
