//! Panel at slip joints of a tub.

use plan::detail::plumbing::SLIP_JOINTS;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "slip-joints",
    group: Group::Build,
    title: "Panel at slip joints of a tub",
    page: "\
What
The slip joints of a tub's trap that are closed in are reached through an opening of at least 12 in in its least dimension.

Why
A slip joint leaks one day, and the ceiling or the wall is cut to reach it.

Source
IRC P2704.1.

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The trap.

Exceptions
Joints that are solvent-welded or in sight.

Remedies
A panel of 12 in, or a trap without slip joints.
",
    cites: &["slip-joints"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &SLIP_JOINTS,
        fault: "Slip joints out of reach",
        many: "tubs",
        why: "A slip joint leaks one day, and the ceiling or the wall is cut to reach it.",
        required: Quantity::Words("a panel of 12 in".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &SLIP_JOINTS);
    judge(sheet, out, &sheet.book.cite("slip-joints"), &demand, elements, |a| {
        a.is(&["none, or in sight", "panel of 12 in"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "slip-joints";

    fn sample() -> Sample {
        Sample::with_thing("tub")
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample()
                .edition(edition)
                .state(&SLIP_JOINTS, Value::Word("none, or in sight"))
                .expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&SLIP_JOINTS, Value::Word("closed in"));
            wrong.expect(SLUG, &["correction, measured closed in, required a panel of 12 in"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&SLIP_JOINTS, Value::Word("panel of 12 in")).expect_none(SLUG);
        let over =
            sample().edition(Edition::E2021).state(&SLIP_JOINTS, Value::Word("smaller panel"));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&SLIP_JOINTS, Value::Word("closed in")).existing().expect_none(SLUG);
    }
}
