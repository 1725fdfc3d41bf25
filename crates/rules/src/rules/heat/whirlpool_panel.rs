//! The pump of a whirlpool tub that nobody reaches.

use plan::detail::plumbing::WHIRLPOOL;

use super::told::{self, Demand, Good};
use crate::rules::stated::fitting;
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "whirlpool-panel",
    group: Group::Heat,
    title: "Panel at a whirlpool tub",
    page: "\
What
The pump of a whirlpool tub is reached by a panel of 12 in by 12 in, of 18 in by 18 in where the pump is more than 2 ft from it;
or as the maker says.

Why
A pump that fails behind tiles takes the tiles with it.

Source
IRC P2720.1: 2018 to 2024.

How it is measured
By what is stated of each furnishing called a tub.

Cannot see
What the maker asks for.

Exceptions
A maker's own size.

Remedies
A larger panel, or one beside the pump.
",
    cites: &["whirlpool-panel", "whirlpool-panel-far"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, &DEMANDS[..1])),
};

const WHY: &str = "A pump that fails behind tiles takes the tiles with it.";

const ENOUGH: &[&str] = &["panel of 18 in", "near panel of 12 in", "no pump"];

const DEMANDS: &[Demand] = &[
    Demand {
        rule: RULE.slug,
        limit: "whirlpool-panel",
        detail: &WHIRLPOOL,
        good: Good::Words(ENOUGH),
        fails: "has no panel at its pump",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "whirlpool-panel-far",
        detail: &WHIRLPOOL,
        good: Good::Words(ENOUGH),
        fails: "has too small a panel for a pump so far from it",
        why: WHY,
        asks: false,
    },
];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (i, demand) in DEMANDS.iter().enumerate() {
        let far = |e: &&plan::Element| sheet.ask(e, &WHIRLPOOL).is(&["far panel of 12 in"]);
        let tubs = fitting(sheet, &WHIRLPOOL).filter(|e| far(e) == (i == 1));
        told::check(sheet, out, demand, tubs);
    }
}

#[cfg(test)]
mod tests {

    use geometry::Facing;
    use plan::detail::Value;
    use plan::{Body, Edition};

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "whirlpool-panel";

    fn tub(panel: &'static str) -> Sample {
        Sample::room(144.0, 120.0)
            .furnishing(at(72.0, 0.0), Facing::NORTH, 60.0, 32.0)
            .fresh()
            .tune(|e| match &mut e.body {
                Body::Furnishing(f) => f.name = "Whirlpool tub".into(),
                other => panic!("{}", other.word()),
            })
            .state(&WHIRLPOOL, Value::Word(panel))
    }

    #[test]
    fn clear_pass() {
        for enough in ENOUGH {
            tub(enough).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        let said =
            "correction, measured pump and panel: no panel, required panel of 18 in".to_owned();
        for edition in Edition::ALL {
            tub("no panel").edition(edition).expect(SLUG, &[&said]);
        }
    }

    #[test]
    fn at_the_limit() {
        // A panel of 12 in serves a pump within 2 ft, and no pump further off.
        tub("near panel of 12 in").expect_none(SLUG);
        let far = tub("far panel of 12 in").findings(SLUG);
        assert_eq!(far[0].citation.slug, "whirlpool-panel-far");
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .furnishing(at(72.0, 0.0), Facing::NORTH, 60.0, 32.0)
            .expect_none(SLUG);
    }
}
