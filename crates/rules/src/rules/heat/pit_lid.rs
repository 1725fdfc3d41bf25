//! Sealed lid of a pit.

use plan::detail::Value;
use plan::detail::plumbing::SEALED_LID;

use crate::rules::stated::{Demand, fitting, is_new, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "pit-lid",
    group: Group::Heat,
    title: "Sealed lid of a pit",
    page: "\
What
An ejector pit has a gastight lid; a sump in a finished basement, or in a house with a radon system, a rigid lid that
is sealed and can be taken off.

Why
Sewer gas and radon come up through it, and a child falls into an open one.

Source
IRC P3303.1.2 (all editions).

How it is measured
By what is stated of it, for new work. Until it is stated, one finding asks for all such elements.

Cannot see
The lid.

Exceptions
A sump in bare floor without a radon system.

Remedies
A rigid lid with a gasket.
",
    cites: &["pit-lid"],
    check,
    remedies: Some(|finding, sheet| state_all(finding, sheet, &SEALED_LID, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &SEALED_LID,
        fault: "Pit without a sealed lid",
        many: "pits",
        why: "Sewer gas and radon come up through it, and a child falls into an open one.",
        required: Quantity::Words("rigid, sealed, comes off".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &SEALED_LID).filter(|e| is_new(sheet, e));
    judge(sheet, out, &sheet.book.cite("pit-lid"), &demand, elements, |a| a.yes() == Some(true));
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "pit-lid";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Sump)
    }

    #[test]
    fn clear_pass() {
        sample().state(&SEALED_LID, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&SEALED_LID, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required rigid, sealed, comes off"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Nothing is assumed: what is not stated is asked for, once.
        sample().expect(SLUG, &["verify, measured not stated, required rigid, sealed, comes off"]);
        sample().state(&SEALED_LID, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&SEALED_LID, Value::No).existing().expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&SEALED_LID, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
