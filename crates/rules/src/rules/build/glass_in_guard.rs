//! Glass in a guard.

use plan::detail::stair::GUARD_GLASS;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "glass-in-guard",
    group: Group::Build,
    title: "Glass in a guard",
    page: "\
What
Glass in a guard or rail of a stair is safety glass.

Why
Who falls against the guard must not fall through it.

Source
IRC R308.4.4 (2018, 2021), R324.4 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The pane and its mark.

Exceptions
None.

Remedies
Safety glass, made for guards.
",
    cites: &["glass-in-guard"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &GUARD_GLASS,
        fault: "Plain glass in the guard",
        many: "stairs",
        why: "Who falls against the guard must not fall through it.",
        required: Quantity::Words("safety glass".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &GUARD_GLASS);
    judge(sheet, out, &sheet.book.cite("glass-in-guard"), &demand, elements, |a| {
        a.is(&["none", "safety glass"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "glass-in-guard";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample()
                .edition(edition)
                .state(&GUARD_GLASS, Value::Word("safety glass"))
                .expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&GUARD_GLASS, Value::Word("plain glass"));
            wrong.expect(SLUG, &["correction, measured plain glass, required safety glass"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&GUARD_GLASS, Value::Word("none")).expect_none(SLUG);
        let over = sample().edition(Edition::E2021).state(&GUARD_GLASS, Value::Word("plain glass"));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&GUARD_GLASS, Value::Word("plain glass")).existing().expect_none(SLUG);
    }
}
