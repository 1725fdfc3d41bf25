//! Moisture in the slab.

use plan::detail::site::{SLAB_HUMIDITY, SLAB_VAPOUR};

use super::{advice, is_finished};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "slab-moisture",
    group: Group::Fitness,
    title: "Moisture in the slab",
    page: "\
What
Before a floor of wood or vinyl is laid, probes in the slab show at most 75 % relative humidity, and the calcium chloride
test at most 3 lb of vapour on 1,000 sq ft in 24 h.

Why
Vapour from the slab loosens glue and lifts boards within a year.

Source
ASTM F710 as quoted, for tests to ASTM F2170 and F1869.

How it is measured
By the results that are stated of the house, where rooms are made to live in. Until a result is stated nothing is said.

Cannot see
How the tests were made. F2170: probes at 40 % of the depth of a slab on the ground, three for the first 1,000 sq ft and one
for each 1,000 more, after 24 h (72 h in the older text). F1869: a dome for 60 to 72 h on ground concrete, not on
lightweight concrete.

Exceptions
None.

Remedies
A membrane or a floor whose maker allows more; cure the drains and the slope outside first.
",
    cites: &["slab-humidity", "slab-vapour"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "Vapour from the slab loosens glue and lifts boards within a year.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !is_finished(sheet) {
        return;
    }
    let humidity = sheet.book.count("slab-humidity");
    if let Some(n) = sheet.ask_site(&SLAB_HUMIDITY).number().filter(|n| *n > humidity.value) {
        let figures = (format!("{n} %"), format!("{} % or less", humidity.value));
        let title = "The slab is too damp for its floor";
        out.push(advice(sheet, RULE.slug, humidity.citation, title, WHY, figures));
    }
    let vapour = sheet.book.count("slab-vapour");
    if let Some(n) = sheet.ask_site(&SLAB_VAPOUR).number().filter(|n| *n > vapour.value) {
        let say = |tenths: u32| format!("{}.{} lb", tenths / 10, tenths % 10);
        let figures = (say(n), format!("{} or less", say(vapour.value)));
        let title = "Too much vapour comes from the slab";
        out.push(advice(sheet, RULE.slug, vapour.citation, title, WHY, figures));
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "slab-moisture";

    fn den(humidity: u32, vapour: u32) -> Sample {
        Sample::with_room(RoomUse::Den)
            .state_site(&SLAB_HUMIDITY, Value::Number(humidity))
            .state_site(&SLAB_VAPOUR, Value::Number(vapour))
    }

    #[test]
    fn clear_pass() {
        den(60, 15).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let damp = "advice, measured 88 %, required 75 % or less";
            let vapour = "advice, measured 5.5 lb, required 3.0 lb or less";
            den(88, 55).edition(edition).expect(SLUG, &[damp, vapour]);
        }
    }

    #[test]
    fn at_the_limit() {
        den(75, 30).expect_none(SLUG);
        assert_eq!(den(76, 30).findings(SLUG).len(), 1);
        assert_eq!(den(75, 31).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::with_room(RoomUse::Den).expect_none(SLUG);
        let store = Sample::with_room(RoomUse::Storage);
        store.state_site(&SLAB_HUMIDITY, Value::Number(99)).expect_none(SLUG);
    }
}
