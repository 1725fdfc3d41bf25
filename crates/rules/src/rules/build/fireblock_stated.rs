//! Fireblocking of a furred wall.

use plan::detail::Value;
use plan::detail::wall::FIREBLOCKED;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "fireblock-stated",
    group: Group::Build,
    title: "Fireblocking of a furred wall",
    page: "\
What
The concealed space behind a furred wall is closed at floor and ceiling level, and upright at least every 10 ft.

Why
A fire behind the board runs along the wall and up into the joists before anyone sees it.

Source
IRC R302.11 (all editions).

How it is measured
By what is stated of it, for new work. Until it is stated, one finding asks for all such elements.

Cannot see
The blocks themselves: photograph them before the board goes on.

Exceptions
Insulation that fills the space and is held in place may count.

Remedies
2x lumber, 1/2 in board or mineral wool along top and bottom and at each mark of the fireblocking rule.
",
    cites: &["fireblock-stated"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &FIREBLOCKED, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &FIREBLOCKED,
        fault: "Furred wall without fireblocking",
        many: "runs of furring",
        why: "A fire behind the board runs along the wall and up into the joists before anyone sees it.",
        required: Quantity::Words("closed at floor and ceiling, and every 10 ft".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &FIREBLOCKED);
    judge(sheet, out, &sheet.book.cite("fireblock-stated"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "fireblock-stated";

    fn sample() -> Sample {
        Sample::with_furring()
    }

    #[test]
    fn clear_pass() {
        sample().state(&FIREBLOCKED, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&FIREBLOCKED, Value::No);
            wrong.expect(
                SLUG,
                &["correction, measured no, required closed at floor and ceiling, and every 10 ft"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // Nothing is assumed: what is not stated is asked for, once.
        sample().expect(
            SLUG,
            &["verify, measured not stated, required closed at floor and ceiling, and every 10 ft"],
        );
        sample().state(&FIREBLOCKED, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&FIREBLOCKED, Value::No).existing().expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&FIREBLOCKED, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
