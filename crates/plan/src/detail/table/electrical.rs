//! Details of outlets, switches, lights, alarms, boxes and panels.

use super::{Subject, choice, is_service, yes_no};
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
];
