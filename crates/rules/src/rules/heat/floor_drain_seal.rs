//! Seal of a floor drain's trap.

use plan::detail::Value;
use plan::detail::plumbing::DRAIN_SEAL;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "floor-drain-seal",
    group: Group::Heat,
    title: "Seal of a floor drain's trap",
    page: "\
What
A floor drain that gets water seldom has a trap primer or a barrier device.

Why
A dry trap lets sewer gas into the room.

Source
IRC P3201.2.1 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
How often it gets water.

Exceptions
Drains that are used often.

Remedies
A primer, or a barrier device in the strainer.
",
    cites: &["floor-drain-seal"],
    check,
    remedies: Some(|finding, sheet| {
        state_all(finding, sheet, &DRAIN_SEAL, Value::Word("used often"))
    }),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &DRAIN_SEAL,
        fault: "Floor drain that dries out",
        many: "floor drains",
        why: "A dry trap lets sewer gas into the room.",
        required: Quantity::Words("use, a primer or a barrier".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &DRAIN_SEAL);
    judge(sheet, out, &sheet.book.cite("floor-drain-seal"), &demand, elements, |a| {
        a.is(&["used often", "trap primer", "barrier device"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "floor-drain-seal";

    fn sample() -> Sample {
        Sample::with(ServiceKind::FloorDrain)
    }

    #[test]
    fn clear_pass() {
        sample().state(&DRAIN_SEAL, Value::Word("used often")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&DRAIN_SEAL, Value::Word("nothing"));
            wrong.expect(
                SLUG,
                &["correction, measured nothing, required use, a primer or a barrier"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["used often", "trap primer", "barrier device"] {
            sample().state(&DRAIN_SEAL, Value::Word(good)).expect_none(SLUG);
        }
        for bad in ["nothing"] {
            assert_eq!(sample().state(&DRAIN_SEAL, Value::Word(bad)).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&DRAIN_SEAL, Value::Word("nothing"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
