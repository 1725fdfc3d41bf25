//! Condensate of a furnace or cooling coil.

use plan::detail::Value;
use plan::detail::heat::CONDENSATE;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "condensate-drain",
    group: Group::Heat,
    title: "Condensate of a furnace or cooling coil",
    page: "\
What
Condensate of a cooling coil or a condensing appliance goes to an approved place by a pipe of at least 3/4 in,
indirectly into the drain.

Why
It is acid, a gallon or more a day, and floods the floor.

Source
IRC M1411.3 (2018, 2021); IRC M1411.9 (2024).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The pipe.

Exceptions
Appliances that make none.

Remedies
A pipe to a drain, or a listed pump.
",
    cites: &["condensate-drain"],
    check,
    remedies: Some(|finding, sheet| state_all(finding, sheet, &CONDENSATE, Value::Word("none arises"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &CONDENSATE,
        fault: "Condensate without a drain",
        many: "appliances",
        why: "It is acid, a gallon or more a day, and floods the floor.",
        required: Quantity::Words("an approved place".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &CONDENSATE);
    judge(sheet, out, &sheet.book.cite("condensate-drain"), &demand, elements, |a| {
        a.is(&["none arises", "a drain, by an indirect connection", "a pump"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "condensate-drain";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Furnace)
    }

    #[test]
    fn clear_pass() {
        sample().state(&CONDENSATE, Value::Word("none arises")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong =
                sample().edition(edition).state(&CONDENSATE, Value::Word("the floor or nowhere"));
            wrong.expect(
                SLUG,
                &["correction, measured the floor or nowhere, required an approved place"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["none arises", "a drain, by an indirect connection", "a pump"] {
            sample().state(&CONDENSATE, Value::Word(good)).expect_none(SLUG);
        }
        for bad in ["the floor or nowhere"] {
            assert_eq!(sample().state(&CONDENSATE, Value::Word(bad)).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&CONDENSATE, Value::Word("the floor or nowhere"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
