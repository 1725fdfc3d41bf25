//! Label of a radon pipe.

use plan::detail::Value;
use plan::detail::plumbing::RADON_LABEL;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "radon-label",
    group: Group::Heat,
    title: "Label of a radon pipe",
    page: "\
What
An exposed radon pipe carries a label on each floor.

Why
Somebody will else cut it or drain a sink into it.

Source
IRC AF103.5 (2018, 2021); IRC BE103 (2024).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The label.

Exceptions
None.

Remedies
Label it, and leave the label in sight.
",
    cites: &["radon-label"],
    check,
    remedies: Some(|finding, sheet| state_all(finding, sheet, &RADON_LABEL, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &RADON_LABEL,
        fault: "Radon pipe without a label in sight",
        many: "pipes",
        why: "Somebody will else cut it or drain a sink into it.",
        required: Quantity::Words("in sight on each floor".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &RADON_LABEL);
    judge(sheet, out, &sheet.book.cite("radon-label"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "radon-label";

    fn sample() -> Sample {
        Sample::with(ServiceKind::RadonPipe)
    }

    #[test]
    fn clear_pass() {
        sample().state(&RADON_LABEL, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&RADON_LABEL, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required in sight on each floor"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The usual is assumed until it is stated otherwise.
        sample().expect_none(SLUG);
        assert_eq!(sample().state(&RADON_LABEL, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&RADON_LABEL, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
