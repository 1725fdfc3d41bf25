//! Bars, covers and screens over an escape opening.

use plan::detail::Value;
use plan::detail::opening::BARS;

use super::candidate::Candidate;
use super::told::Told;
use crate::rules::stated::state_all;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-bars",
    group: Group::WayOut,
    title: "Bars, covers and screens over an escape opening",
    page: "\
What
Bars, grilles, covers and screens over an escape opening or its well come off or open from inside without a key, a
tool or more force than the opening itself asks.

Why
What keeps thieves out keeps sleepers in.

Source
IRC R310.4 (2018); IRC R310.4.4 (2021); IRC R319.4.4 (2024).

How it is measured
By what is stated of the opening that a need rests on; an opening that fails is not chosen where another serves. Until it is
stated, the usual is assumed and nothing is said.

Cannot see
What hangs before the window.

Exceptions
A window that is nobody's way out.

Remedies
Hinged bars with a release inside, or none.
",
    cites: &["escape-bars"],
    check: Check::Plan(&[On::Outside], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &BARS, Value::Word("none"))),
};

const TOLD: Told = Told {
    rule: RULE.slug,
    detail: &BARS,
    fault: "has fixed bars or a fixed cover before it",
    why: "What keeps thieves out keeps sleepers in.",
};

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    TOLD.judge(sheet, candidate, |a| a.is(&["none", "released from inside without a tool"]))
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let required = Quantity::Words("none, or released from inside".to_owned());
    TOLD.check(sheet, out, &sheet.book.cite(RULE.slug), &required, judge);
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::rules::way_out::sample::{bedroom, good_window, with_window};
    use crate::testing::Sample;

    const SLUG: &str = "escape-bars";

    fn sample() -> Sample {
        bedroom(good_window())
    }

    #[test]
    fn clear_pass() {
        sample().state(&BARS, Value::Word("none")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&BARS, Value::Word("locked or fixed"));
            wrong.expect(
                SLUG,
                &["correction, measured locked or fixed, required none, or released from inside"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["none", "released from inside without a tool"] {
            sample().state(&BARS, Value::Word(good)).expect_none(SLUG);
        }
        assert_eq!(sample().state(&BARS, Value::Word("locked or fixed")).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // A second window serves as well: the other is nobody's way out.
        let wrong = sample().state(&BARS, Value::Word("locked or fixed"));
        with_window(wrong, good_window()).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&BARS, Value::Word("locked or fixed"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
