//! A bath fan that moves too little air.

use plan::Body;
use plan::detail::heat::{FAN_ALWAYS, FAN_RATE};
use plan::element::{RoomUse, ServiceKind};

use super::told::of_kind;
use crate::rules::electrical::devices::room_of;
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "bath-fan-rate",
    group: Group::Heat,
    title: "Rate of a bath fan",
    page: "\
What
The fan of a bath moves at least 50 cfm where it runs at need, 20 cfm where it runs always.

Why
Less leaves the mirror, and the wall behind it, wet.

Source
IRC M1505.4.4, Table M1505.4.4: 2018 to 2024.

How it is measured
By the stated rate of each fan in a bath.

Cannot see
What the duct takes off: see the rule on its length.

Exceptions
A bath with a window that opens far enough.

Remedies
A stronger fan, or one that runs always.
",
    cites: &["bath-fan-rate", "bath-fan-always"],
    check: Check::Plan(&[On::Service(ServiceKind::ExhaustFan)], check),
    remedies: None,
};

const WHY: &str = "Less leaves the mirror, and the wall behind it, wet.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for element in of_kind(sheet, ServiceKind::ExhaustFan) {
        let Body::Service(fan) = &element.body else { continue };
        let in_bath = room_of(sheet, fan)
            .is_some_and(|room| sheet.facts.room(room).room_use == RoomUse::Bath);
        let Some(rate) = sheet.ask(element, &FAN_RATE).number().filter(|_| in_bath) else {
            continue;
        };
        let always = sheet.ask(element, &FAN_ALWAYS);
        let limit = sheet.book.count(match always.yes() {
            Some(true) => "bath-fan-always",
            _ => "bath-fan-rate",
        });
        if rate >= limit.value {
            continue;
        }
        let title = format!("{} moves too little air", capital(&called(sheet, element.id)));
        out.push(
            Finding::new(
                Severity::Correction,
                limit.citation,
                RULE.slug,
                vec![element.id],
                Phrase::text(title),
                WHY,
            )
            .figures(
                Quantity::Words(format!("{rate} cfm")),
                Quantity::Words(format!("{} cfm", limit.value)),
            )
            .resting_on(&always)
            .at(Place::Point(fan.placed().centre())),
        );
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "bath-fan-rate";

    fn fan(rate: u32, always: Value) -> Sample {
        Sample::with_room(RoomUse::Bath)
            .service(ServiceKind::ExhaustFan, at(72.0, 60.0), Facing::NORTH)
            .state(&FAN_RATE, Value::Number(rate))
            .state(&FAN_ALWAYS, always)
    }

    #[test]
    fn clear_pass() {
        fan(80, Value::No).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let weak = fan(30, Value::No).edition(edition);
            weak.expect(SLUG, &["correction, measured 30 cfm, required 50 cfm"]);
        }
    }

    #[test]
    fn at_the_limit() {
        fan(50, Value::No).expect_none(SLUG);
        assert_eq!(fan(49, Value::No).findings(SLUG).len(), 1);
        fan(20, Value::Yes).expect_none(SLUG);
        assert_eq!(fan(19, Value::Yes).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        // The rate is not stated, or the fan is in no bath.
        Sample::with_room(RoomUse::Bath)
            .service(ServiceKind::ExhaustFan, at(72.0, 60.0), Facing::NORTH)
            .expect_none(SLUG);
        Sample::with_room(RoomUse::Laundry)
            .service(ServiceKind::ExhaustFan, at(72.0, 60.0), Facing::NORTH)
            .state(&FAN_RATE, Value::Number(10))
            .expect_none(SLUG);
    }
}
