//! Way out through a garage.

use plan::detail::stair::LEADS_UP;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, fitting, judge};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "way-through-garage",
    group: Group::Stairs,
    title: "Way out through a garage",
    page: "\
What
The way from the basement to the required egress door does not lead through a garage.

Why
A garage burns fast, and its big door is no door to flee by.

Source
IRC R311.1 (2018, 2021), R318.1 (2024), from memory.

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The floor above. Rooms on the way.

Exceptions
A second stair beside the way out.

Remedies
A stair that arrives in the house, or a door from the basement to the open.
",
    cites: &["way-through-garage"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &LEADS_UP,
        fault: "The way out leads through a garage",
        many: "stairs",
        why: "A garage burns fast, and its big door is no door to flee by.",
        required: Quantity::Words("into the house".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &LEADS_UP);
    judge(sheet, out, &sheet.book.cite("way-through-garage"), &demand, elements, |a| {
        a.is(&["the house"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "way-through-garage";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample().edition(edition).state(&LEADS_UP, Value::Word("the house")).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&LEADS_UP, Value::Word("a garage"));
            wrong.expect(SLUG, &["correction, measured a garage, required into the house"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&LEADS_UP, Value::Word("the house")).expect_none(SLUG);
        let over = sample().edition(Edition::E2021).state(&LEADS_UP, Value::Word("a garage"));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
