//! Fasteners in treated wood.

use plan::detail::Value;
use plan::detail::wall::FASTENERS;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "treated-fasteners",
    group: Group::Build,
    title: "Fasteners in treated wood",
    page: "\
What
Nails, pins and screws in treated wood are of hot-dip galvanised or stainless steel, or rated for it.

Why
The salts of the wood eat plain steel.

Source
IRC R317.3 (2018, 2021), R304.3 (2024), from memory.

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The fasteners.

Exceptions
Bolts of 1/2 in and larger.

Remedies
Take the fasteners that the box names for treated wood.
",
    cites: &["treated-fasteners"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &FASTENERS, Value::Word("hot-dip zinc or stainless"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &FASTENERS,
        fault: "Fasteners that rust",
        many: "walls",
        why: "The salts of the wood eat plain steel.",
        required: Quantity::Words("hot-dip zinc, stainless or rated".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &FASTENERS);
    judge(sheet, out, &sheet.book.cite("treated-fasteners"), &demand, elements, |a| {
        a.is(&["hot-dip zinc or stainless", "rated for treated wood"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "treated-fasteners";

    fn sample() -> Sample {
        Sample::with_furring()
            .state(&plan::detail::wall::TREATED_PLATE, Value::Word("treated wood"))
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample()
                .edition(edition)
                .state(&FASTENERS, Value::Word("rated for treated wood"))
                .expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong =
                sample().edition(edition).state(&FASTENERS, Value::Word("plain or bright steel"));
            wrong.expect(SLUG, &["correction, measured plain or bright steel, required hot-dip zinc, stainless or rated"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&FASTENERS, Value::Word("hot-dip zinc or stainless")).expect_none(SLUG);
        let over = sample()
            .edition(Edition::E2021)
            .state(&FASTENERS, Value::Word("plain or bright steel"));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&FASTENERS, Value::Word("plain or bright steel"))
            .existing()
            .expect_none(SLUG);
        // Without treated wood nothing is asked.
        Sample::with_furring()
            .state(&FASTENERS, Value::Word("plain or bright steel"))
            .expect_none(SLUG);
    }
}
