//! A kitchen fan that moves too little air.

use plan::Body;
use plan::detail::heat::{FAN_ALWAYS, FAN_RATE};
use plan::element::{RoomUse, ServiceKind};

use super::told::of_kind;
use crate::rules::electrical::devices::room_of;
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "kitchen-fan-rate",
    group: Group::Heat,
    title: "Rate of a kitchen fan",
    page: "\
What
The fan of a kitchen moves at least 100 cfm where it runs at need, 25 cfm where it runs always.

Why
Less leaves steam and the fumes of cooking in the basement.

Source
IRC M1505.4.4, Table M1505.4.4: 2018 to 2024.

How it is measured
By the stated rate of each fan in a kitchen.

Cannot see
What the duct takes off: see the rule on its length.

Exceptions
A hood without a duct, where the kitchen is aired in another way.

Remedies
A stronger fan, or one that runs always.
",
    cites: &["kitchen-fan-rate", "kitchen-fan-always"],
    check: Check::Plan(&[On::Service(ServiceKind::ExhaustFan)], check),
    remedies: None,
};

const WHY: &str = "Less leaves steam and the fumes of cooking in the basement.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for element in of_kind(sheet, ServiceKind::ExhaustFan) {
        let Body::Service(fan) = &element.body else { continue };
        let in_kitchen = room_of(sheet, fan)
            .is_some_and(|room| sheet.facts.room(room).room_use == RoomUse::Kitchen);
        let Some(rate) = sheet.ask(element, &FAN_RATE).number().filter(|_| in_kitchen) else {
            continue;
        };
        let always = sheet.ask(element, &FAN_ALWAYS);
        let limit = sheet.book.count(match always.yes() {
            Some(true) => "kitchen-fan-always",
            _ => "kitchen-fan-rate",
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

    const SLUG: &str = "kitchen-fan-rate";

    fn fan(room_use: RoomUse, rate: u32, always: Value) -> Sample {
        Sample::with_room(room_use)
            .service(ServiceKind::ExhaustFan, at(72.0, 60.0), Facing::NORTH)
            .state(&FAN_RATE, Value::Number(rate))
            .state(&FAN_ALWAYS, always)
    }

    #[test]
    fn clear_pass() {
        fan(RoomUse::Kitchen, 150, Value::No).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let weak = fan(RoomUse::Kitchen, 60, Value::No).edition(edition);
            weak.expect(SLUG, &["correction, measured 60 cfm, required 100 cfm"]);
        }
    }

    #[test]
    fn at_the_limit() {
        for (rate, always) in [(100, Value::No), (25, Value::Yes)] {
            fan(RoomUse::Kitchen, rate, always).expect_none(SLUG);
            assert_eq!(fan(RoomUse::Kitchen, rate - 1, always).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        fan(RoomUse::Bath, 10, Value::No).expect_none(SLUG);
        Sample::with_room(RoomUse::Kitchen).expect_none(SLUG);
    }
}
