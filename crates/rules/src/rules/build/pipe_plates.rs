//! Pipes near the face of framing.

use plan::detail::wall::PIPE_DEPTH;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "pipe-plates",
    group: Group::Build,
    title: "Pipes near the face of framing",
    page: "\
What
A water or drain pipe that runs through framing less than 1 1/4 in behind its face is covered by a steel plate.

Why
A screw for the board finds the pipe, and the leak is found months later.

Source
IRC P2603.2.1.

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The pipe and the plate: the plate is 16 gauge and reaches 2 in past the plates of the wall.

Exceptions
Pipes of cast iron or galvanised steel.

Remedies
Steel plates over the pipe, or a hole nearer to the middle.
",
    cites: &["pipe-plates"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("pipe-plates");
    let demand = Demand {
        rule: RULE.slug,
        detail: &PIPE_DEPTH,
        fault: "Pipe too near the face",
        many: "walls",
        why: "A screw for the board finds the pipe, and the leak is found months later.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = new_work(sheet, &PIPE_DEPTH);
    judge(sheet, out, &sheet.book.cite("pipe-plates"), &demand, elements, |a| {
        a.len().is_some_and(|len| len >= limit.value)
    });
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "pipe-plates";

    fn sample() -> Sample {
        Sample::with_furring()
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample()
                .edition(edition)
                .state(&PIPE_DEPTH, Value::Length(Len::sixty_fourths(96)))
                .expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong =
                sample().edition(edition).state(&PIPE_DEPTH, Value::Length(Len::sixty_fourths(48)));
            wrong.expect(SLUG, &["correction, measured 3/4\", required 1 1/4\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&PIPE_DEPTH, Value::Length(Len::sixty_fourths(80))).expect_none(SLUG);
        let over = sample()
            .edition(Edition::E2021)
            .state(&PIPE_DEPTH, Value::Length(Len::sixty_fourths(79)));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&PIPE_DEPTH, Value::Length(Len::sixty_fourths(48)))
            .existing()
            .expect_none(SLUG);
    }
}
