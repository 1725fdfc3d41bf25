//! Lean of the risers.

use plan::detail::stair::RISER_LEAN;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "riser-lean",
    group: Group::Stairs,
    title: "Lean of the risers",
    page: "\
What
A riser leans at most 30 degrees from the vertical.

Why
A foot catches under a riser that leans far back.

Source
IRC R311.7.5.1 (2018, 2021), R318.7.5.1 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The built stair.

Exceptions
None.

Remedies
Set the risers upright.
",
    cites: &["riser-lean"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.count("riser-lean");
    let demand = Demand {
        rule: RULE.slug,
        detail: &RISER_LEAN,
        fault: "Risers lean too far",
        many: "stairs",
        why: "A foot catches under a riser that leans far back.",
        required: Quantity::Words(format!("{} °", limit.value)),
        advice: false,
    };
    let elements = new_work(sheet, &RISER_LEAN);
    judge(sheet, out, &sheet.book.cite("riser-lean"), &demand, elements, |a| {
        a.number().is_some_and(|n| n <= limit.value)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "riser-lean";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample().edition(edition).state(&RISER_LEAN, Value::Number(10)).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&RISER_LEAN, Value::Number(35));
            wrong.expect(SLUG, &["correction, measured 35 °, required 30 °"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&RISER_LEAN, Value::Number(30)).expect_none(SLUG);
        let over = sample().edition(Edition::E2021).state(&RISER_LEAN, Value::Number(31));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&RISER_LEAN, Value::Number(35)).existing().expect_none(SLUG);
    }
}
