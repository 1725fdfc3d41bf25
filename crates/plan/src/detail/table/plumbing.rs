//! Details of valves, drains, pits and bath fixtures.

use super::{Subject, choice, is_service, length, yes_no};
use crate::bounds::Bound;
use crate::detail::{Detail, Value};
use crate::element::ServiceKind;
use measure::Len;

const PIT: Subject =
    Subject::Element(|body| is_service(body, &[ServiceKind::Sump, ServiceKind::Ejector]));
const SUMP: Subject = Subject::Element(|body| is_service(body, &[ServiceKind::Sump]));
const EJECTOR: Subject = Subject::Element(|body| is_service(body, &[ServiceKind::Ejector]));
const DRAIN: Subject = Subject::Element(|body| is_service(body, &[ServiceKind::FloorDrain]));
const GAS_VALVE: Subject = Subject::Element(|body| is_service(body, &[ServiceKind::GasValve]));
const MAIN: Subject = Subject::Element(|body| is_service(body, &[ServiceKind::MainWaterValve]));
const RADON: Subject = Subject::Element(|body| is_service(body, &[ServiceKind::RadonPipe]));

pub const SEALED_LID: Detail = yes_no(
    "sealed-lid",
    PIT,
    "Sealed lid",
    "Does the pit have a rigid lid that is sealed and comes off?",
    None,
);

pub const EJECTOR_VALVES: Detail = choice(
    "ejector-valves",
    EJECTOR,
    "Check and stop valve",
    "Are there a check valve and a full-open valve in its pipe, and where?",
    &["above the lid, in reach", "below the lid or out of reach", "none"],
    Some("above the lid, in reach"),
);

pub const SUMP_CHECK: Detail = yes_no(
    "sump-check-valve",
    SUMP,
    "Check valve",
    "Is there a check valve in the pipe of the pump?",
    Some(Value::Yes),
);

pub const DRAIN_SEAL: Detail = choice(
    "trap-seal",
    DRAIN,
    "Seal kept by",
    "What keeps the trap of the floor drain from drying out?",
    &["used often", "trap primer", "barrier device", "nothing"],
    Some("used often"),
);

pub const CONNECTOR: Detail = length(
    "connector",
    GAS_VALVE,
    "Connector",
    "How long is the connector between the valve and the appliance?",
    Bound { what: "length of the connector", least: Len::ZERO, most: Len::inches(240) },
    Some(Value::Length(Len::inches(36))),
);

pub const FULL_OPEN: Detail = yes_no(
    "full-open",
    MAIN,
    "Full-open with drain",
    "Is the main valve a full-open one, with a drain on the house side?",
    Some(Value::Yes),
);

pub const RADON_LABEL: Detail = yes_no(
    "radon-label",
    RADON,
    "Label in sight",
    "Is the pipe labelled “Radon” where it can be seen on each floor?",
    Some(Value::Yes),
);

pub(super) const ALL: &[&Detail] =
    &[&SEALED_LID, &EJECTOR_VALVES, &SUMP_CHECK, &DRAIN_SEAL, &CONNECTOR, &FULL_OPEN, &RADON_LABEL];
