//! Check valve of a sump pump.

use plan::detail::Value;
use plan::detail::plumbing::SUMP_CHECK;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "sump-check-valve",
    group: Group::Heat,
    title: "Check valve of a sump pump",
    page: "\
What
The pipe of a sump pump has a check valve.

Why
What stands in the pipe runs back, and the pump starts again for it.

Source
IRC P3303.1.4 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The pipe.

Exceptions
None.

Remedies
A check valve above the pit, in reach.
",
    cites: &["sump-check-valve"],
    check,
    remedies: Some(|finding, sheet| state_all(finding, sheet, &SUMP_CHECK, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &SUMP_CHECK,
        fault: "Sump pump without a check valve",
        many: "sumps",
        why: "What stands in the pipe runs back, and the pump starts again for it.",
        required: Quantity::Words("one".to_owned()),
        advice: true,
    };
    let elements = fitting(sheet, &SUMP_CHECK);
    judge(sheet, out, &sheet.book.cite("sump-check-valve"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "sump-check-valve";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Sump)
    }

    #[test]
    fn clear_pass() {
        sample().state(&SUMP_CHECK, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&SUMP_CHECK, Value::No);
            wrong.expect(SLUG, &["advice, measured no, required one"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The usual is assumed until it is stated otherwise.
        sample().expect_none(SLUG);
        assert_eq!(sample().state(&SUMP_CHECK, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&SUMP_CHECK, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
