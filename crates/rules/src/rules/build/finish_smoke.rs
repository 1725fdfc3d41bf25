//! Smoke of wall finish.

use plan::detail::wall::FINISH_SMOKE;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "finish-smoke",
    group: Group::Build,
    title: "Smoke of wall finish",
    page: "\
What
A finish on a wall has a smoke-developed index of at most 450.

Why
Panelling that burns fast or smokes much leaves no time to get out.

Source
IRC R302.9, from memory.

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The finish: its label or test report tells. Paint and paper that are thin are not meant.

Exceptions
Trim, doors and windows.

Remedies
Another finish, or board below a thin one.
",
    cites: &["finish-smoke"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.count("finish-smoke");
    let demand = Demand {
        rule: RULE.slug,
        detail: &FINISH_SMOKE,
        fault: "Finish smokes too much",
        many: "walls",
        why: "Panelling that burns fast or smokes much leaves no time to get out.",
        required: Quantity::Words(format!("{} or less", limit.value)),
        advice: false,
    };
    let elements = new_work(sheet, &FINISH_SMOKE);
    judge(sheet, out, &sheet.book.cite("finish-smoke"), &demand, elements, |a| {
        a.number().is_some_and(|n| n <= limit.value)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "finish-smoke";

    fn sample() -> Sample {
        Sample::with_furring()
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample().edition(edition).state(&FINISH_SMOKE, Value::Number(225)).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&FINISH_SMOKE, Value::Number(550));
            wrong.expect(SLUG, &["correction, measured 550, required 450 or less"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&FINISH_SMOKE, Value::Number(450)).expect_none(SLUG);
        let over = sample().edition(Edition::E2021).state(&FINISH_SMOKE, Value::Number(451));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&FINISH_SMOKE, Value::Number(550)).existing().expect_none(SLUG);
    }
}
