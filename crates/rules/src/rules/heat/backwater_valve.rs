//! Fixtures that the street sewer can flood.

use plan::detail::plumbing::BELOW_SEWER;
use plan::element::{RoomUse, ServiceKind};

use super::house;
use super::told::of_kind;
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "backwater-valve",
    group: Group::Heat,
    title: "Backwater valve",
    page: "\
What
Fixtures with a flood rim below the next upstream manhole cover of the street sewer are protected by a backwater valve.

Why
When the sewer backs up, it comes out of the lowest drain: the one in the basement.

Source
IRC P3008.1: 2018 to 2024.

How it is measured
By what is stated of the height of the street sewer, and by a backwater valve in the plan, once a drain, a standpipe, a pit
or a bath is drawn.

Cannot see
Levels of drains and covers; which fixtures the valve serves. Those above the cover must not drain through it.

Exceptions
Fixtures that a pump lifts.

Remedies
Draw the valve where it is, or have a plumber set one where it can be reached.
",
    cites: &["backwater-valve"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "When the sewer backs up, it comes out of the lowest drain.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let below = sheet.ask_site(&BELOW_SEWER).yes() == Some(true);
    if !below || of_kind(sheet, ServiceKind::BackwaterValve).next().is_some() {
        return;
    }
    let drains = [ServiceKind::FloorDrain, ServiceKind::Standpipe];
    let about: Vec<_> =
        drains.into_iter().flat_map(|kind| of_kind(sheet, kind)).map(|e| e.id).collect();
    let bath = sheet.facts.rooms.iter().any(|room| room.room_use == RoomUse::Bath);
    if about.is_empty() && !bath {
        return;
    }
    let words = ("Nothing keeps the street sewer out of the basement's drains", WHY);
    let figures = ("no backwater valve".to_owned(), "a backwater valve".to_owned());
    let citation = sheet.book.cite("backwater-valve");
    out.push(house::finding(sheet, RULE.slug, citation, about, words, figures));
}

#[cfg(test)]
mod tests {

    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "backwater-valve";

    fn below(sample: Sample) -> Sample {
        sample.state_site(&BELOW_SEWER, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        below(Sample::with(ServiceKind::FloorDrain))
            .service(ServiceKind::BackwaterValve, at(30.0, 30.0), geometry::Facing::NORTH)
            .expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let said = "correction, measured no backwater valve, required a backwater valve";
        for edition in Edition::ALL {
            below(Sample::with(ServiceKind::FloorDrain)).edition(edition).expect(SLUG, &[said]);
            below(Sample::with_room(RoomUse::Bath)).edition(edition).expect(SLUG, &[said]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The line runs between below and not below.
        let drain = || Sample::with(ServiceKind::FloorDrain);
        drain().state_site(&BELOW_SEWER, Value::No).expect_none(SLUG);
        assert_eq!(below(drain()).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::with(ServiceKind::FloorDrain).expect_none(SLUG);
        below(Sample::with_room(RoomUse::Den)).expect_none(SLUG);
    }
}
