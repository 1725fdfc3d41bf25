//! Kind of the main water valve.

use plan::detail::Value;
use plan::detail::plumbing::FULL_OPEN;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "main-valve-kind",
    group: Group::Heat,
    title: "Kind of the main water valve",
    page: "\
What
The main shutoff is a full-open valve near the entry of the supply, with a drain.

Why
The house is emptied through it before work and before frost.

Source
IRC P2903.9.1 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The valve's make.

Exceptions
None.

Remedies
A ball valve with a drain.
",
    cites: &["main-valve-kind"],
    check,
    remedies: Some(|finding, sheet| state_all(finding, sheet, &FULL_OPEN, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &FULL_OPEN,
        fault: "Main valve that is not full-open",
        many: "main valves",
        why: "The house is emptied through it before work and before frost.",
        required: Quantity::Words("full-open, with a drain".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &FULL_OPEN);
    judge(sheet, out, &sheet.book.cite("main-valve-kind"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "main-valve-kind";

    fn sample() -> Sample {
        Sample::with(ServiceKind::MainWaterValve)
    }

    #[test]
    fn clear_pass() {
        sample().state(&FULL_OPEN, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&FULL_OPEN, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required full-open, with a drain"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The usual is assumed until it is stated otherwise.
        sample().expect_none(SLUG);
        assert_eq!(sample().state(&FULL_OPEN, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&FULL_OPEN, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
