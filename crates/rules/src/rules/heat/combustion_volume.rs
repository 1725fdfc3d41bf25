//! A room that is too small for what burns in it.

use plan::detail::Value;
use plan::detail::heat::{AIR_CHANGE, AIR_FROM};
use plan::element::ServiceKind;

use super::burners::{Burners, burners};
use crate::answer::state;
use crate::rules::rooms::words::{capital, room_called};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "combustion-volume",
    group: Group::Heat,
    title: "Room volume for combustion air",
    page: "\
What
A room whose air appliances burn with holds at least 50 cu ft for each 1,000 BTU/h of all of them together (the standard
method). Where the air change of the house is known: 21 cu ft by natural draft and 15 cu ft fan-assisted, divided by the air
changes in an hour, for each 1,000 BTU/h; the standard method does not hold below 0.40 changes.

Why
A furnace closed into a small tight room starves, and sends carbon monoxide into the house.

Source
IRC G2407.5, G2407.5.1, G2407.5.2 (IFGC 304.5): 2018 to 2024.

How it is measured
Net floor of the room times the ceiling height, and of every room that it stands open to through an opening without a
leaf. All furnaces and water heaters there count, but for electric and direct-vent ones. Input, fuel and vent are as stated.
Rounded down.

Cannot see
Soffits and furniture, which take little. How tight the house is: finishing and sealing a basement can end the standard
method.

Exceptions
Direct-vent appliances. Rooms that take their air otherwise: state it at the room's tag.

Remedies
Openings to a larger room or outdoors, sized by the rule on combustion openings; a direct-vent appliance; a larger room.
Licensed work.
",
    cites: &[
        "combustion-volume",
        "combustion-known",
        "combustion-known-fan",
        "combustion-known-most",
        "combustion-air-change",
    ],
    check: Check::Plan(&[On::Service(ServiceKind::Furnace), On::Service(ServiceKind::WaterHeater), On::Floors], check),
    remedies: Some(|finding, sheet| {
        let tags = finding.elements.iter().copied().filter(|id| {
            let body = sheet.plan().get(*id).map(|e| &e.body);
            matches!(body, Some(plan::Body::RoomTag(_)))
        });
        let other = Value::Word("two openings to next room");
        tags.map(|tag| state(sheet, &[tag], &AIR_FROM, other)).collect()
    }),
};

const WHY: &str =
    "A furnace closed into a small tight room starves, and sends carbon monoxide into the house.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for group in burners(sheet) {
        let tag = group.tag(sheet).and_then(|id| sheet.plan().get(id));
        let air = tag.map(|tag| sheet.ask(tag, &AIR_FROM));
        if air.is_some_and(|a| !a.is(&["the room"])) {
            continue;
        }
        out.extend(judge(sheet, &group));
    }
}

fn judge(sheet: &Sheet<'_>, group: &Burners<'_>) -> Option<Finding> {
    let room = group.rooms.first()?;
    let mut about = group.ids();
    about.extend(group.tag(sheet));
    let name = capital(&room_called(room));
    let finding = |title: String, slug| {
        let citation = sheet.book.cite(slug);
        Finding::new(
            Severity::Correction,
            citation,
            RULE.slug,
            about.clone(),
            Phrase::text(title),
            WHY,
        )
        .at(Place::Label(room.index))
    };
    let volume = group.cubic_inches(sheet) / 1728;
    let words = |text: String| Quantity::Words(text);
    let slug = "combustion-volume";
    if group.input().is_none() {
        let title = format!("The input of what burns in {} is not stated", room_called(room));
        let per = sheet.book.count(slug).value;
        let unknown = group.appliances.iter().find(|b| b.input.value.is_none())?;
        return Some(
            finding(title, slug)
                .figures(
                    words(format!("{volume} cu ft")),
                    words(format!("{per} cu ft for each 1,000 BTU/h")),
                )
                .resting_on(&unknown.input),
        );
    }
    let (required, slug) = required(sheet, group);
    if u128::from(required) <= volume {
        return None;
    }
    let title = format!("{name} has too little air for what burns in it");
    let mut found = finding(title, slug)
        .figures(words(format!("{volume} cu ft")), words(format!("{required} cu ft")));
    for burner in &group.appliances {
        found = found.resting_on(&burner.fuel).resting_on(&burner.vent);
    }
    found.assumed.sort();
    found.assumed.dedup();
    Some(found)
}

