//! Details of valves, drains, pits and bath fixtures, and of the water that comes in.

use measure::Len;

use super::{Subject, choice, is_service, length, number, yes_no};
use crate::bounds::{Bound, CountBound};
use crate::detail::{Detail, Value};
use crate::element::{Body, BodyKind, ServiceKind};

const PIT: Subject = Subject::Element(&[BodyKind::Service], |body| {
    is_service(body, &[ServiceKind::Sump, ServiceKind::Ejector])
});
const EJECTOR: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::Ejector]));
const HEATER: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::WaterHeater]));
const MAIN: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::MainWaterValve]));
const CLEANOUT: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::Cleanout]));
const DRAIN: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::FloorDrain]));
const STANDPIPE: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::Standpipe]));
const AIR_VALVE: Subject = Subject::Element(&[BodyKind::Service], |body| {
    is_service(body, &[ServiceKind::AirAdmittanceValve])
});
const SHOWER: Subject = Subject::Element(&[BodyKind::Furnishing], |body| match body {
    Body::Furnishing(f) => f.name_holds("shower"),
    _ => false,
});
const TUB: Subject = Subject::Element(&[BodyKind::Furnishing], |body| match body {
    Body::Furnishing(f) => f.name_holds("tub"),
    _ => false,
});

const WASHER: Subject = Subject::Element(&[BodyKind::Furnishing], |body| {
    called(body, &["washer", "washing", "dishwasher"])
});
/// Fixtures whose supply has a stop: tubs and showers need none.
const STOPPED: Subject = Subject::Element(&[BodyKind::Furnishing], |body| {
    called(body, &["toilet", "basin", "lavatory", "sink", "bidet"])
});
const SUMP: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::Sump]));

/// Whether one of some words is in the name of a furnishing.
fn called(body: &Body, words: &[&str]) -> bool {
    matches!(body, Body::Furnishing(f) if f.is_called(words))
}

const fn up_to(what: &'static str, feet: i32) -> Bound {
    Bound { what, least: Len::ZERO, most: Len::feet_inches(feet, 0) }
}

const fn inches(n: i32) -> Option<Value> {
    Some(Value::Length(Len::inches(n)))
}

pub const SEALED_LID: Detail = yes_no(
    "sealed-lid",
    PIT,
    "Sealed lid",
    "Does the pit have a rigid lid that is sealed and comes off?",
    None,
);

pub const PIT_DEPTH: Detail =
    length("pit-depth", PIT, "Pit depth", "How deep is the pit?", up_to("depth", 20), inches(24));

pub const PIT_VENT: Detail =
    yes_no("pit-vent", EJECTOR, "Vented", "Has the pit a vent of its own to the open air?", None);

pub const EJECTOR_VALVES: Detail = choice(
    "ejector-valves",
    EJECTOR,
    "Valves",
    "Which valves has the pump's pipe above the lid, within reach?",
    &["check and full-open", "check alone", "none"],
    None,
);

pub const HEATER_PAN: Detail = choice(
    "heater-pan",
    HEATER,
    "Pan",
    "Does the water heater stand in a pan with a drain?",
    &["pan with a drain", "pan without a drain", "none", "no tank"],
    None,
);

pub const RELIEF_END: Detail = length(
    "relief-end",
    HEATER,
    "Relief pipe end",
    "How high above the finished floor or the receptor does the pipe of the relief valve end?",
    up_to("height", 10),
    inches(6),
);

pub const RELIEF_FALLS: Detail = yes_no(
    "relief-falls",
    HEATER,
    "Relief pipe falls",
    "Does the relief pipe fall all the way and end in the same room, without trap, valve or thread?",
    Some(Value::Yes),
);

pub const EXPANSION: Detail = yes_no(
    "expansion-tank",
    HEATER,
    "Expansion tank",
    "Is there an expansion tank or the like on the cold pipe?",
    None,
);

pub const STATIC_PRESSURE: Detail = number(
    "water-pressure",
    Subject::Site,
    "Water pressure",
    "What is the static pressure of the water that comes in?",
    (CountBound { what: "pressure", least: 0, most: 500 }, "psi"),
    None,
);

pub const MAIN_DRAINS: Detail = yes_no(
    "main-valve-drains",
    MAIN,
    "Drains, full opening",
    "Is the main valve a full-open one, with a way to drain the pipes behind it?",
    Some(Value::Yes),
);

pub const DRAIN_PIPE: Detail = length(
    "drain-pipe",
    CLEANOUT,
    "Pipe size",
    "What is the nominal size of the drain that it opens?",
    up_to("size", 4),
    inches(4),
);

pub const PLUG_SIZE: Detail = length(
    "cleanout-plug",
    CLEANOUT,
    "Cleanout size",
    "What is the nominal size of the cleanout?",
    up_to("size", 4),
    inches(4),
);

