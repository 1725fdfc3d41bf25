//! Directory of the panel.

use plan::detail::Value;
use plan::detail::electrical::DIRECTORY;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "panel-directory",
    group: Group::Electrical,
    title: "Directory of the panel",
    page: "\
What
Each circuit is named, clearly and specifically, in a directory at the panel.

Why
Who must cut the power in a hurry has no time to try.

Source
NEC 408.4 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The door of the panel.

Exceptions
None.

Remedies
Write it when the new circuits are in.
",
    cites: &["panel-directory"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &DIRECTORY, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &DIRECTORY,
        fault: "No directory",
        many: "panels",
        why: "Who must cut the power in a hurry has no time to try.",
        required: Quantity::Words("every circuit named".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &DIRECTORY);
    judge(sheet, out, &sheet.book.cite("panel-directory"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "panel-directory";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Panel)
    }

    #[test]
    fn clear_pass() {
        sample().state(&DIRECTORY, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&DIRECTORY, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required every circuit named"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The usual is assumed until it is stated otherwise.
        sample().expect_none(SLUG);
        assert_eq!(sample().state(&DIRECTORY, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&DIRECTORY, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
