//! Details of furnaces, water heaters, dryers, fans and what belongs to them, and of their air.

use measure::Len;

use super::{Subject, choice, is_service, length, number, yes_no};
use crate::bounds::{Bound, CountBound};
use crate::detail::{Detail, Value};
use crate::element::{Body, BodyKind, ServiceKind};

const APPLIANCE: Subject = Subject::Element(&[BodyKind::Service], |body| {
    is_service(body, &[ServiceKind::Furnace, ServiceKind::WaterHeater])
});
const BURNER: Subject = Subject::Element(&[BodyKind::Service], |body| {
    is_service(body, &[ServiceKind::Furnace, ServiceKind::WaterHeater, ServiceKind::ClothesDryer])
});
const FURNACE: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::Furnace]));
const DRYER: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::ClothesDryer]));
const FAN: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::ExhaustFan]));
const GAS_VALVE: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::GasValve]));
const RADON: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::RadonPipe]));
const ROOM: Subject =
    Subject::Element(&[BodyKind::RoomTag], |body| matches!(body, Body::RoomTag(_)));

const fn up_to(what: &'static str, feet: i32) -> Bound {
    Bound { what, least: Len::ZERO, most: Len::feet_inches(feet, 0) }
}

const fn counted(what: &'static str, most: u32) -> CountBound {
    CountBound { what, least: 0, most }
}

const fn inches(n: i32) -> Option<Value> {
    Some(Value::Length(Len::inches(n)))
}

pub const FUEL: Detail = choice(
    "fuel",
    BURNER,
    "Fuel",
    "What does it run on?",
    &["natural gas", "propane", "oil", "electric"],
    None,
);

pub const VENT: Detail = choice(
    "vent",
    APPLIANCE,
    "Vent",
    "How does it get its air and give off its smoke? Direct vent has two pipes to the outdoors.",
    &["draft hood", "fan-assisted", "direct vent", "one pipe"],
    None,
);

pub const INPUT: Detail = number(
    "input",
    APPLIANCE,
    "Input",
    "What is its input, by the label?",
    (counted("input", 2_000_000), "BTU/h"),
    None,
);

pub const LABEL_SIDES: Detail = length(
    "label-sides",
    APPLIANCE,
    "Label: sides",
    "How far must wood and board stay from its sides, by the label?",
    up_to("clearance at the sides", 10),
    None,
);

pub const LABEL_BACK: Detail = length(
    "label-back",
    APPLIANCE,
    "Label: back",
    "How far must wood and board stay from its back, by the label?",
    up_to("clearance at the back", 10),
    None,
);

pub const BASE: Detail = choice(
    "appliance-base",
    APPLIANCE,
    "Base",
    "What does it stand on?",
    &["concrete", "masonry or metal", "wood", "gypsum board"],
    Some("concrete"),
);

pub const IGNITION_HEIGHT: Detail = length(
    "ignition-height",
    APPLIANCE,
    "Ignition above floor",
    "How high above the floor does the appliance light? It matters in a garage.",
    up_to("height", 10),
    None,
);

pub const STRAPPED: Detail = yes_no(
    "strapped",
    APPLIANCE,
    "Strapped",
    "Is it strapped to the building in its upper and its lower third?",
    None,
);

pub const CONNECTOR: Detail = length(
    "gas-connector",
    BURNER,
    "Gas connector",
    "How long is the flexible connector between the gas valve and it?",
    up_to("length of the connector", 50),
    inches(36),
);

pub const CONNECTOR_HIDDEN: Detail = yes_no(
    "gas-connector-hidden",
    BURNER,
    "Connector hidden",
    "Does the gas connector run through a wall, a floor or a ceiling, or out of sight?",
    Some(Value::No),
);

pub const SEDIMENT_TRAP: Detail = yes_no(
    "sediment-trap",
    APPLIANCE,
    "Sediment trap",
    "Is there a tee with a capped nipple in the gas pipe, after the valve?",
    None,
);

pub const CONDENSATE: Detail = choice(
    "condensate",
    FURNACE,
    "Condensate",
    "Where does the water of its cooling coil or its flue go?",
    &["none is made", "drain", "pump that stops it", "pump alone", "nowhere"],
    None,
);

pub const AIR_FROM: Detail = choice(
    "combustion-air",
    ROOM,
    "Combustion air",
    "Where does what burns in the room take its air from?",
    &[
        "the room",
        "two openings to next room",
        "openings to another level",
        "two openings outdoors",
        "two level ducts outdoors",
        "one opening outdoors",
        "a fan",
    ],
    Some("the room"),
);

pub const AIR_OPENING: Detail = number(
    "combustion-opening",
    ROOM,
    "Air opening",
    "What is the area of each opening for combustion air, across its face?",
    (counted("area", 10_000), "sq in"),
    None,
);

pub const AIR_LOUVRE: Detail = choice(
    "combustion-louvre",
    ROOM,
    "Louvre",
    "What is before the opening for combustion air?",
    &["nothing", "metal louvre", "wood louvre"],
    Some("metal louvre"),
);

