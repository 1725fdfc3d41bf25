//! Nosing of a stair.

use plan::detail::stair::NOSING;
use plan::element::BodyKind;
use plan::{Body, Element};

use crate::rules::stated::{Demand, fitting, is_new, judge};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-nosing",
    group: Group::Stairs,
    title: "Nosing of a stair",
    page: "\
What
A nosing projects 3/4 in to 1 1/4 in.

Why
One that is too short or too long catches the heel or the toe.

Source
IRC R311.7.5.3 (2018, 2021); IRC R318.7.5.3 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
Bevels and radii.

Exceptions
Treads of 11 in or more need no nosing: one shorter than 3/4 in is let be there.

Remedies
Other treads.
",
    cites: &["stair-nosing-least", "stair-nosing-most", "stair-nosing-tread"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let (least, most) = (sheet.book.len("stair-nosing-least"), sheet.book.len("stair-nosing-most"));
    let range = least.value..=most.value;
    let demand = Demand {
        rule: RULE.slug,
        detail: &NOSING,
        fault: "Nosing out of range",
        many: "stairs",
        why: "One that is too short or too long catches the heel or the toe.",
        required: Quantity::Words("3/4 in to 1 1/4 in".to_owned()),
        advice: false,
    };
    // A tread of 11 in needs no nosing, so that a short one is none; too long a one still is.
    let deep = sheet.book.length("stair-nosing-tread");
    let spared = |e: &Element| match &e.body {
        Body::Stair(stair) => {
            let short = sheet.ask(e, &NOSING).len().is_some_and(|len| len < least.value);
            stair.run >= deep && short
        }
        _ => false,
    };
    let elements = fitting(sheet, &NOSING).filter(|e| is_new(sheet, e) && !spared(e));
    judge(sheet, out, &sheet.book.cite("stair-nosing-least"), &demand, elements, |a| {
        a.len().is_some_and(|len| range.contains(&len))
    });
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "stair-nosing";

    fn sample() -> Sample {
        Sample::with_stair()
    }

    #[test]
    fn clear_pass() {
        sample().state(&NOSING, Value::Length(Len::sixty_fourths(48))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&NOSING, Value::Length(Len::sixty_fourths(80) + Len::inches(1)));
            wrong.expect(SLUG, &["correction, measured 2 1/4\", required 3/4 in to 1 1/4 in"]);
        }
    }

    #[test]
    fn at_the_limit() {
        for good in [Len::sixty_fourths(48), Len::sixty_fourths(80)] {
            sample().state(&NOSING, Value::Length(good)).expect_none(SLUG);
        }
        for bad in [Len::sixty_fourths(48) - Len::UNIT, Len::sixty_fourths(80) + Len::UNIT] {
            let off = sample().state(&NOSING, Value::Length(bad));
            assert_eq!(off.findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn a_deep_tread_needs_no_nosing() {
        let deep = |run: f64, nosing: i32| {
            sample()
                .tune(|e| match &mut e.body {
                    Body::Stair(stair) => stair.run = crate::testing::inch(run),
                    other => panic!("{}", other.word()),
                })
                .state(&NOSING, Value::Length(Len::sixty_fourths(nosing)))
        };
        deep(11.0, 0).expect_none(SLUG);
        assert_eq!(deep(10.984375, 0).findings(SLUG).len(), 1);
        assert_eq!(deep(11.0, 128).findings(SLUG).len(), 1, "too long");
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&NOSING, Value::Length(Len::sixty_fourths(80) + Len::inches(1)))
            .existing()
            .expect_none(SLUG);
    }
}
