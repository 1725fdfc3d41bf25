//! Test with a plastic sheet.

use plan::detail::site::PLASTIC_TEST;

use super::{advice, is_finished};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "plastic-test",
    group: Group::Fitness,
    title: "Test with a plastic sheet",
    page: "\
What
A sheet of plastic that was taped to slab or wall for a day or two stays dry on both sides before the concrete is covered.

Why
The side that is wet tells the cause: on the concrete side water comes through, on the room side the air is damp.

Source
ASTM D4263 for the slab, and a federal page of Canada, reprinted, for walls.

How it is measured
By what is stated of the house, where rooms are made to live in. A test that was not done says nothing.

Cannot see
The concrete. A dry sheet is no proof of a dry slab: it depends on the season.

Exceptions
None.

Remedies
Wet on the concrete side: cure drains and slope outside, seal cracks. Wet on the room side: dry the air, keep room air off
the concrete.
",
    cites: &["plastic-test"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "The side that is wet tells the cause: on the concrete side water comes through, on the room side the air is damp.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !is_finished(sheet) {
        return;
    }
    let answer = sheet.ask_site(&PLASTIC_TEST);
    if !answer.is(&["wet on the room side", "wet on the concrete side"]) {
        return;
    }
    let title = match answer.is(&["wet on the room side"]) {
        true => "The air wets the concrete",
        false => "Water comes through the concrete",
    };
    let figures = (answer.word().unwrap_or_default().to_owned(), "dry on both sides".to_owned());
    out.push(advice(sheet, RULE.slug, sheet.book.cite(RULE.slug), title, WHY, figures));
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "plastic-test";

    fn den(wet: &'static str) -> Sample {
        Sample::with_room(RoomUse::Den).state_site(&PLASTIC_TEST, Value::Word(wet))
    }

    #[test]
    fn clear_pass() {
        den("dry").expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            for side in ["wet on the room side", "wet on the concrete side"] {
                let said = format!("advice, measured {side}, required dry on both sides");
                den(side).edition(edition).expect(SLUG, &[&said]);
            }
        }
    }

    #[test]
    fn at_the_limit() {
        // The two sides have two causes.
        let title = |side| den(side).findings(SLUG)[0].title.say(measure::System::Imperial);
        assert_eq!(title("wet on the room side"), "The air wets the concrete");
        assert_eq!(title("wet on the concrete side"), "Water comes through the concrete");
        den("not done").expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::with_room(RoomUse::Den).expect_none(SLUG);
        let store = Sample::with_room(RoomUse::Storage);
        store.state_site(&PLASTIC_TEST, Value::Word("wet on the room side")).expect_none(SLUG);
    }
}
