//! Rate of a bath fan.

use plan::detail::heat::FAN_RATE;

use crate::rules::stated::{Demand, fitting, judge};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "fan-rate",
    group: Group::Heat,
    title: "Rate of a bath fan",
    page: "\
What
A bath fan moves at least 50 cfm when it runs at need; 20 cfm where it runs always.

Why
Less leaves the mirror, and the wall behind it, wet.

Source
IRC M1505.4.4 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
Whether it runs always: set the finding aside for one that moves 20 cfm without a break.

Exceptions
A bath with a window that opens far enough.

Remedies
A stronger fan, or a shorter duct.
",
    cites: &["fan-rate"],
    check,
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.count("fan-rate");
    let demand = Demand {
        rule: RULE.slug,
        detail: &FAN_RATE,
        fault: "Fan too weak",
        many: "fans",
        why: "Less leaves the mirror, and the wall behind it, wet.",
        required: Quantity::Words(format!("{} cfm", limit.value)),
        advice: false,
    };
    let elements = fitting(sheet, &FAN_RATE);
    judge(sheet, out, &sheet.book.cite("fan-rate"), &demand, elements, |a| {
        a.number().is_some_and(|n| n >= limit.value)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "fan-rate";

    fn sample() -> Sample {
        Sample::with(ServiceKind::ExhaustFan)
    }

    #[test]
    fn clear_pass() {
        sample().state(&FAN_RATE, Value::Number(50)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&FAN_RATE, Value::Number(49));
            wrong.expect(SLUG, &["correction, measured 49 cfm, required 50 cfm"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&FAN_RATE, Value::Number(50)).expect_none(SLUG);
        let weak = sample().state(&FAN_RATE, Value::Number(49));
        assert_eq!(weak.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
