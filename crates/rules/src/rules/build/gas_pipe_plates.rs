//! Gas pipes near the edge of framing.

use plan::detail::wall::GAS_PIPE_DEPTH;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "gas-pipe-plates",
    group: Group::Build,
    title: "Gas pipes near the edge of framing",
    page: "\
What
A gas pipe that is not of steel and runs through framing less than 1 1/2 in behind its edge is covered by a steel plate.

Why
A screw through a gas pipe is not heard.

Source
IRC G2415.7, seen second-hand.

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The pipe and the plate: 1/16 in thick, 4 in past the plates of the wall and to each side. Newer editions refine the thickness.

Exceptions
Steel pipe.

Remedies
This is licensed work: let the gas fitter set the plates before the wall is closed.
",
    cites: &["gas-pipe-plates"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("gas-pipe-plates");
    let demand = Demand {
        rule: RULE.slug,
        detail: &GAS_PIPE_DEPTH,
        fault: "Gas pipe too near the edge",
        many: "walls",
        why: "A screw through a gas pipe is not heard.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = new_work(sheet, &GAS_PIPE_DEPTH);
    judge(sheet, out, &sheet.book.cite("gas-pipe-plates"), &demand, elements, |a| {
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

    const SLUG: &str = "gas-pipe-plates";

    fn sample() -> Sample {
        Sample::with_furring()
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample()
                .edition(edition)
                .state(&GAS_PIPE_DEPTH, Value::Length(Len::sixty_fourths(112)))
                .expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&GAS_PIPE_DEPTH, Value::Length(Len::sixty_fourths(64)));
            wrong.expect(SLUG, &["correction, measured 1\", required 1 1/2\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&GAS_PIPE_DEPTH, Value::Length(Len::sixty_fourths(96))).expect_none(SLUG);
        let over = sample()
            .edition(Edition::E2021)
            .state(&GAS_PIPE_DEPTH, Value::Length(Len::sixty_fourths(95)));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&GAS_PIPE_DEPTH, Value::Length(Len::sixty_fourths(64)))
            .existing()
            .expect_none(SLUG);
    }
}