pub const NEXT_CLEANOUT: Detail = length(
    "next-cleanout",
    CLEANOUT,
    "To the next one",
    "How far is it along the drain to the next cleanout?",
    up_to("distance", 1000),
    None,
);

pub const TRAP_SEAL: Detail = choice(
    "trap-seal",
    DRAIN,
    "Trap kept wet by",
    "What keeps the trap of the floor drain from drying out?",
    &["a primer", "a barrier", "a deep seal", "nothing"],
    None,
);

pub const DRAIN_OUTLET: Detail = length(
    "drain-outlet",
    DRAIN,
    "Outlet",
    "What is the nominal size of the floor drain's outlet?",
    up_to("size", 2),
    inches(2),
);

pub const STANDPIPE_HEIGHT: Detail = length(
    "standpipe-height",
    STANDPIPE,
    "Above the trap",
    "How high is the top of the standpipe above the weir of its trap?",
    up_to("height", 20),
    inches(30),
);

pub const AIR_VALVE_VENTS: Detail = choice(
    "air-valve-vents",
    AIR_VALVE,
    "Vents",
    "What does the air admittance valve vent?",
    &["a fixture or a branch", "a stack", "a pit with a pump"],
    Some("a fixture or a branch"),
);

pub const AIR_VALVE_ABOVE: Detail = length(
    "air-valve-above",
    AIR_VALVE,
    "Above the drain",
    "How high is it above the branch that it vents, or for a stack above the rim of the highest fixture?",
    up_to("height", 30),
    inches(6),
);

pub const AIR_VALVE_BREATHES: Detail = yes_no(
    "air-valve-breathes",
    AIR_VALVE,
    "Gets air",
    "Does room air get to it, through a louvred cover where it is in a wall?",
    Some(Value::Yes),
);

pub const BELOW_SEWER: Detail = yes_no(
    "below-sewer",
    Subject::Site,
    "Below street sewer",
    "Do fixtures of the basement lie below the next manhole cover of the street sewer?",
    None,
);

pub const SHOWER_WAY: Detail = length(
    "shower-way-in",
    SHOWER,
    "Way into shower",
    "How wide is the way into the shower, its door open?",
    up_to("way into the shower", 10),
    None,
);

pub const WHIRLPOOL: Detail = choice(
    "whirlpool-panel",
    TUB,
    "Pump and panel",
    "Has the tub a pump, and how is the pump reached?",
    &["no pump", "near panel of 12 in", "far panel of 12 in", "panel of 18 in", "no panel"],
    Some("no pump"),
);

pub const SLIP_JOINTS: Detail = choice(
    "slip-joints",
    TUB,
    "Slip joints of trap",
    "Has the trap slip joints, and how are they reached?",
    &["none, or in sight", "panel of 12 in", "smaller panel", "closed in"],
    Some("none, or in sight"),
);

pub const SUPPLY_STOP: Detail = yes_no(
    "supply-stop",
    STOPPED,
    "Stop on its supply",
    "Is there a stop valve on each water supply of it, here or at a labelled manifold?",
    Some(Value::Yes),
);

pub const HAMMER: Detail = yes_no(
    "hammer-arrestor",
    WASHER,
    "Water-hammer arrestor",
    "Is there a water-hammer arrestor at its quick-closing valves?",
    None,
);

pub const BOND_CLAMP: Detail = yes_no(
    "bonding-clamp",
    MAIN,
    "Bonding in reach",
    "Do the bonding clamp on a metal water pipe, and the jumper across the meter, stay where they can be reached?",
    Some(Value::Yes),
);

pub const SUMP_CHECK: Detail = yes_no(
    "sump-check-valve",
    SUMP,
    "Check valve",
    "Is there a check valve on the pump's discharge?",
    Some(Value::Yes),
);

pub(super) const ALL: &[&Detail] = &[
    &SEALED_LID,
    &PIT_DEPTH,
    &PIT_VENT,
    &EJECTOR_VALVES,
    &HEATER_PAN,
    &RELIEF_END,
    &RELIEF_FALLS,
    &EXPANSION,
    &STATIC_PRESSURE,
    &MAIN_DRAINS,
    &DRAIN_PIPE,
    &PLUG_SIZE,
    &NEXT_CLEANOUT,
    &TRAP_SEAL,
    &DRAIN_OUTLET,
    &STANDPIPE_HEIGHT,
    &AIR_VALVE_VENTS,
    &AIR_VALVE_ABOVE,
    &AIR_VALVE_BREATHES,
    &BELOW_SEWER,
    &SHOWER_WAY,
    &WHIRLPOOL,
    &SLIP_JOINTS,
    &SUPPLY_STOP,
    &HAMMER,
    &BOND_CLAMP,
    &SUMP_CHECK,
];
