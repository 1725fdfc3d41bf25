//! Fireblocking at stair stringers.

use plan::detail::Value;
use plan::detail::stair::STRINGERS_BLOCKED;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stringer-fireblock",
    group: Group::Stairs,
    title: "Fireblocking at stair stringers",
    page: "\
What
The concealed space between stair stringers is closed at the top and the bottom of the run.

Why
A stair is a shaft to the floor above.

Source
IRC R302.11 item 3 (all editions).

How it is measured
By what is stated of new stairs. Until it is stated, one finding asks for all of them.

Cannot see
The carpentry.

Exceptions
Open stairs.

Remedies
2x blocks between the stringers at both ends.
",
    cites: &["stringer-fireblock"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &STRINGERS_BLOCKED, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &STRINGERS_BLOCKED,
        fault: "Stringers without fireblocking",
        many: "stairs",
        why: "A stair is a shaft to the floor above.",
        required: Quantity::Words("closed at top and bottom".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &STRINGERS_BLOCKED);
    judge(sheet, out, &sheet.book.cite("stringer-fireblock"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "stringer-fireblock";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        sample().state(&STRINGERS_BLOCKED, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&STRINGERS_BLOCKED, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required closed at top and bottom"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // It is asked for until it is stated.
        sample().expect(SLUG, &["verify, measured not stated, required closed at top and bottom"]);
        assert_eq!(sample().state(&STRINGERS_BLOCKED, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&STRINGERS_BLOCKED, Value::No).existing().expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&STRINGERS_BLOCKED, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