pub const AIR_PLACED: Detail = yes_no(
    "combustion-placed",
    ROOM,
    "High and low",
    "Do the openings for combustion air begin within 12 in of the ceiling and, where there are two, of the floor?",
    Some(Value::Yes),
);

pub const AIR_SIDE: Detail = length(
    "combustion-side",
    ROOM,
    "Least side of opening",
    "What is the least side of an opening for combustion air?",
    up_to("side", 10),
    inches(6),
);

pub const AIR_INTAKE: Detail = length(
    "combustion-intake",
    ROOM,
    "Intake above ground",
    "How high above the ground is the intake of combustion air outdoors?",
    up_to("height", 30),
    inches(12),
);

pub const AIR_FAN: Detail = number(
    "combustion-fan",
    ROOM,
    "Air of the fan",
    "How much combustion air does the fan bring in?",
    (counted("rate", 10_000), "cfm"),
    None,
);

pub const AIR_BACK: Detail = yes_no(
    "air-way-back",
    ROOM,
    "Way back for air",
    "Does the air that is blown into the room get back to the furnace with the door shut, by a return or a transfer grille?",
    None,
);

pub const AIR_CHANGE: Detail = number(
    "air-change",
    Subject::Site,
    "Air change",
    "How many air changes an hour does the house have, in hundredths, where it was measured?",
    (counted("air change", 1_000), "/100 h"),
    None,
);

pub const STRONGEST_FAN: Detail = number(
    "strongest-fan",
    Subject::Site,
    "Strongest fan",
    "How much does the strongest exhaust fan or hood of the house move?",
    (counted("rate", 10_000), "cfm"),
    None,
);

pub const MAKEUP_AIR: Detail = yes_no(
    "makeup-air",
    Subject::Site,
    "Make-up air",
    "Is the air that a strong exhaust fan takes out brought in again by an opening of its own?",
    Some(Value::No),
);

pub const GAS_VALVE_AT: Detail = choice(
    "gas-valve-at",
    GAS_VALVE,
    "Valve at",
    "Where is this gas valve?",
    &["the appliance", "a manifold", "a decorative appliance"],
    Some("the appliance"),
);

pub const GAS_VALVE_LABEL: Detail = yes_no(
    "gas-valve-label",
    GAS_VALVE,
    "Valve labelled",
    "Does a lasting label say which appliance the gas valve serves?",
    None,
);

pub const DRYER_END: Detail = choice(
    "dryer-end",
    DRYER,
    "Duct ends",
    "Where does the dryer's duct end?",
    &["outdoors", "indoors", "attic or crawl space", "needs no duct"],
    None,
);

pub const DRYER_LENGTH: Detail = length(
    "dryer-length",
    DRYER,
    "Duct length",
    "How long is the rigid duct of the dryer, from the flexible part to the outdoors?",
    up_to("length", 200),
    None,
);

pub const DRYER_RIGHT_ANGLES: Detail = number(
    "dryer-elbows-90",
    DRYER,
    "Elbows of 90°",
    "How many elbows of 90° has the dryer's duct?",
    (counted("number", 20), ""),
    Some(2),
);

pub const DRYER_HALF_ANGLES: Detail = number(
    "dryer-elbows-45",
    DRYER,
    "Elbows of 45°",
    "How many elbows of 45° has the dryer's duct?",
    (counted("number", 20), ""),
    Some(0),
);

pub const DRYER_ELBOWS: Detail = choice(
    "dryer-elbows",
    DRYER,
    "Kind of elbow",
    "What are the elbows of the dryer's duct?",
    &["mitred", "smooth, 6 in radius", "smooth, 8 in radius", "smooth, 10 in radius"],
    Some("mitred"),
);

pub const DRYER_MAKER: Detail = length(
    "dryer-maker-length",
    DRYER,
    "Maker's duct length",
    "What is the longest duct, without elbows, that the dryer's maker allows?",
    up_to("length", 200),
    None,
);

pub const DRYER_LABEL: Detail = yes_no(
    "dryer-label",
    DRYER,
    "Length labelled",
    "Does a label within 6 ft of the dryer say how long its hidden duct is?",
    None,
);

pub const DRYER_FLEXIBLE: Detail = length(
    "dryer-flexible",
    DRYER,
    "Flexible part",
    "How long is the flexible part between the dryer and its duct?",
    up_to("length", 50),
    inches(60),
);

pub const DRYER_FLEXIBLE_HIDDEN: Detail = yes_no(
    "dryer-flexible-hidden",
    DRYER,
    "Flexible part hidden",
    "Does the flexible part run in a wall, a floor or a ceiling?",
    Some(Value::No),
);

pub const DRYER_SCREWS: Detail = yes_no(
    "dryer-screws",
    DRYER,
    "Screws in the duct",
    "Do screws reach more than 1/8 in into the dryer's duct?",
    Some(Value::No),
);

