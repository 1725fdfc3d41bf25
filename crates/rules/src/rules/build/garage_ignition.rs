//! An appliance that lights near a garage floor.

use plan::Body;
use plan::detail::Value;
use plan::detail::heat::IGNITION_HEIGHT;
use plan::element::BodyKind;

use super::garage::is_garage;
use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "garage-ignition",
    group: Group::Build,
    title: "Ignition above a garage floor",
    page: "\
What
A furnace or water heater in a garage lights at least 18 in above its floor.

Why
Vapours of fuel lie along the floor, and a pilot light finds them.

Source
IRC M1307.3: 2018 to 2024.

How it is measured
By the stated height of ignition of each appliance in a room that is used as a garage. It is asked for until it is stated.

Cannot see
Rooms that only open to a garage.

Exceptions
Water heaters listed as resistant to flammable vapours: set the finding aside and name the listing.

Remedies
A stand below it, or a listed water heater.
",
    cites: &["garage-ignition"],
    check: Check::Plan(&[On::Kind(BodyKind::Service)], check),
    remedies: Some(|finding, sheet| {
        let height = sheet.book.length("garage-ignition");
        state_all(finding, sheet, &IGNITION_HEIGHT, Value::Length(height))
    }),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("garage-ignition");
    let in_garage = |body: &Body| match body {
        Body::Service(s) => sheet
            .facts
            .room_at(s.placed().centre())
            .is_some_and(|room| is_garage(sheet.facts.room(room))),
        _ => false,
    };
    let demand = Demand {
        rule: RULE.slug,
        detail: &IGNITION_HEIGHT,
        fault: "Lights too near to a garage floor",
        many: "appliances",
        why: "Vapours of fuel lie along the floor, and a pilot light finds them.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let appliances = fitting(sheet, &IGNITION_HEIGHT).filter(|e| in_garage(&e.body));
    judge(sheet, out, &limit.citation, &demand, appliances, |a| {
        a.len().is_some_and(|height| height >= limit.value)
    });
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::Edition;
    use plan::element::{RoomUse, ServiceKind};

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "garage-ignition";

    fn heater(room_use: RoomUse) -> Sample {
        Sample::with_room(room_use).service(ServiceKind::WaterHeater, at(30.0, 30.0), Facing::NORTH)
    }

    fn lights(height: Len) -> Sample {
        heater(RoomUse::Garage).state(&IGNITION_HEIGHT, Value::Length(height))
    }

    #[test]
    fn clear_pass() {
        lights(inch(24.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let low = lights(inch(6.0)).edition(edition);
            low.expect(SLUG, &["correction, measured 6\", required 18\""]);
            let open = heater(RoomUse::Garage).edition(edition);
            open.expect(SLUG, &["verify, measured not stated, required 18\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        lights(inch(18.0)).expect_none(SLUG);
        assert_eq!(lights(inch(18.0) - Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        heater(RoomUse::Mechanical).expect_none(SLUG);
    }
}
