//! End of an exhaust fan's duct.

use plan::detail::Value;
use plan::detail::heat::FAN_ENDS;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "fan-outdoors",
    group: Group::Heat,
    title: "End of an exhaust fan's duct",
    page: "\
What
The duct of an exhaust fan ends outdoors, not in a soffit, an attic, a crawl space or the joists.

Why
Its steam rots what it ends in.

Source
IRC M1505.2 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The duct's course.

Exceptions
Listed recirculating kitchen hoods.

Remedies
Run the duct outdoors.
",
    cites: &["fan-outdoors"],
    check,
    remedies: Some(|finding, sheet| state_all(finding, sheet, &FAN_ENDS, Value::Word("outdoors"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &FAN_ENDS,
        fault: "Fan that does not blow outdoors",
        many: "fans",
        why: "Its steam rots what it ends in.",
        required: Quantity::Words("outdoors".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &FAN_ENDS);
    judge(sheet, out, &sheet.book.cite("fan-outdoors"), &demand, elements, |a| a.is(&["outdoors"]));
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "fan-outdoors";

    fn sample() -> Sample {
        Sample::with(ServiceKind::ExhaustFan)
    }

    #[test]
    fn clear_pass() {
        sample().state(&FAN_ENDS, Value::Word("outdoors")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&FAN_ENDS, Value::Word("into the joists, an attic or a crawl space"));
            wrong.expect(SLUG, &["correction, measured into the joists, an attic or a crawl space, required outdoors"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["outdoors"] {
            sample().state(&FAN_ENDS, Value::Word(good)).expect_none(SLUG);
        }
        for bad in ["into the joists, an attic or a crawl space"] {
            assert_eq!(sample().state(&FAN_ENDS, Value::Word(bad)).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong =
            sample().state(&FAN_ENDS, Value::Word("into the joists, an attic or a crawl space"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
