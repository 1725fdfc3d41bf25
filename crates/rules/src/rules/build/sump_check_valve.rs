//! Check valve of a sump pump.

use plan::detail::plumbing::SUMP_CHECK;

use crate::rules::stated::{Demand, fitting, judge};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "sump-check-valve",
    group: Group::Build,
    title: "Check valve of a sump pump",
    page: "\
What
The discharge of a sump pump has a check valve.

Why
Without one the water in the pipe runs back, and the pump lifts it again and again.

Source
A state's extension service; good practice.

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The pipe.

Exceptions
None.

Remedies
Ask the plumber for a check valve above the pit.
",
    cites: &["sump-check-valve"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &SUMP_CHECK,
        fault: "No check valve",
        many: "pits",
        why: "Without one the water in the pipe runs back, and the pump lifts it again and again.",
        required: Quantity::Words("a check valve".to_owned()),
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
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "sump-check-valve";

    fn sample() -> Sample {
        Sample::with(plan::element::ServiceKind::Sump)
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample().edition(edition).state(&SUMP_CHECK, Value::Yes).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&SUMP_CHECK, Value::No);
            wrong.expect(SLUG, &["advice, measured no, required a check valve"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&SUMP_CHECK, Value::Yes).expect_none(SLUG);
        let over = sample().edition(Edition::E2021).state(&SUMP_CHECK, Value::No);
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
