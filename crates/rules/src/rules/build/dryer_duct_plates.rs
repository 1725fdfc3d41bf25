//! Dryer's duct near the face of framing.

use plan::detail::wall::DRYER_DUCT_DEPTH;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "dryer-duct-plates",
    group: Group::Build,
    title: "Dryer's duct near the face of framing",
    page: "\
What
A dryer's duct that runs in a wall less than 1 1/4 in behind the face of the framing is covered by a steel plate.

Why
A screw in the duct catches lint, and lint burns.

Source
IRC M1502.5.

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The duct and the plate, which is 0.062 in thick.

Exceptions
None.

Remedies
Steel plates over the duct, or a deeper wall.
",
    cites: &["dryer-duct-plates"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("dryer-duct-plates");
    let demand = Demand {
        rule: RULE.slug,
        detail: &DRYER_DUCT_DEPTH,
        fault: "Duct too near the face",
        many: "walls",
        why: "A screw in the duct catches lint, and lint burns.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = new_work(sheet, &DRYER_DUCT_DEPTH);
    judge(sheet, out, &sheet.book.cite("dryer-duct-plates"), &demand, elements, |a| {
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

    const SLUG: &str = "dryer-duct-plates";

    fn sample() -> Sample {
        Sample::with_furring()
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample()
                .edition(edition)
                .state(&DRYER_DUCT_DEPTH, Value::Length(Len::sixty_fourths(96)))
                .expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&DRYER_DUCT_DEPTH, Value::Length(Len::sixty_fourths(32)));
            wrong.expect(SLUG, &["correction, measured 1/2\", required 1 1/4\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&DRYER_DUCT_DEPTH, Value::Length(Len::sixty_fourths(80))).expect_none(SLUG);
        let over = sample()
            .edition(Edition::E2021)
            .state(&DRYER_DUCT_DEPTH, Value::Length(Len::sixty_fourths(79)));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&DRYER_DUCT_DEPTH, Value::Length(Len::sixty_fourths(32)))
            .existing()
            .expect_none(SLUG);
    }
}
