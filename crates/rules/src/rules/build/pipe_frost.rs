//! Water pipe in an outer wall.

use plan::detail::wall::PIPE_IN_WALL;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "pipe-frost",
    group: Group::Build,
    title: "Water pipe in an outer wall",
    page: "\
What
A water or drain pipe in the furring of a foundation wall runs on the warm side of the insulation.

Why
Between the insulation and the concrete it freezes, and the leak is found in spring.

Source
IRC P2603.5.

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The pipe and how cold the concrete gets.

Exceptions
Pipes that are protected from frost in another way.

Remedies
Move the pipe to the room side, or out of the outer wall.
",
    cites: &["pipe-frost"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &PIPE_IN_WALL,
        fault: "Pipe on the cold side",
        many: "walls",
        why: "Between the insulation and the concrete it freezes, and the leak is found in spring.",
        required: Quantity::Words("on the warm side".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &PIPE_IN_WALL);
    judge(sheet, out, &sheet.book.cite("pipe-frost"), &demand, elements, |a| {
        a.is(&["none", "on the warm side"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "pipe-frost";

    fn sample() -> Sample {
        Sample::with_furring()
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample()
                .edition(edition)
                .state(&PIPE_IN_WALL, Value::Word("on the warm side"))
                .expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong =
                sample().edition(edition).state(&PIPE_IN_WALL, Value::Word("against the concrete"));
            wrong.expect(
                SLUG,
                &["correction, measured against the concrete, required on the warm side"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&PIPE_IN_WALL, Value::Word("none")).expect_none(SLUG);
        let over = sample()
            .edition(Edition::E2021)
            .state(&PIPE_IN_WALL, Value::Word("against the concrete"));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&PIPE_IN_WALL, Value::Word("against the concrete"))
            .existing()
            .expect_none(SLUG);
    }
}
