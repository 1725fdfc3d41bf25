//! Cleaning of the condensate drain.

use plan::detail::heat::CONDENSATE_CLEANED;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "condensate-cleaned",
    group: Group::Heat,
    title: "Cleaning of the condensate drain",
    page: "\
What
The condensate drain of a furnace or cooling unit can be cleared without cutting it.

Why
Slime stops the drain every few summers, and the water runs over the floor.

Source
IRC M1411.3.3.

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The drain.

Exceptions
None.

Remedies
A tee with a cap, or a union, at the unit.
",
    cites: &["condensate-cleaned"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &CONDENSATE_CLEANED,
        fault: "Condensate drain can only be cut",
        many: "furnaces",
        why: "Slime stops the drain every few summers, and the water runs over the floor.",
        required: Quantity::Words("cleared without cutting".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &CONDENSATE_CLEANED);
    judge(sheet, out, &sheet.book.cite("condensate-cleaned"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "condensate-cleaned";

    fn sample() -> Sample {
        Sample::with(plan::element::ServiceKind::Furnace)
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample().edition(edition).state(&CONDENSATE_CLEANED, Value::Yes).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&CONDENSATE_CLEANED, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required cleared without cutting"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&CONDENSATE_CLEANED, Value::Yes).expect_none(SLUG);
        let over = sample().edition(Edition::E2021).state(&CONDENSATE_CLEANED, Value::No);
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&CONDENSATE_CLEANED, Value::No).existing().expect_none(SLUG);
    }
}
