//! Light on the treads of a stair.

use plan::detail::stair::TREAD_LIGHT;
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "tread-light",
    group: Group::Stairs,
    title: "Light on the treads of a stair",
    page: "\
What
Lamps give at least 1 footcandle (11 lux) at the middle of each tread and landing.

Why
The foot finds the edge by sight.

Source
IRC R303.7 (2018, 2021), R325.6 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The lamps: measure at night on the darkest tread.

Exceptions
None.

Remedies
A brighter or a second lamp.
",
    cites: &["tread-light"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.count("tread-light");
    let demand = Demand {
        rule: RULE.slug,
        detail: &TREAD_LIGHT,
        fault: "Too little light on the treads",
        many: "stairs",
        why: "The foot finds the edge by sight.",
        required: Quantity::Words(format!("{} tenths fc", limit.value)),
        advice: false,
    };
    let elements = new_work(sheet, &TREAD_LIGHT);
    judge(sheet, out, &sheet.book.cite("tread-light"), &demand, elements, |a| {
        a.number().is_some_and(|n| n >= limit.value)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "tread-light";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample().edition(edition).state(&TREAD_LIGHT, Value::Number(30)).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&TREAD_LIGHT, Value::Number(5));
            wrong.expect(SLUG, &["correction, measured 5 tenths fc, required 10 tenths fc"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&TREAD_LIGHT, Value::Number(10)).expect_none(SLUG);
        let over = sample().edition(Edition::E2021).state(&TREAD_LIGHT, Value::Number(9));
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&TREAD_LIGHT, Value::Number(5)).existing().expect_none(SLUG);
    }
}
