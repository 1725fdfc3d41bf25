//! A way into a shower that is too narrow.

use plan::detail::plumbing::SHOWER_WAY;

use crate::rules::stated::{Demand, fitting, is_new, judge};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "shower-door",
    group: Group::Build,
    title: "Way into a shower",
    page: "\
What
The way into a shower is clear over at least 22 in; a door swings outwards.

Why
Who falls in it must be helped out.

Source
IRC P2708.1.1: 2018 to 2024.

How it is measured
By what is stated of each new shower. Nothing is said until it is.

Cannot see
Which way the door swings.

Exceptions
Open showers.

Remedies
A wider door.
",
    cites: &["shower-door"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("shower-door");
    let demand = Demand {
        rule: RULE.slug,
        detail: &SHOWER_WAY,
        fault: "Way into the shower too narrow",
        many: "showers",
        why: "Who falls in it must be helped out.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let stated = |e: &&plan::Element| is_new(sheet, e) && sheet.ask(e, &SHOWER_WAY).stated;
    let showers = fitting(sheet, &SHOWER_WAY).filter(stated);
    judge(sheet, out, &limit.citation, &demand, showers, |a| {
        a.len().is_some_and(|len| len >= limit.value)
    });
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::detail::Value;
    use plan::{Body, Edition};

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "shower-door";

    fn bare() -> Sample {
        Sample::room(144.0, 120.0)
            .furnishing(at(72.0, 0.0), Facing::NORTH, 36.0, 36.0)
            .fresh()
            .tune(|e| match &mut e.body {
                Body::Furnishing(f) => f.name = "Shower".into(),
                other => panic!("{}", other.word()),
            })
    }

    fn shower(way: Len) -> Sample {
        bare().state(&SHOWER_WAY, Value::Length(way))
    }

    #[test]
    fn clear_pass() {
        shower(inch(24.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let narrow = shower(inch(20.0)).edition(edition);
            narrow.expect(SLUG, &["correction, measured 20\", required 22\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        shower(inch(22.0)).expect_none(SLUG);
        assert_eq!(shower(inch(22.0) - Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        bare().expect_none(SLUG);
        shower(inch(20.0)).existing().expect_none(SLUG);
    }
}
