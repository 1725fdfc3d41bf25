//! The circuit of a receptacle in a bath or a laundry.

use plan::Element;
use plan::detail::electrical::{CIRCUIT_AMPS, CIRCUIT_SHARED, SERVES};
use plan::element::{RoomUse, ServiceKind};

use super::devices::room_of;
use crate::rules::stated::{Demand, fitting, is_new, judge};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "receptacle-circuit",
    group: Group::Electrical,
    title: "Circuit of bath and laundry receptacles",
    page: "\
What
The receptacles of a bath and of a laundry are on a circuit of 20 A. That of baths feeds receptacles of baths alone, or
everything in one bath; that of a laundry feeds nothing else.

Why
A hair dryer or a washer on the circuit of the lights trips it, in the dark.

Source
NEC 210.11(C)(2), (C)(3), 210.52(D), (F) (all editions).

How it is measured
By what is stated of each new receptacle before which lies a bath or a laundry. Until it is stated, the usual is assumed and
nothing is said.

Cannot see
The wiring.

Exceptions
A receptacle for a fire or burglar alarm alone.

Remedies
Ask the electrician for a circuit of its own.
",
    cites: &["receptacle-circuit"],
    check: Check::Plan(&[On::Service(ServiceKind::Receptacle)], check),
    remedies: None,
};

const WHY: &str = "A hair dryer or a washer on the circuit of the lights trips it, in the dark.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.count("receptacle-circuit");
    let wet = |e: &&Element| {
        is_new(sheet, e)
            && in_bath_or_laundry(sheet, e)
            && !sheet.ask(e, &SERVES).is(&["a fire or burglar alarm"])
    };
    let demand = |detail, fault, required| Demand {
        rule: RULE.slug,
        detail,
        fault,
        many: "receptacles",
        why: WHY,
        required: Quantity::Words(required),
        advice: false,
    };
    let amps = demand(&CIRCUIT_AMPS, "Circuit too small", format!("{} A", limit.value));
    judge(sheet, out, &limit.citation, &amps, fitting(sheet, &CIRCUIT_AMPS).filter(wet), |a| {
        a.number().is_some_and(|n| n >= limit.value)
    });
    let own = "a circuit of its own".to_owned();
    let shared = demand(&CIRCUIT_SHARED, "Shares its circuit", own);
    judge(sheet, out, &limit.citation, &shared, fitting(sheet, &CIRCUIT_SHARED).filter(wet), |a| {
        a.yes() == Some(false)
    });
}

fn in_bath_or_laundry(sheet: &Sheet<'_>, element: &Element) -> bool {
    let plan::Body::Service(point) = &element.body else { return false };
    room_of(sheet, point).is_some_and(|room| {
        matches!(sheet.facts.room(room).room_use, RoomUse::Bath | RoomUse::Laundry)
    })
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "receptacle-circuit";

    fn receptacle(room_use: RoomUse) -> Sample {
        let room = Sample::with_room(room_use);
        room.service(ServiceKind::Receptacle, at(72.0, 0.0), Facing::NORTH).fresh()
    }

    #[test]
    fn clear_pass() {
        receptacle(RoomUse::Bath).state(&CIRCUIT_AMPS, Value::Number(20)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            for room_use in [RoomUse::Bath, RoomUse::Laundry] {
                let of = receptacle(room_use).edition(edition);
                let small = of.clone().state(&CIRCUIT_AMPS, Value::Number(15));
                small.expect(SLUG, &["correction, measured 15 A, required 20 A"]);
                let shared = of.state(&CIRCUIT_SHARED, Value::Yes);
                shared.expect(SLUG, &["correction, measured yes, required a circuit of its own"]);
            }
        }
    }

    #[test]
    fn at_the_limit() {
        let rated = |amps| receptacle(RoomUse::Bath).state(&CIRCUIT_AMPS, Value::Number(amps));
        rated(20).expect_none(SLUG);
        assert_eq!(rated(19).findings(SLUG).len(), 1);
        // The usual is assumed until it is stated.
        receptacle(RoomUse::Bath).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        let small = |room_use| receptacle(room_use).state(&CIRCUIT_AMPS, Value::Number(15));
        small(RoomUse::Den).expect_none(SLUG);
        small(RoomUse::Bath).existing().expect_none(SLUG);
        let alarm = Value::Word("a fire or burglar alarm");
        small(RoomUse::Laundry).state(&SERVES, alarm).expect_none(SLUG);
    }
}
