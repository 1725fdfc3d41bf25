//! Receptacles without protection against shock.

use plan::detail::Value;
use plan::detail::electrical::{SERVES, SHOCK_PROTECTION};
use plan::element::{BodyKind, RoomUse, ServiceKind};
use plan::{Body, Edition, Element};

use super::devices::room_of;
use crate::rules::build::fixtures::near_water;
use crate::rules::stated::{Demand, fitting, is_new, judge, state_all};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "shock-protection",
    group: Group::Electrical,
    title: "Shock protection of receptacles",
    page: "\
What
Receptacles are protected by a ground-fault circuit interrupter (GFCI). With the 2018 edition (electrical code of 2017):
those of unfinished floor, baths, kitchens and laundries, and those within 6 ft of a basin, tub or shower. With 2021 and
2024 (electrical codes of 2020 and 2023): every receptacle of a basement, finished or not.

Why
A basement floor is damp and grounded: a faulty cord there kills.

Source
NEC 210.8(A): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
By what is stated of each new receptacle; the room is the one before it, the distance from water is straight and in the
same room. Until it is stated, one finding asks for all of them.

Cannot see
Which breaker or upstream receptacle protects it. Circuits of machines that are wired in, which newer editions protect
as well.

Exceptions
A receptacle for a fire or burglar alarm alone.

Remedies
A protecting receptacle at the head of the run, or a breaker; a finished basement often needs one that does arc faults
too.
",
    cites: &["shock-protection"],
    check: Check::Plan(&[On::Service(ServiceKind::Receptacle), On::Kind(BodyKind::Furnishing)], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &SHOCK_PROTECTION, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &SHOCK_PROTECTION,
        fault: "No shock protection",
        many: "receptacles",
        why: "A basement floor is damp and grounded: a faulty cord there kills.",
        required: Quantity::Words("protected (GFCI)".to_owned()),
        advice: false,
    };
    let asked = fitting(sheet, &SHOCK_PROTECTION)
        .filter(|e| is_new(sheet, e) && !sheet.ask(e, &SERVES).is(&["a fire or burglar alarm"]))
        .filter(|e| sheet.book.edition() != Edition::E2018 || in_2017(sheet, e));
    judge(sheet, out, &sheet.book.cite("shock-protection"), &demand, asked, |a| {
        a.yes() == Some(true)
    });
}

/// Whether the electrical code of 2017 asks for protection there.
fn in_2017(sheet: &Sheet<'_>, element: &Element) -> bool {
    let Body::Service(point) = &element.body else { return false };
    let Some(room) = room_of(sheet, point) else { return false };
    let damp = matches!(
        sheet.facts.room(room).room_use,
        RoomUse::Unfinished
            | RoomUse::Storage
            | RoomUse::Mechanical
            | RoomUse::Workshop
            | RoomUse::Bath
            | RoomUse::Kitchen
            | RoomUse::Laundry
            | RoomUse::Garage
    );
    damp || near_water(sheet, room, &point.placed().corners(), sheet.book.length("water-reach"))
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::State;
    use plan::element::{Furnishing, ServiceKind};

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "shock-protection";
    const BARE: &str = "correction, measured no, required protected (GFCI)";

    fn receptacle(room_use: RoomUse) -> Sample {
        let room = Sample::with_room(room_use);
        room.service(ServiceKind::Receptacle, at(72.0, 0.0), Facing::NORTH).fresh()
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            let sample = receptacle(RoomUse::Unfinished).edition(edition);
            sample.state(&SHOCK_PROTECTION, Value::Yes).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = receptacle(RoomUse::Unfinished).edition(edition);
            sample.state(&SHOCK_PROTECTION, Value::No).expect(SLUG, &[BARE]);
        }
    }

    #[test]
    fn a_finished_room_is_asked_since_2020() {
        let den = receptacle(RoomUse::Den).state(&SHOCK_PROTECTION, Value::No);
        den.clone().edition(Edition::E2018).expect_none(SLUG);
        den.clone().edition(Edition::E2021).expect(SLUG, &[BARE]);
        den.edition(Edition::E2024).expect(SLUG, &[BARE]);
    }

    #[test]
    fn at_the_limit() {
        // 6 ft from a basin, in a den by the code of 2017: the receptacle is 3 in wide, from 70.5 to 73.5 in.
        let basin = |x: f64| {
            let furnishing = Furnishing {
                name: "basin".into(),
                at: at(x, 0.0),
                facing: Facing::NORTH,
                width: inch(20.0),
                depth: inch(18.0),
                height: Len::inches(34),
                fixed: true,
            };
            let room = Sample::room(400.0, 120.0).tag(at(200.0, 60.0), "Den", RoomUse::Den);
            room.add(State::New, Body::Furnishing(furnishing))
                .service(ServiceKind::Receptacle, at(72.0, 0.0), Facing::NORTH)
                .fresh()
                .state(&SHOCK_PROTECTION, Value::No)
                .edition(Edition::E2018)
        };
        basin(73.5 + 72.0 + 10.0).expect(SLUG, &[BARE]);
        basin(73.5 + 72.0 + 10.0 + 1.0 / 64.0).expect_none(SLUG);
    }

    #[test]
    fn several_are_asked_for_at_once() {
        let two = receptacle(RoomUse::Den)
            .service(ServiceKind::Receptacle, at(20.0, 0.0), Facing::NORTH)
            .fresh();
        two.expect(SLUG, &["verify, measured not stated, required protected (GFCI)"]);
        assert_eq!(two.findings(SLUG)[0].elements.len(), 2);
        assert_eq!(two.remedies(SLUG), ["State of 2 elements “Shock protection: yes”"]);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        receptacle(RoomUse::Den).existing().expect_none(SLUG);
        // One for an alarm alone.
        receptacle(RoomUse::Unfinished)
            .state(&SERVES, Value::Word("a fire or burglar alarm"))
            .state(&SHOCK_PROTECTION, Value::No)
            .expect_none(SLUG);
    }
}
