//! Valves of an ejector.

use plan::detail::Value;
use plan::detail::plumbing::EJECTOR_VALVES;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "ejector-valves",
    group: Group::Heat,
    title: "Valves of an ejector",
    page: "\
What
The pipe of an ejector has a check valve and a full-open valve on its outlet side, where both can be reached.

Why
Without them the pump lifts the same sewage again, and can't be taken out.

Source
IRC P3007.2 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The pipe.

Exceptions
Grinder pumps that serve one fixture and have their own.

Remedies
Both valves above the lid.
",
    cites: &["ejector-valves"],
    check,
    remedies: Some(|finding, sheet| state_all(finding, sheet, &EJECTOR_VALVES, Value::Word("above the lid, in reach"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &EJECTOR_VALVES,
        fault: "Ejector without valves in reach",
        many: "ejectors",
        why: "Without them the pump lifts the same sewage again, and can't be taken out.",
        required: Quantity::Words("both, in reach".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &EJECTOR_VALVES);
    judge(sheet, out, &sheet.book.cite("ejector-valves"), &demand, elements, |a| {
        a.is(&["above the lid, in reach"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "ejector-valves";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Ejector)
    }

    #[test]
    fn clear_pass() {
        sample().state(&EJECTOR_VALVES, Value::Word("above the lid, in reach")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&EJECTOR_VALVES, Value::Word("none"));
            wrong.expect(SLUG, &["correction, measured none, required both, in reach"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["above the lid, in reach"] {
            sample().state(&EJECTOR_VALVES, Value::Word(good)).expect_none(SLUG);
        }
        for bad in ["below the lid or out of reach", "none"] {
            assert_eq!(sample().state(&EJECTOR_VALVES, Value::Word(bad)).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&EJECTOR_VALVES, Value::Word("none"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
