//! Humidity of the air.

use plan::detail::site::AIR_HUMIDITY;

use super::{advice, is_finished};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "air-humidity",
    group: Group::Fitness,
    title: "Humidity of the air",
    page: "\
What
The air of a basement stays at 60 % relative humidity or less; 30 to 50 % is best.

Why
Mould grows on paper and wood in damp air, also where no water comes in.

Source
A federal course on mould as quoted, and a state's extension service.

How it is measured
By what is stated of the dampest season, where rooms are made to live in. Until it is stated nothing is said.

Cannot see
The air: hang a gauge for a season.

Exceptions
None.

Remedies
Dry the source first; then a dehumidifier, with a drain. Since 2019 its label is given at 65 °F, so that the same machine
reads about two thirds of what it did before.
",
    cites: &["air-humidity"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "Mould grows on paper and wood in damp air, also where no water comes in.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !is_finished(sheet) {
        return;
    }
    let limit = sheet.book.count("air-humidity");
    if let Some(n) = sheet.ask_site(&AIR_HUMIDITY).number().filter(|n| *n > limit.value) {
        let figures = (format!("{n} %"), format!("{} % or less", limit.value));
        let title = "The air is too damp to finish in";
        out.push(advice(sheet, RULE.slug, limit.citation, title, WHY, figures));
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "air-humidity";

    fn den(percent: u32) -> Sample {
        Sample::with_room(RoomUse::Den).state_site(&AIR_HUMIDITY, Value::Number(percent))
    }

    #[test]
    fn clear_pass() {
        den(45).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let damp = "advice, measured 75 %, required 60 % or less";
            den(75).edition(edition).expect(SLUG, &[damp]);
        }
    }

    #[test]
    fn at_the_limit() {
        den(60).expect_none(SLUG);
        assert_eq!(den(61).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::with_room(RoomUse::Den).expect_none(SLUG);
        let store = Sample::with_room(RoomUse::Storage);
        store.state_site(&AIR_HUMIDITY, Value::Number(99)).expect_none(SLUG);
    }
}
