//! Bottom plate of a framed wall.

use plan::detail::Value;
use plan::detail::wall::TREATED_PLATE;

use crate::rules::stated::{Demand, fitting, is_new, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "plate-treatment",
    group: Group::Build,
    title: "Bottom plate of a framed wall",
    page: "\
What
Plates and sleepers on a slab on the ground are of treated or durable wood, or lie on an impervious membrane.

Why
The slab is damp for as long as the house stands.

Source
IRC R317.1 item 3 (2018, 2021); IRC R304.1 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The stamp on the lumber.

Exceptions
Steel plates.

Remedies
Treated plates with fasteners made for them.
",
    cites: &["plate-treatment"],
    check,
    remedies: Some(|finding, sheet| state_all(finding, sheet, &TREATED_PLATE, Value::Word("treated wood"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &TREATED_PLATE,
        fault: "Untreated plate on the slab",
        many: "walls",
        why: "The slab is damp for as long as the house stands.",
        required: Quantity::Words("treated, or on a membrane".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &TREATED_PLATE).filter(|e| is_new(sheet, e));
    judge(sheet, out, &sheet.book.cite("plate-treatment"), &demand, elements, |a| {
        a.is(&["treated wood", "wood on a membrane", "steel"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "plate-treatment";

    fn sample() -> Sample {
        Sample::with_furring()
    }

    #[test]
    fn clear_pass() {
        sample().state(&TREATED_PLATE, Value::Word("treated wood")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong =
                sample().edition(edition).state(&TREATED_PLATE, Value::Word("untreated wood"));
            wrong.expect(
                SLUG,
                &["correction, measured untreated wood, required treated, or on a membrane"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["treated wood", "wood on a membrane", "steel"] {
            sample().state(&TREATED_PLATE, Value::Word(good)).expect_none(SLUG);
        }
        for bad in ["untreated wood"] {
            assert_eq!(sample().state(&TREATED_PLATE, Value::Word(bad)).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&TREATED_PLATE, Value::Word("untreated wood")).existing().expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&TREATED_PLATE, Value::Word("untreated wood"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
