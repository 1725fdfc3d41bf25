//! Ladder beside the open sash.

use plan::detail::Value;
use plan::detail::opening::LADDER_FREE;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "ladder-obstructed",
    group: Group::WayOut,
    title: "Ladder beside the open sash",
    page: "\
What
The ladder of a well can be used with the window fully open.

Why
Nobody closes the window behind them in a fire.

Source
IRC R310.4.2 (2018, 2021); IRC R319.4.2 (2024).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
Where in the well the ladder stands.

Exceptions
None.

Remedies
Move the ladder to the side that the sash leaves free.
",
    cites: &["ladder-obstructed"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &LADDER_FREE, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &LADDER_FREE,
        fault: "The open sash covers the ladder",
        many: "ladders",
        why: "Nobody closes the window behind them in a fire.",
        required: Quantity::Words("clear of the open sash".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &LADDER_FREE);
    judge(sheet, out, &sheet.book.cite("ladder-obstructed"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "ladder-obstructed";

    fn sample() -> Sample {
        Sample::with_well(true)
    }

    #[test]
    fn clear_pass() {
        sample().state(&LADDER_FREE, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&LADDER_FREE, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required clear of the open sash"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The usual is assumed until it is stated otherwise.
        sample().expect_none(SLUG);
        assert_eq!(sample().state(&LADDER_FREE, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&LADDER_FREE, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
