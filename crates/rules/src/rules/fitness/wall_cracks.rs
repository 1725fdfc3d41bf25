//! Cracks that an engineer sees before the wall is covered.

use plan::detail::wall::CRACKS;

use crate::rules::stated::{Demand, fitting, judge};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "wall-cracks",
    group: Group::Fitness,
    title: "Cracks in a foundation wall",
    page: "\
What
A crack that runs level, whose sides are offset, or that is wider than 1/4 in, and a wall that bows are seen by an engineer
before anything is framed before them. A crack that leaks is sealed and its cause outside is cured.

Why
Framing hides a wall that is giving way.

Source
Derived from guides on cracks in concrete (classes by width; repair by injection).

How it is measured
By what is stated of each foundation wall.

Cannot see
The wall.

Exceptions
Hairline upright cracks that stay dry.

Remedies
An engineer for the structure; injection of polyurethane for a leak, of epoxy for a dry crack.
",
    cites: &["wall-cracks"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &CRACKS,
        fault: "A crack to be seen before it is covered",
        many: "foundation walls",
        why: "Framing hides a wall that is giving way.",
        required: Quantity::Words("none, or dry hairlines".to_owned()),
        advice: true,
    };
    let walls = fitting(sheet, &CRACKS);
    judge(sheet, out, &sheet.book.cite("wall-cracks"), &demand, walls, |a| {
        a.is(&["none, or dry hairlines"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "wall-cracks";

    fn wall(cracks: &'static str) -> Sample {
        Sample::room(144.0, 120.0).state(&CRACKS, Value::Word(cracks))
    }

    #[test]
    fn clear_pass() {
        wall("none, or dry hairlines").expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let bowed = wall("level, offset or bowed").edition(edition);
            bowed.expect(
                SLUG,
                &["advice, measured level, offset or bowed, required none, or dry hairlines"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // The line runs between the answers.
        for cracks in ["leaks", "over 1/4 in", "level, offset or bowed"] {
            assert_eq!(wall(cracks).findings(SLUG).len(), 1, "{cracks}");
        }
    }

    #[test]
    fn does_not_apply() {
        // Sound walls are assumed until it is stated.
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
