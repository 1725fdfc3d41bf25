//! Lock of a window or door to escape by.

use plan::detail::Value;
use plan::detail::opening::KEYLESS;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

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
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
Locks and opening-control devices.

Exceptions
A window that is nobody's way out. Opening-control devices of the listed kind that one motion releases.

Remedies
Take off the keyed lock.
",
    cites: &["escape-keyed-lock"],
    check,
    remedies: Some(|finding, sheet| state_all(finding, sheet, &KEYLESS, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &KEYLESS,
        fault: "Opens with a key only",
        many: "windows",
        why: "The key is never where the smoke is.",
        required: Quantity::Words("no key or tool".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &KEYLESS);
    judge(sheet, out, &sheet.book.cite("escape-keyed-lock"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "escape-keyed-lock";

    fn sample() -> Sample {
        Sample::with_well(false)
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
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&KEYLESS, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
