//! Lock of a window or door to escape by.

use plan::detail::Value;
use plan::detail::opening::KEYLESS;

use super::candidate::Candidate;
use super::told::Told;
use crate::rules::stated::state_all;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-keyed-lock",
    group: Group::WayOut,
    title: "Lock of a window or door to escape by",
    page: "\
What
An escape opening works from inside without a key, a tool or special knowledge.

Why
The key is never where the smoke is.

Source
IRC R310.1.1 (2018, 2021); IRC R319.1.1 (2024).

How it is measured
By what is stated of the opening that a need rests on; an opening that fails is not chosen where another serves. Until it is
stated, the usual is assumed and nothing is said.

Cannot see
Locks and opening-control devices.

Exceptions
A window that is nobody's way out. Opening-control devices of the listed kind that one motion releases.

Remedies
Take off the keyed lock.
",
    cites: &["escape-keyed-lock"],
    check: Check::Plan(&[On::Outside], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &KEYLESS, Value::Yes)),
};

const TOLD: Told = Told {
    rule: RULE.slug,
    detail: &KEYLESS,
    fault: "opens with a key or tool only",
    why: "The key is never where the smoke is.",
};

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    TOLD.judge(sheet, candidate, |a| a.yes() == Some(true))
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let required = Quantity::Words("no key or tool".to_owned());
    TOLD.check(sheet, out, &sheet.book.cite(RULE.slug), &required, judge);
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::rules::way_out::sample::{bedroom, good_window, with_window};
    use crate::testing::Sample;

    const SLUG: &str = "escape-keyed-lock";

    fn sample() -> Sample {
        bedroom(good_window())
    }

    #[test]
    fn clear_pass() {
        sample().state(&KEYLESS, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&KEYLESS, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required no key or tool"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The usual is assumed until it is stated otherwise.
        sample().expect_none(SLUG);
        assert_eq!(sample().state(&KEYLESS, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // A second window serves as well: the other is nobody's way out.
        let wrong = sample().state(&KEYLESS, Value::No);
        with_window(wrong, good_window()).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&KEYLESS, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
