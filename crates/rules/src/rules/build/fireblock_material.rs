//! Material of fireblocking.

use plan::detail::wall::FIREBLOCK_OF;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "fireblock-material",
    group: Group::Build,
    title: "Material of fireblocking",
    page: "\
What
The space behind the studs is closed with 2x lumber, two 1x lapped, 1/2 in board, a 23/32 in wood panel, or fibre batts of at
least 16 in that are held in place.

Why
Foam melts and loose fibre falls out, and the fire goes up behind the wall.

Source
IRC R302.11.1, in part from memory.

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The fireblocking.

Exceptions
Further materials of the text: 3/4 in particleboard, 1/4 in cement board.

Remedies
Board or lumber, sealed at its edges.
",
    cites: &["fireblock-material"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &FIREBLOCK_OF,
        fault: "Fireblocking that burns or falls",
        many: "walls",
        why: "Foam melts and loose fibre falls out, and the fire goes up behind the wall.",
        required: Quantity::Words("lumber, board or batts".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &FIREBLOCK_OF);
    judge(sheet, out, &sheet.book.cite("fireblock-material"), &demand, elements, |a| {
        !a.is(&["foam, or loose fibre"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "fireblock-material";

    fn sample() -> Sample {
        Sample::with_furring().state(&plan::detail::wall::FIREBLOCKED, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample()
                .edition(edition)
                .state(&FIREBLOCK_OF, Value::Word("board 1/2 in"))
                .expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong =
                sample().edition(edition).state(&FIREBLOCK_OF, Value::Word("foam, or loose fibre"));
            wrong.expect(
                SLUG,
                &["correction, measured foam, or loose fibre, required lumber, board or batts"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        sample()
            .state(&FIREBLOCK_OF, Value::Word("fibre batts, 16 in, held in place"))
            .expect_none(SLUG);
        let over = sample()
            .edition(Edition::E2021)
            .state(&FIREBLOCK_OF, Value::Word("foam, or loose fibre"));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&FIREBLOCK_OF, Value::Word("foam, or loose fibre"))
            .existing()
            .expect_none(SLUG);
    }
}
