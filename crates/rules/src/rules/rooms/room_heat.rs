//! Heat in a habitable room.

use plan::Body;
use plan::detail::Value;
use plan::detail::room::HEATED;

use super::uses::habitable;
use crate::rules::stated::{Demand, fitting, is_new, judge, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "room-heat",
    group: Group::Rooms,
    title: "Heat in a habitable room",
    page: "\
What
Where winters are cold a habitable room can be kept at 68 °F, 3 ft above the floor and 2 ft from outside walls.
Portable heaters don't count.

Why
A finished basement without heat is mouldy by its second winter.

Source
IRC R303.10 (2018, 2021); IRC R325.8 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, one finding asks for all such elements.

Cannot see
Loads, ducts and heaters: ask for the contractor's load calculation.

Exceptions
Places with a winter design temperature of 60 °F or more.

Remedies
A supply and a return sized by a load calculation, or a fixed heater.
",
    cites: &["room-heat"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &HEATED, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &HEATED,
        fault: "Room without heat",
        many: "rooms",
        why: "A finished basement without heat is mouldy by its second winter.",
        required: Quantity::Words("68 °F".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &HEATED)
        .filter(|e| is_new(sheet, e))
        .filter(|e| matches!(&e.body, Body::RoomTag(t) if habitable(t.room_use)));
    judge(sheet, out, &sheet.book.cite("room-heat"), &demand, elements, |a| a.yes() == Some(true));
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "room-heat";

    fn sample() -> Sample {
        Sample::with_room(RoomUse::Den)
    }

    #[test]
    fn clear_pass() {
        sample().state(&HEATED, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&HEATED, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required 68 °F"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Nothing is assumed: what is not stated is asked for, once.
        sample().expect(SLUG, &["verify, measured not stated, required 68 °F"]);
        sample().state(&HEATED, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // A closet is no habitable room.
        Sample::with_room(RoomUse::Closet).state(&HEATED, Value::No).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&HEATED, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