/// The volume asked for in cubic feet, rounded up, and the limit that it follows from.
fn required(sheet: &Sheet<'_>, group: &Burners<'_>) -> (u64, &'static str) {
    let known = sheet.ask_site(&AIR_CHANGE).number().map(u64::from).filter(|n| *n > 0);
    let Some(hundredths) = known else {
        let per = u64::from(sheet.book.count("combustion-volume").value);
        return ((group.input().unwrap_or(0) * per).div_ceil(1_000), "combustion-volume");
    };
    let count = |slug| u64::from(sheet.book.count(slug).value);
    // A larger change is not counted on.
    let hundredths = hundredths.min(count("combustion-known-most"));
    let (natural, fan) = (count("combustion-known"), count("combustion-known-fan"));
    let each = |b: &super::burners::Burner<'_>| {
        let per = if b.vent.is(&["fan-assisted"]) { fan } else { natural };
        u64::from(b.input.number().unwrap_or(0)) * per
    };
    let all: u64 = group.appliances.iter().map(each).sum();
    let known = (all * 100).div_ceil(hundredths * 1_000);
    // The standard method holds too, unless the house is known to be tighter.
    let standard = u64::from(sheet.book.count("combustion-volume").value);
    let standard = (group.input().unwrap_or(0) * standard).div_ceil(1_000);
    if hundredths >= count("combustion-air-change") && standard < known {
        return (standard, "combustion-volume");
    }
    (known, "combustion-known")
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::heat::{FUEL, INPUT, VENT};
    use plan::element::{DoorOperation, RoomUse, ServiceKind};

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "combustion-volume";

    /// A room of 10 ft by 10 ft by 8 ft, 800 cu ft, with a furnace of this input by natural draft.
    fn furnace(input: u32) -> Sample {
        let room = Sample::room(120.0, 120.0).tag(at(60.0, 100.0), "Utility", RoomUse::Mechanical);
        gas(room.service(ServiceKind::Furnace, at(60.0, 0.0), Facing::NORTH), input)
    }

    fn gas(sample: Sample, input: u32) -> Sample {
        sample
            .state(&FUEL, Value::Word("natural gas"))
            .state(&VENT, Value::Word("draft hood"))
            .state(&INPUT, Value::Number(input))
    }

    #[test]
    fn clear_pass() {
        furnace(10_000).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            furnace(100_000)
                .edition(edition)
                .expect(SLUG, &["correction, measured 800 cu ft, required 5000 cu ft"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // 50 cu ft for each 1,000 BTU/h: 800 cu ft serve just 16,000.
        furnace(16_000).expect_none(SLUG);
        furnace(16_001).expect(SLUG, &["correction, measured 800 cu ft, required 801 cu ft"]);
    }

    #[test]
    fn every_appliance_of_the_room_counts() {
        let heater = ServiceKind::WaterHeater;
        let two = gas(furnace(10_000).service(heater, at(20.0, 0.0), Facing::NORTH), 10_000);
        two.expect(SLUG, &["correction, measured 800 cu ft, required 1000 cu ft"]);
    }

    #[test]
    fn a_known_air_change_changes_the_figure() {
        // T3: V = 21 / ACH x I / 1000; at 0.60 changes 35 cu ft, at 0.30 changes 70 cu ft.
        let at = |n| furnace(20_000).state_site(&AIR_CHANGE, Value::Number(n));
        at(60).expect_none(SLUG);
        at(30).expect(SLUG, &["correction, measured 800 cu ft, required 1400 cu ft"]);
        // More than 0.60 is not counted on: 23,000 BTU/h ask for 805 cu ft all the same.
        let fast = furnace(23_000).state_site(&AIR_CHANGE, Value::Number(90));
        fast.expect(SLUG, &["correction, measured 800 cu ft, required 805 cu ft"]);
        // The standard method holds from 0.40 changes on: 50 cu ft are less than 21 / 0.40.
        let standard = furnace(17_000).state_site(&AIR_CHANGE, Value::Number(40));
        standard.expect(SLUG, &["correction, measured 800 cu ft, required 850 cu ft"]);
        let tight = furnace(17_000).state_site(&AIR_CHANGE, Value::Number(39));
        tight.expect(SLUG, &["correction, measured 800 cu ft, required 916 cu ft"]);
        // 15 cu ft where a fan assists.
        let fan = at(30).state(&VENT, Value::Word("fan-assisted"));
        fan.expect(SLUG, &["correction, measured 800 cu ft, required 1000 cu ft"]);
    }

    #[test]
    fn rooms_that_stand_open_to_one_another_count_as_one() {
        let two = Sample::room(244.5, 120.0).partition(at(122.25, 0.0), at(122.25, 120.0));
        let wall = two.last();
        let joined = |operation| {
            let room = two.clone().opening(wall, 40.0, operation, 36.0);
            gas(room.service(ServiceKind::Furnace, at(60.0, 0.0), Facing::NORTH), 30_000)
        };
        joined(DoorOperation::Cased).expect_none(SLUG);
        joined(DoorOperation::Hinged)
            .expect(SLUG, &["correction, measured 800 cu ft, required 1500 cu ft"]);
    }

    #[test]
    fn what_is_not_stated_is_asked_for() {
        let bare =
            Sample::room(120.0, 120.0).service(ServiceKind::Furnace, at(60.0, 0.0), Facing::NORTH);
        bare.expect(SLUG, &["verify, measured 800 cu ft, required 50 cu ft for each 1,000 BTU/h"]);
        // The input alone is stated: fuel and vent are not.
        let some = bare.state(&INPUT, Value::Number(100_000));
        some.expect(SLUG, &["verify, measured 800 cu ft, required 5000 cu ft"]);
    }

    #[test]
    fn does_not_apply() {
        furnace(100_000).state(&VENT, Value::Word("direct vent")).expect_none(SLUG);
        furnace(100_000).state(&FUEL, Value::Word("electric")).expect_none(SLUG);
        Sample::room(120.0, 120.0).expect_none(SLUG);
    }
}
