//! Receptacles of living rooms without protection against arcs.

use plan::Body;
use plan::detail::Value;
use plan::detail::electrical::ARC_PROTECTION;
use plan::element::{RoomUse, ServiceKind};

use super::devices::room_of;
use crate::rules::rooms::uses::habitable;
use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "arc-protection",
    group: Group::Electrical,
    title: "Arc protection of receptacles",
    page: "\
What
The 15 A and 20 A circuits that serve bedrooms, living and similar rooms, kitchens, closets, halls and laundries are
protected by an arc-fault circuit interrupter (AFCI); also where an existing circuit is extended into such a room by more
than 6 ft or by any new outlet.

Why
A nail through a cable smoulders for days before it burns.

Source
NEC 210.12(A) and (D): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
By the use of the room and what is stated of each new receptacle. Until it is stated, one finding asks for all of them.

Cannot see
Circuits: a light or alarm in such a room draws its circuit in too.

Exceptions
Baths, garages and unfinished floor.

Remedies
A protecting breaker, or an outlet-type device at the first receptacle of an existing circuit.
",
    cites: &["arc-protection"],
    check: Check::Plan(&[On::Service(ServiceKind::Receptacle)], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &ARC_PROTECTION, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &ARC_PROTECTION,
        fault: "No arc protection",
        many: "receptacles",
        why: "A nail through a cable smoulders for days before it burns.",
        required: Quantity::Words("protected (AFCI)".to_owned()),
        advice: false,
    };
    let asked = new_work(sheet, &ARC_PROTECTION).filter(|e| {
        let Body::Service(point) = &e.body else { return false };
        room_of(sheet, point).is_some_and(|room| lived_in(sheet.facts.room(room).room_use))
    });
    judge(sheet, out, &sheet.book.cite("arc-protection"), &demand, asked, |a| {
        a.yes() == Some(true)
    });
}

/// The rooms that the text names.
fn lived_in(room_use: RoomUse) -> bool {
    habitable(room_use) || matches!(room_use, RoomUse::Closet | RoomUse::Hall | RoomUse::Laundry)
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "arc-protection";
    const BARE: &str = "correction, measured no, required protected (AFCI)";

    fn receptacle(room_use: RoomUse) -> Sample {
        let room = Sample::with_room(room_use);
        room.service(ServiceKind::Receptacle, at(72.0, 0.0), Facing::NORTH).fresh()
    }

    #[test]
    fn clear_pass() {
        receptacle(RoomUse::Bedroom).state(&ARC_PROTECTION, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = receptacle(RoomUse::Bedroom).edition(edition);
            sample.state(&ARC_PROTECTION, Value::No).expect(SLUG, &[BARE]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The line runs between the uses: a laundry is named, a bath is not.
        for (room_use, found) in [
            (RoomUse::Laundry, 1),
            (RoomUse::Hall, 1),
            (RoomUse::Closet, 1),
            (RoomUse::Bath, 0),
            (RoomUse::Unfinished, 0),
        ] {
            let sample = receptacle(room_use).state(&ARC_PROTECTION, Value::No);
            assert_eq!(sample.findings(SLUG).len(), found, "{room_use:?}");
        }
    }

    #[test]
    fn what_is_not_stated_is_asked_for() {
        receptacle(RoomUse::Den)
            .expect(SLUG, &["verify, measured not stated, required protected (AFCI)"]);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        receptacle(RoomUse::Den).existing().expect_none(SLUG);
    }
}
