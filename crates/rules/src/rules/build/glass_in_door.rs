//! Safety glass in a door.

use plan::detail::Value;
use plan::detail::opening::GLASS_IN_DOOR;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "glass-in-door",
    group: Group::Build,
    title: "Safety glass in a door",
    page: "\
What
Glass in a door is safety glass, marked as such.

Why
A hand that pushes the door goes through the pane.

Source
IRC R308.4.1 (2018, 2021); IRC R324.4.1 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The mark on the pane.

Exceptions
Openings through which a ball of 3 in does not pass; decorative glass.

Remedies
Safety glass.
",
    cites: &["glass-in-door"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &GLASS_IN_DOOR, Value::Word("none"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &GLASS_IN_DOOR,
        fault: "Plain glass in a door",
        many: "doors",
        why: "A hand that pushes the door goes through the pane.",
        required: Quantity::Words("safety glass".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &GLASS_IN_DOOR);
    judge(sheet, out, &sheet.book.cite("glass-in-door"), &demand, elements, |a| {
        a.is(&["none", "safety glass"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "glass-in-door";

    fn sample() -> Sample {
        Sample::with_door()
    }

    #[test]
    fn clear_pass() {
        sample().state(&GLASS_IN_DOOR, Value::Word("none")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&GLASS_IN_DOOR, Value::Word("plain glass"));
            wrong.expect(SLUG, &["correction, measured plain glass, required safety glass"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["none", "safety glass"] {
            sample().state(&GLASS_IN_DOOR, Value::Word(good)).expect_none(SLUG);
        }
        assert_eq!(
            sample().state(&GLASS_IN_DOOR, Value::Word("plain glass")).findings(SLUG).len(),
            1
        );
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&GLASS_IN_DOOR, Value::Word("plain glass")).existing().expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&GLASS_IN_DOOR, Value::Word("plain glass"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
