//! Pipe of the relief valve.

use plan::detail::Value;
use plan::detail::heat::RELIEF_PIPE;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "heater-relief",
    group: Group::Heat,
    title: "Pipe of the relief valve",
    page: "\
What
The relief valve has a pipe of its own, full size, falling all the way, that ends open and in sight not more than 6 in
above the floor, the pan or a drain.

Why
A tank whose valve cannot blow off is a bomb; one that blows off at head height scalds.

Source
IRC P2804.6.1 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The pipe's course.

Exceptions
None.

Remedies
Have a plumber run the pipe.
",
    cites: &["heater-relief"],
    check,
    remedies: Some(|finding, sheet| state_all(finding, sheet, &RELIEF_PIPE, Value::Word("to the floor, pan or drain, open end in sight"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &RELIEF_PIPE,
        fault: "Relief valve without a proper pipe",
        many: "water heaters",
        why: "A tank whose valve cannot blow off is a bomb; one that blows off at head height scalds.",
        required: Quantity::Words("full size, open, in sight".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &RELIEF_PIPE);
    judge(sheet, out, &sheet.book.cite("heater-relief"), &demand, elements, |a| {
        a.is(&["to the floor, pan or drain, open end in sight", "outdoors"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "heater-relief";

    fn sample() -> Sample {
        Sample::with(ServiceKind::WaterHeater)
    }

    #[test]
    fn clear_pass() {
        sample()
            .state(&RELIEF_PIPE, Value::Word("to the floor, pan or drain, open end in sight"))
            .expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&RELIEF_PIPE, Value::Word("capped, threaded or reduced"));
            wrong.expect(SLUG, &["correction, measured capped, threaded or reduced, required full size, open, in sight"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["to the floor, pan or drain, open end in sight", "outdoors"] {
            sample().state(&RELIEF_PIPE, Value::Word(good)).expect_none(SLUG);
        }
        for bad in ["none", "capped, threaded or reduced"] {
            assert_eq!(sample().state(&RELIEF_PIPE, Value::Word(bad)).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&RELIEF_PIPE, Value::Word("capped, threaded or reduced"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
