//! Pan under a water heater.

use plan::detail::Value;
use plan::detail::heat::PAN;

use crate::rules::stated::{Demand, fitting, is_new, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "heater-pan",
    group: Group::Heat,
    title: "Pan under a water heater",
    page: "\
What
A storage water heater where a leak would do damage stands in a pan with a drain. A replacement without a way for the
drain may have a pan without one.

Why
Finished rooms turn a leak into damage.

Source
IRC P2801.6 (all editions).

How it is measured
By what is stated of it, for new work. Until it is stated, one finding asks for all such elements.

Cannot see
Whether the floor around it is harmed by water.

Exceptions
Bare slab with a floor drain: state “not needed here”.

Remedies
A pan with a drain of 3/4 in to a drain or outdoors.
",
    cites: &["heater-pan"],
    check,
    remedies: Some(|finding, sheet| state_all(finding, sheet, &PAN, Value::Word("pan that drains"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &PAN,
        fault: "No pan under the tank",
        many: "water heaters",
        why: "Finished rooms turn a leak into damage.",
        required: Quantity::Words("a pan where a leak would do harm".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &PAN).filter(|e| is_new(sheet, e));
    judge(sheet, out, &sheet.book.cite("heater-pan"), &demand, elements, |a| {
        a.is(&["pan that drains", "not needed here", "pan without a drain"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "heater-pan";

    fn sample() -> Sample {
        Sample::with(ServiceKind::WaterHeater)
    }

    #[test]
    fn clear_pass() {
        sample().state(&PAN, Value::Word("pan that drains")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&PAN, Value::Word("none"));
            wrong.expect(
                SLUG,
                &["correction, measured none, required a pan where a leak would do harm"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["pan that drains", "not needed here", "pan without a drain"] {
            sample().state(&PAN, Value::Word(good)).expect_none(SLUG);
        }
        for bad in ["none"] {
            assert_eq!(sample().state(&PAN, Value::Word(bad)).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&PAN, Value::Word("none")).existing().expect_none(SLUG);
    }

    #[test]
    fn what_is_not_stated_is_asked_for() {
        sample().expect(
            SLUG,
            &["verify, measured not stated, required a pan where a leak would do harm"],
        );
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&PAN, Value::Word("none"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
