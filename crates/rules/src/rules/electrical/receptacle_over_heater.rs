//! Receptacle over a baseboard heater.

use plan::detail::electrical::OVER_HEATER;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "receptacle-over-heater",
    group: Group::Electrical,
    title: "Receptacle over a baseboard heater",
    page: "\
What
No receptacle is set over an electric baseboard heater.

Why
A cord that hangs on the heater melts.

Source
NEC 210.52 (note) and the listing of heaters.

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The heater: it is stated at the receptacle. A receptacle in the heater itself counts as one of the wall.

Exceptions
Heaters whose maker allows it.

Remedies
Move the receptacle beside the heater, or use the one that the maker builds in.
",
    cites: &["receptacle-over-heater"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &OVER_HEATER,
        fault: "Over a heater",
        many: "receptacles",
        why: "A cord that hangs on the heater melts.",
        required: Quantity::Words("not over a heater".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &OVER_HEATER);
    judge(sheet, out, &sheet.book.cite("receptacle-over-heater"), &demand, elements, |a| {
        a.yes() == Some(false)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "receptacle-over-heater";

    fn sample() -> Sample {
        Sample::with(plan::element::ServiceKind::Receptacle)
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample().edition(edition).state(&OVER_HEATER, Value::No).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&OVER_HEATER, Value::Yes);
            wrong.expect(SLUG, &["correction, measured yes, required not over a heater"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&OVER_HEATER, Value::No).expect_none(SLUG);
        let over = sample().edition(Edition::E2021).state(&OVER_HEATER, Value::Yes);
        assert_eq!(over.findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        sample().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&OVER_HEATER, Value::Yes).existing().expect_none(SLUG);
    }
}
