//! Details of outlets, switches, lights, alarms, boxes and panels.

use measure::Len;

use super::{Subject, choice, is_service, length, number, yes_no};
use crate::bounds::{Bound, CountBound};
use crate::detail::{Detail, Value};
use crate::element::{Body, BodyKind, ServiceKind};

const RECEPTACLE: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::Receptacle]));
const LIGHT: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::Light]));
const SWITCH: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::Switch]));
const ALARM: Subject = Subject::Element(&[BodyKind::Service], |body| {
    is_service(body, &[ServiceKind::SmokeAlarm, ServiceKind::CoAlarm])
});
const STAIR: Subject = Subject::Element(&[BodyKind::Stair], |body| matches!(body, Body::Stair(_)));
const PANEL: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::Panel]));
const DRYER: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::ClothesDryer]));
const BOXED: Subject = Subject::Element(&[BodyKind::Service], |body| {
    is_service(body, &[ServiceKind::Receptacle, ServiceKind::Switch, ServiceKind::JunctionBox])
});
const PUMP: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::Sump]));
const FURNACE: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::Furnace]));
const HEATER: Subject =
    Subject::Element(&[BodyKind::Service], |body| is_service(body, &[ServiceKind::WaterHeater]));
const APPLIANCE: Subject = Subject::Element(&[BodyKind::Service], |body| {
    is_service(body, &[ServiceKind::Furnace, ServiceKind::WaterHeater])
});

pub const SHOCK_PROTECTION: Detail = yes_no(
    "shock-protection",
    RECEPTACLE,
    "Shock protection",
    "Does a ground-fault circuit interrupter (GFCI) protect it, at the outlet, upstream or in the panel?",
    None,
);

pub const ARC_PROTECTION: Detail = yes_no(
    "arc-protection",
    RECEPTACLE,
    "Arc protection",
    "Does an arc-fault circuit interrupter (AFCI) protect its circuit?",
    None,
);

pub const SERVES: Detail = choice(
    "receptacle-for",
    RECEPTACLE,
    "Receptacle for",
    "What is the receptacle for?",
    &["general use", "one machine that stays", "a fire or burglar alarm"],
    Some("general use"),
);

pub const LIGHT_KIND: Detail = choice(
    "light-kind",
    LIGHT,
    "Kind of light",
    "How is the lamp enclosed?",
    &[
        "surface, enclosed",
        "surface, fluorescent",
        "recessed, enclosed",
        "recessed, fluorescent",
        "bare or hanging lamp",
        "listed for closets",
    ],
    Some("surface, enclosed"),
);

pub const ALARM_SENSES: Detail = choice(
    "alarm-senses",
    ALARM,
    "Senses by",
    "How does a smoke alarm sense smoke?",
    &["light (photoelectric)", "ions", "ions, with a silencer"],
    None,
);

pub const TAMPER_RESISTANT: Detail = yes_no(
    "tamper-resistant",
    RECEPTACLE,
    "Tamper-resistant",
    "Has it shutters that keep a child's wire out (marked TR)?",
    Some(Value::Yes),
);

pub const PROTECTION_IN_REACH: Detail = yes_no(
    "protection-in-reach",
    RECEPTACLE,
    "Reset in reach",
    "Can the device that protects it be reached without moving a machine or using a ladder?",
    Some(Value::Yes),
);

pub const RECESSED: Detail = choice(
    "recessed",
    LIGHT,
    "Recessed housing",
    "Is the light recessed, and may its housing touch insulation?",
    &[
        "not recessed",
        "recessed, may touch insulation",
        "recessed, kept clear of insulation",
        "recessed, in insulation",
    ],
    Some("not recessed"),
);

pub const NEUTRAL: Detail = yes_no(
    "neutral",
    SWITCH,
    "Neutral in the box",
    "Is there a neutral wire in the switch box?",
    Some(Value::Yes),
);

pub const SOUNDS_TOGETHER: Detail = yes_no(
    "sounds-together",
    ALARM,
    "Sounds together",
    "Does it sound together with all other alarms of the house, by wire or by listed radio?",
    None,
);

pub const ALARM_POWER: Detail = choice(
    "alarm-power",
    ALARM,
    "Power",
    "What feeds the alarm?",
    &["house wiring with battery", "battery alone"],
    None,
);

pub const DIRECTORY: Detail = yes_no(
    "panel-directory",
    PANEL,
    "Directory filled in",
    "Does a legible directory at the panel say what each circuit feeds?",
    Some(Value::Yes),
);

pub const PANEL_FLOOR: Detail = yes_no(
    "panel-floor",
    PANEL,
    "Floor is flat",
    "Is the floor of the working space level and clear of curbs and lids?",
    Some(Value::Yes),
);

