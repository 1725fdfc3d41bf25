//! The light of an outside stair to the basement.

use plan::detail::opening::OUTSIDE_STAIR_LIGHT;
use plan::{Element, detail::Value};

use crate::rules::stated::{Demand, fitting, is_new, judge, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "outside-stair-light",
    group: Group::Electrical,
    title: "Light of an outside stair to the basement",
    page: "\
What
An outside stair that goes down to a door of the basement has a light near its bottom landing.

Why
At the bottom of the stair one looks for the key, and for the last step.

Source
IRC R303.8 (2018, 2021), R325.7 (2024, inferred), seen in an older wording; NEC 210.70(A)(2)(2).

How it is measured
By what is stated of a new door that leads outdoors. Until it is stated, no stair is taken to be there and nothing is said.

Cannot see
The stair and its light: what lies outdoors isn't drawn.

Exceptions
With the electrical code of 2023 the light of a bulkhead may be indoors, within 5 ft of the lowest riser: state it as near
the bottom.

Remedies
A light at the door, with a switch indoors.
",
    cites: &["outside-stair-light"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| {
        state_all(finding, sheet, &OUTSIDE_STAIR_LIGHT, Value::Word("near the bottom"))
    }),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &OUTSIDE_STAIR_LIGHT,
        fault: "No light at the foot of the outside stair",
        many: "doors",
        why: "At the bottom of the stair one looks for the key, and for the last step.",
        required: Quantity::Words("near the bottom".to_owned()),
        advice: false,
    };
    let outside = |e: &&Element| {
        is_new(sheet, e) && sheet.facts.opening(e.id).is_some_and(|opening| opening.outside)
    };
    let doors = fitting(sheet, &OUTSIDE_STAIR_LIGHT).filter(outside);
    judge(sheet, out, &sheet.book.cite("outside-stair-light"), &demand, doors, |a| {
        a.is(&["no stair outside", "near the bottom"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "outside-stair-light";

    fn door(light: &'static str) -> Sample {
        Sample::with_door().state(&OUTSIDE_STAIR_LIGHT, Value::Word(light))
    }

    #[test]
    fn clear_pass() {
        door("near the bottom").expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let dark = door("none").edition(edition);
            dark.expect(SLUG, &["correction, measured none, required near the bottom"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // A light at the head of the stair is not enough.
        assert_eq!(door("at the top alone").findings(SLUG).len(), 1);
        assert_eq!(door("none").remedies(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::with_door().expect_none(SLUG);
        door("none").existing().expect_none(SLUG);
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
