//! Steps in a well in the place of a ladder.

use measure::Len;
use plan::detail::Detail;
use plan::detail::opening::{STEPS_RISER, STEPS_TREAD, STEPS_WIDTH};

use crate::rules::stated::{Demand, fitting, judge};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "well-steps",
    group: Group::WayOut,
    title: "Steps of a well",
    page: "\
What
Steps in a well in the place of a ladder are at least 12 in wide and 5 in deep, and at most 18 in high.

Why
A foot that finds too little step slips, and a child can't climb a high one.

Source
IRC R310.4.2.2 (2021) and R319.4.2.2 (2024), both from memory; the 2018 edition has no figures of its own for steps.

How it is measured
By what is stated of them, once it is stated that the well has steps. Until it is stated, the usual is assumed and nothing
is said.

Cannot see
That they go up the full height of the well.

Exceptions
Ladders have rules of their own. Steps of a well need not meet the rules for stairs.

Remedies
Build the steps anew, or fit a ladder.
",
    cites: &["well-steps", "well-steps-width", "well-steps-tread", "well-steps-riser"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if sheet.book.count("well-steps").value == 0 {
        return;
    }
    let mut hold =
        |slug: &'static str, detail: &'static Detail, fault, good: fn(Len, Len) -> bool| {
            let limit = sheet.book.len(slug);
            let demand = Demand {
                rule: RULE.slug,
                detail,
                fault,
                many: "wells",
                why: "A foot that finds too little step slips, and a child can't climb a high one.",
                required: Quantity::Len(limit.value),
                advice: false,
            };
            judge(sheet, out, &limit.citation, &demand, fitting(sheet, detail), |a| {
                a.len().is_some_and(|len| good(len, limit.value))
            });
        };
    hold("well-steps-width", &STEPS_WIDTH, "Steps too narrow", |len, limit| len >= limit);
    hold("well-steps-tread", &STEPS_TREAD, "Steps too shallow", |len, limit| len >= limit);
    hold("well-steps-riser", &STEPS_RISER, "Steps too high", |len, limit| len <= limit);
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::detail::opening::{LADDER_WIDTH, WELL_CLIMB};

    use super::*;
    use crate::testing::{Sample, inch};

    const SLUG: &str = "well-steps";

    fn steps() -> Sample {
        Sample::with_well(true).state(&WELL_CLIMB, Value::Word("steps"))
    }

    fn of(detail: &'static Detail, inches: f64) -> Sample {
        steps().state(detail, Value::Length(inch(inches)))
    }

    #[test]
    fn clear_pass() {
        steps().expect_none(SLUG);
        of(&STEPS_WIDTH, 24.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in [Edition::E2021, Edition::E2024] {
            let wrong = |detail, inches| of(detail, inches).edition(edition);
            wrong(&STEPS_WIDTH, 10.0).expect(SLUG, &["correction, measured 10\", required 12\""]);
            wrong(&STEPS_TREAD, 4.0).expect(SLUG, &["correction, measured 4\", required 5\""]);
            wrong(&STEPS_RISER, 20.0).expect(SLUG, &["correction, measured 20\", required 18\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        let over = |detail, inches, by: i32| {
            let len = Len::inches(inches) + Len::from_units(by);
            steps().state(detail, Value::Length(len)).edition(Edition::E2021)
        };
        for (detail, inches, worse) in
            [(&STEPS_WIDTH, 12, -1), (&STEPS_TREAD, 5, -1), (&STEPS_RISER, 18, 1)]
        {
            over(detail, inches, 0).expect_none(SLUG);
            assert_eq!(over(detail, inches, worse).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn the_2018_edition_has_no_figures_for_steps() {
        of(&STEPS_RISER, 20.0).edition(Edition::E2018).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        // A ladder has no steps, and steps have no rungs.
        let ladder = Sample::with_well(true).state(&STEPS_RISER, Value::Length(inch(20.0)));
        ladder.edition(Edition::E2021).expect_none(SLUG);
        of(&LADDER_WIDTH, 4.0).expect_none("ladder-width");
        Sample::with_well(false).expect_none(SLUG);
    }
}