pub const DISCONNECT: Detail = choice(
    "disconnect",
    APPLIANCE,
    "Disconnect",
    "How is the appliance cut off from its supply?",
    &["switch or plug in sight", "breaker in sight", "breaker that locks", "breaker out of sight"],
    Some("switch or plug in sight"),
);

pub const STAIR_SWITCHES: Detail = choice(
    "stair-switches",
    STAIR,
    "Light switched",
    "Where is the light of the stair switched?",
    &["at both levels", "at one level", "automatic"],
    None,
);

pub const OVER_HEATER: Detail = yes_no(
    "over-heater",
    RECEPTACLE,
    "Over a heater",
    "Is it over an electric baseboard heater?",
    Some(Value::No),
);

pub const CIRCUIT_AMPS: Detail = number(
    "circuit-amps",
    RECEPTACLE,
    "Circuit",
    "What is the rating of its breaker?",
    (CountBound { what: "rating of the breaker", least: 5, most: 100 }, "A"),
    Some(20),
);

pub const CIRCUIT_SHARED: Detail = yes_no(
    "circuit-shared",
    RECEPTACLE,
    "Shared circuit",
    "Does its circuit also feed something else: with a bath other rooms than baths, with a laundry anything?",
    Some(Value::No),
);

pub const PUMP_PROTECTION: Detail = yes_no(
    "pump-shock-protection",
    PUMP,
    "Pump protected",
    "Does a ground-fault circuit interrupter (GFCI) protect the outlet of its pump, also where it is wired in?",
    None,
);

pub const OWN_CIRCUIT: Detail = yes_no(
    "own-circuit",
    FURNACE,
    "Circuit of its own",
    "Is it alone on its circuit, with what belongs to it?",
    Some(Value::Yes),
);

pub const HEATER_WATTS: Detail = number(
    "heater-watts",
    HEATER,
    "Electric power",
    "What electric power does its label state, where it is heated by electricity at 240 V?",
    (CountBound { what: "electric power", least: 100, most: 50_000 }, "W"),
    None,
)
.when(&super::heat::FUEL, &[Value::Word("electric")]);

pub const HEATER_BREAKER: Detail = number(
    "heater-breaker",
    HEATER,
    "Its breaker",
    "What is the rating of its breaker?",
    (CountBound { what: "rating of the breaker", least: 5, most: 200 }, "A"),
    None,
)
.when(&super::heat::FUEL, &[Value::Word("electric")]);

pub const LIVE: Detail = choice(
    "receptacle-live",
    RECEPTACLE,
    "Live",
    "Is it always live and in reach in the room, or switched at the wall in place of a light, or part of something?",
    &["always", "switched at the wall", "part of a light or machine", "in a cabinet"],
    Some("always"),
);

pub const LIGHT_CONTROL: Detail = choice(
    "light-control",
    LIGHT,
    "Controlled by",
    "What turns the light on?",
    &["a switch", "a switch and a sensor", "a sensor alone"],
    Some("a switch"),
);

pub const DRYER_PROTECTION: Detail = yes_no(
    "dryer-shock-protection",
    DRYER,
    "Dryer protected",
    "Does a ground-fault circuit interrupter (GFCI) protect the outlet of the electric dryer?",
    None,
)
.when(&super::heat::FUEL, &[Value::Word("electric")]);

pub const BOX_SETBACK: Detail = length(
    "box-setback",
    BOXED,
    "Box behind finish",
    "How far does the front edge of the box lie behind the face of the finish?",
    Bound { what: "setback of the box", least: Len::ZERO, most: Len::inches(12) },
    Some(Value::Length(Len::ZERO)),
);

pub(super) const ALL: &[&Detail] = &[
    &SHOCK_PROTECTION,
    &STAIR_SWITCHES,
    &ARC_PROTECTION,
    &SERVES,
    &LIGHT_KIND,
    &ALARM_SENSES,
    &TAMPER_RESISTANT,
    &PROTECTION_IN_REACH,
    &RECESSED,
    &NEUTRAL,
    &SOUNDS_TOGETHER,
    &ALARM_POWER,
    &DIRECTORY,
    &PANEL_FLOOR,
    &DISCONNECT,
    &OVER_HEATER,
    &CIRCUIT_AMPS,
    &CIRCUIT_SHARED,
    &PUMP_PROTECTION,
    &OWN_CIRCUIT,
    &HEATER_WATTS,
    &HEATER_BREAKER,
    &LIVE,
    &LIGHT_CONTROL,
    &DRYER_PROTECTION,
    &BOX_SETBACK,
];