pub const DRYER_SCREEN: Detail = yes_no(
    "dryer-screen",
    DRYER,
    "Screen at the end",
    "Is there a screen where the dryer's duct ends?",
    Some(Value::No),
);

pub const DRYER_AIR: Detail = number(
    "dryer-closet-air",
    DRYER,
    "Air of the closet",
    "How large is the free opening that lets air into the dryer's closet?",
    (counted("area", 10_000), "sq in"),
    None,
);

pub const FAN_RATE: Detail = number(
    "fan-rate",
    FAN,
    "Rate",
    "How much does the fan move, by its label at 0.25 in of water?",
    (counted("rate", 2_000), "cfm"),
    None,
);

pub const FAN_ALWAYS: Detail =
    yes_no("fan-always-on", FAN, "Runs always", "Does the fan run day and night?", Some(Value::No));

pub const FAN_END: Detail = choice(
    "fan-end",
    FAN,
    "Blows to",
    "Where does the fan's duct end?",
    &["outdoors", "attic or joists", "back into the room"],
    None,
);

pub const FAN_DUCT: Detail = choice(
    "fan-duct",
    FAN,
    "Duct",
    "What is the fan's duct?",
    &["4 in smooth", "4 in flexible", "5 in flexible", "6 in flexible"],
    None,
);

pub const FAN_LENGTH: Detail = length(
    "fan-length",
    FAN,
    "Duct length",
    "How long is the fan's duct?",
    up_to("length", 200),
    None,
);

pub const FAN_ELBOWS: Detail = number(
    "fan-elbows",
    FAN,
    "Elbows",
    "How many elbows has the fan's duct?",
    (counted("number", 20), ""),
    Some(1),
);

pub const RADON_DIAMETER: Detail = length(
    "radon-diameter",
    RADON,
    "Pipe size",
    "What is the nominal size of the radon pipe?",
    up_to("size", 2),
    inches(4),
);

pub const RADON_LABEL: Detail =
    yes_no("radon-label", RADON, "Labelled", "Is the radon pipe labelled as one?", None);

pub const RADON_FAN: Detail = choice(
    "radon-fan",
    RADON,
    "Fan",
    "Where is the fan of the radon pipe?",
    &["none", "attic", "outdoors", "garage", "basement"],
    Some("none"),
);

pub const CONDENSATE_CLEANED: Detail = yes_no(
    "condensate-cleaned",
    FURNACE,
    "Condensate line opens",
    "Can the condensate drain be cleared without cutting it?",
    Some(Value::Yes),
);

pub const RADON_ABOVE_ROOF: Detail = length(
    "radon-above-roof",
    RADON,
    "Radon pipe over roof",
    "How far does the pipe end above the roof?",
    up_to("height above the roof", 40),
    inches(12),
);

pub const RADON_ABOVE_GROUND: Detail = length(
    "radon-above-ground",
    RADON,
    "Radon pipe over ground",
    "How high above the ground does the pipe end?",
    up_to("height above the ground", 200),
    inches(120),
);

pub const RADON_FROM_OPENING: Detail = length(
    "radon-from-opening",
    RADON,
    "Radon pipe to opening",
    "How far is the end of the pipe from a window or opening that is less than 2 ft below it?",
    up_to("distance from an opening", 200),
    inches(120),
);

pub(super) const ALL: &[&Detail] = &[
    &FUEL,
    &VENT,
    &INPUT,
    &LABEL_SIDES,
    &LABEL_BACK,
    &BASE,
    &IGNITION_HEIGHT,
    &STRAPPED,
    &CONNECTOR,
    &CONNECTOR_HIDDEN,
    &SEDIMENT_TRAP,
    &CONDENSATE,
    &AIR_FROM,
    &AIR_OPENING,
    &AIR_LOUVRE,
    &AIR_PLACED,
    &AIR_SIDE,
    &AIR_INTAKE,
    &AIR_FAN,
    &AIR_BACK,
    &AIR_CHANGE,
    &STRONGEST_FAN,
    &MAKEUP_AIR,
    &GAS_VALVE_AT,
    &GAS_VALVE_LABEL,
    &DRYER_END,
    &DRYER_LENGTH,
    &DRYER_RIGHT_ANGLES,
    &DRYER_HALF_ANGLES,
    &DRYER_ELBOWS,
    &DRYER_MAKER,
    &DRYER_LABEL,
    &DRYER_FLEXIBLE,
    &DRYER_FLEXIBLE_HIDDEN,
    &DRYER_SCREWS,
    &DRYER_SCREEN,
    &DRYER_AIR,
    &FAN_RATE,
    &FAN_ALWAYS,
    &FAN_END,
    &FAN_DUCT,
    &FAN_LENGTH,
    &FAN_ELBOWS,
    &RADON_DIAMETER,
    &RADON_LABEL,
    &RADON_FAN,
    &CONDENSATE_CLEANED,
    &RADON_ABOVE_ROOF,
    &RADON_ABOVE_GROUND,
    &RADON_FROM_OPENING,
];
