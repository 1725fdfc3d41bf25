//! Recessed lights and insulation.

use plan::detail::Value;
use plan::detail::electrical::RECESSED;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "recessed-light",
    group: Group::Electrical,
    title: "Recessed lights and insulation",
    page: "\
What
A recessed housing that is not rated for contact keeps 1/2 in from what burns and 3 in from insulation, with none
above it.

Why
It overheats under a batt.

Source
NEC 410.116 (all editions).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The housing's label.

Exceptions
Housings rated for contact with insulation.

Remedies
Housings rated for contact, or clear the insulation away.
",
    cites: &["recessed-light"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &RECESSED, Value::Word("not recessed"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &RECESSED,
        fault: "Housing that must not touch insulation lies in it",
        many: "lights",
        why: "It overheats under a batt.",
        required: Quantity::Words("rated for contact, or kept clear".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &RECESSED);
    judge(sheet, out, &sheet.book.cite("recessed-light"), &demand, elements, |a| {
        a.is(&[
            "not recessed",
            "recessed, may touch insulation",
            "recessed, kept clear of insulation",
        ])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "recessed-light";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Light)
    }

    #[test]
    fn clear_pass() {
        sample().state(&RECESSED, Value::Word("not recessed")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong =
                sample().edition(edition).state(&RECESSED, Value::Word("recessed, in insulation"));
            wrong.expect(SLUG, &["correction, measured recessed, in insulation, required rated for contact, or kept clear"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in
            ["not recessed", "recessed, may touch insulation", "recessed, kept clear of insulation"]
        {
            sample().state(&RECESSED, Value::Word(good)).expect_none(SLUG);
        }
        assert_eq!(
            sample().state(&RECESSED, Value::Word("recessed, in insulation")).findings(SLUG).len(),
            1
        );
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&RECESSED, Value::Word("recessed, in insulation"))
            .existing()
            .expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&RECESSED, Value::Word("recessed, in insulation"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
