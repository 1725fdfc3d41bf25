//! Polyethylene on the room side of fibre insulation.

use plan::detail::Value;
use plan::detail::wall::{CAVITY_R, VAPOUR_RETARDER};

use crate::rules::stated::{Demand, fitting, is_new, judge, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "vapour-retarder-fibre",
    group: Group::Build,
    title: "Polyethylene on the room side of fibre insulation",
    page: "\
What
No class I vapour retarder lies on the room side of insulation that air passes, at a foundation wall. The demand for
an interior retarder in cold climates does not hold for basement walls.

Why
A wall below grade dries to the room only: what gets wet behind polyethylene rots.

Source
A federal laboratory's guide to buildings, for a labelling programme. The model code asks for no interior retarder at basement
walls (IRC R702.7, exceptions); that none may be there is advice.

How it is measured
By what is stated of new furring; where the cavity is stated to hold no insulation, nothing is said. Until it is stated, the
usual is assumed.

Cannot see
Coats of paint and vinyl paper.

Exceptions
Foil-faced foam straight on the concrete with nothing that air passes behind it.

Remedies
Leave the membrane out; paint the board with latex paint.
",
    cites: &["vapour-retarder-fibre"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &VAPOUR_RETARDER, Value::Word("none"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &VAPOUR_RETARDER,
        fault: "Polyethylene over the insulation of a foundation wall",
        many: "runs of furring",
        why: "A wall below grade dries to the room only: what gets wet behind polyethylene rots.",
        required: Quantity::Words("none, or class II or III".to_owned()),
        advice: true,
    };
    let elements = fitting(sheet, &VAPOUR_RETARDER)
        .filter(|e| is_new(sheet, e) && sheet.ask(e, &CAVITY_R).number() != Some(0));
    judge(sheet, out, &sheet.book.cite("vapour-retarder-fibre"), &demand, elements, |a| {
        a.is(&["none", "class III (paint)", "class II (kraft)"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "vapour-retarder-fibre";

    fn sample() -> Sample {
        Sample::with_furring()
    }

    #[test]
    fn clear_pass() {
        sample().state(&VAPOUR_RETARDER, Value::Word("none")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&VAPOUR_RETARDER, Value::Word("class I (polyethylene)"));
            wrong.expect(
                SLUG,
                &["advice, measured class I (polyethylene), required none, or class II or III"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["none", "class III (paint)", "class II (kraft)"] {
            sample().state(&VAPOUR_RETARDER, Value::Word(good)).expect_none(SLUG);
        }
        assert_eq!(
            sample()
                .state(&VAPOUR_RETARDER, Value::Word("class I (polyethylene)"))
                .findings(SLUG)
                .len(),
            1
        );
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // Foam alone holds no air.
        sample()
            .state(&VAPOUR_RETARDER, Value::Word("class I (polyethylene)"))
            .state(&CAVITY_R, Value::Number(0))
            .expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&VAPOUR_RETARDER, Value::Word("class I (polyethylene)"))
            .existing()
            .expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&VAPOUR_RETARDER, Value::Word("class I (polyethylene)"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
