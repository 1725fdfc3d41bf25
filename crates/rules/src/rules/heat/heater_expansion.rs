//! Thermal expansion at a water heater.

use plan::detail::Value;
use plan::detail::heat::EXPANSION;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "heater-expansion",
    group: Group::Heat,
    title: "Thermal expansion at a water heater",
    page: "\
What
Where a reducer, check valve or backflow preventer closes the supply, a device takes up the expansion of the heated
water.

Why
Pressure rises with every heating and opens the relief valve, or a joint.

Source
IRC P2903.4 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The valves of the supply.

Exceptions
Instantaneous heaters.

Remedies
An expansion tank, which must stay reachable.
",
    cites: &["heater-expansion"],
    check,
    remedies: Some(|finding, sheet| state_all(finding, sheet, &EXPANSION, Value::Word("open supply"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &EXPANSION,
        fault: "Closed supply without an expansion tank",
        many: "water heaters",
        why: "Pressure rises with every heating and opens the relief valve, or a joint.",
        required: Quantity::Words("a device where the supply is closed".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &EXPANSION);
    judge(sheet, out, &sheet.book.cite("heater-expansion"), &demand, elements, |a| {
        a.is(&["open supply", "closed supply, expansion tank"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "heater-expansion";

    fn sample() -> Sample {
        Sample::with(ServiceKind::WaterHeater)
    }

    #[test]
    fn clear_pass() {
        sample().state(&EXPANSION, Value::Word("open supply")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong =
                sample().edition(edition).state(&EXPANSION, Value::Word("closed supply, none"));
            wrong.expect(SLUG, &["correction, measured closed supply, none, required a device where the supply is closed"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["open supply", "closed supply, expansion tank"] {
            sample().state(&EXPANSION, Value::Word(good)).expect_none(SLUG);
        }
        for bad in ["closed supply, none"] {
            assert_eq!(sample().state(&EXPANSION, Value::Word(bad)).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&EXPANSION, Value::Word("closed supply, none"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
