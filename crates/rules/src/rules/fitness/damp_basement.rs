//! Damp that is to be finished over.

use plan::detail::site::DAMP;

use super::{advice, is_finished};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "damp-basement",
    group: Group::Fitness,
    title: "Water in the basement",
    page: "\
What
A basement is dry through a wet season before its walls and floor are covered.

Why
Finish over damp concrete hides the water until it smells.

Source
Common practice; ASTM D4263 for the test with a plastic sheet.

How it is measured
By what is stated of the house, where rooms are made to live in.

Cannot see
The concrete.

Exceptions
None.

Remedies
Gutters and slope outside first, then drains and a sump; seal cracks; dry the air. Tape a sheet of plastic, 18 in by 18 in, to
slab and wall for 16 hours: drops or dark concrete below it say that water comes through.
",
    cites: &["damp-basement"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "Finish over damp concrete hides the water until it smells.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let damp = sheet.ask_site(&DAMP);
    if !is_finished(sheet) || !damp.is(&["damp", "water comes in"]) {
        return;
    }
    let measured = damp.word().unwrap_or_default().to_owned();
    let citation = sheet.book.cite("damp-basement");
    let figures = (measured, "dry through a wet season".to_owned());
    out.push(advice(sheet, RULE.slug, citation, "Cure the damp before you finish", WHY, figures));
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "damp-basement";

    fn den(damp: &'static str) -> Sample {
        Sample::with_room(RoomUse::Den).state_site(&DAMP, Value::Word(damp))
    }

    #[test]
    fn clear_pass() {
        den("dry for a season").expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wet = den("water comes in").edition(edition);
            wet.expect(
                SLUG,
                &["advice, measured water comes in, required dry through a wet season"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // The line runs between the answers.
        for (damp, found) in [("not watched yet", 0), ("damp", 1)] {
            assert_eq!(den(damp).findings(SLUG).len(), found, "{damp}");
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::with_room(RoomUse::Storage)
            .state_site(&DAMP, Value::Word("damp"))
            .expect_none(SLUG);
    }
}
