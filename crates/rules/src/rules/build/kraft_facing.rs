//! Facing of insulation left bare.

use plan::detail::Value;
use plan::detail::wall::FACING;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "kraft-facing",
    group: Group::Build,
    title: "Facing of insulation left bare",
    page: "\
What
Kraft and foil facings of insulation touch the finish that covers them; left bare they must have a flame-spread index
of 25 or less.

Why
Kraft paper burns like tar.

Source
IRC R302.10 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The facing's rating.

Exceptions
Facings listed to stay bare.

Remedies
Board over it, or unfaced insulation.
",
    cites: &["kraft-facing"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &FACING, Value::Word("none left bare"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &FACING,
        fault: "Bare kraft facing",
        many: "runs of furring",
        why: "Kraft paper burns like tar.",
        required: Quantity::Words("covered, or rated to stay bare".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &FACING);
    judge(sheet, out, &sheet.book.cite("kraft-facing"), &demand, elements, |a| {
        a.is(&["none left bare"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "kraft-facing";

    fn sample() -> Sample {
        Sample::with_furring()
    }

    #[test]
    fn clear_pass() {
        sample().state(&FACING, Value::Word("none left bare")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&FACING, Value::Word("bare kraft or foil"));
            wrong.expect(SLUG, &["correction, measured bare kraft or foil, required covered, or rated to stay bare"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        sample().state(&FACING, Value::Word("none left bare")).expect_none(SLUG);
        assert_eq!(
            sample().state(&FACING, Value::Word("bare kraft or foil")).findings(SLUG).len(),
            1
        );
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&FACING, Value::Word("bare kraft or foil"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
