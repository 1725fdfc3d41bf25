//! Connector of a gas appliance.

use plan::detail::plumbing::CONNECTOR;

use crate::rules::stated::{Demand, fitting, judge};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "gas-connector",
    group: Group::Heat,
    title: "Connector of a gas appliance",
    page: "\
What
A connector of a gas appliance is at most 6 ft long, in the same room as the appliance, and passes no wall, floor or
ceiling.

Why
It is the part that breaks when the appliance is moved.

Source
IRC G2422.1.2.1 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
Its course.

Exceptions
Rigid pipe has no such limit.

Remedies
Licensed work: bring the pipe nearer.
",
    cites: &["gas-connector"],
    check,
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("gas-connector");
    let demand = Demand {
        rule: RULE.slug,
        detail: &CONNECTOR,
        fault: "Gas connector too long",
        many: "gas valves",
        why: "It is the part that breaks when the appliance is moved.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = fitting(sheet, &CONNECTOR);
    judge(sheet, out, &sheet.book.cite("gas-connector"), &demand, elements, |a| {
        a.len().is_some_and(|len| len <= limit.value)
    });
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "gas-connector";

    fn sample() -> Sample {
        Sample::with(ServiceKind::GasValve)
    }

    #[test]
    fn clear_pass() {
        sample().state(&CONNECTOR, Value::Length(Len::inches(72))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&CONNECTOR, Value::Length(Len::sixty_fourths(4640)));
            wrong.expect(SLUG, &["correction, measured 72 1/2\", required 72\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&CONNECTOR, Value::Length(Len::inches(72))).expect_none(SLUG);
        let over = sample().state(&CONNECTOR, Value::Length(Len::inches(72) + Len::UNIT));
        assert_eq!(over.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
