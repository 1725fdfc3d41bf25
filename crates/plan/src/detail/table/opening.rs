//! Details of doors, windows and wells.

use super::{Subject, choice, length, yes_no};
use crate::bounds::Bound;
use crate::detail::{Detail, Value};
use crate::element::{Body, OpeningKind};
use measure::Len;

const WINDOW: Subject = Subject::Element(
    |body| matches!(body, Body::Opening(o) if matches!(o.kind, OpeningKind::Window(_))),
);
const DOOR: Subject = Subject::Element(
    |body| matches!(body, Body::Opening(o) if matches!(o.kind, OpeningKind::Door(_))),
);
const WELL: Subject = Subject::Element(
    |body| matches!(body, Body::Opening(o) if o.window().is_some_and(|w| w.well.is_some())),
);
const LADDER: Subject = Subject::Element(
    |body| matches!(body, Body::Opening(o) if o.window().and_then(|w| w.well).is_some_and(|w| w.ladder)),
);

pub const RUNGS_APART: Detail = length(
    "rungs-apart",
    LADDER,
    "Rungs apart",
    "How far apart are the rungs of the ladder, centre to centre?",
    Bound { what: "distance between rungs", least: Len::ZERO, most: Len::inches(60) },
    Some(Value::Length(Len::inches(12))),
);

pub const LADDER_WIDTH: Detail = length(
    "ladder-width",
    LADDER,
    "Ladder width",
    "How wide is the ladder inside its rails?",
    Bound { what: "width of the ladder", least: Len::ZERO, most: Len::inches(60) },
    Some(Value::Length(Len::inches(16))),
);

pub const RUNGS_OFF_WALL: Detail = length(
    "rungs-off-wall",
    LADDER,
    "Rungs off the wall",
    "How far do the rungs stand off the wall of the well?",
    Bound { what: "distance of the rungs from the wall", least: Len::ZERO, most: Len::inches(24) },
    Some(Value::Length(Len::inches(3))),
);

pub const LADDER_FREE: Detail = yes_no(
    "ladder-free",
    LADDER,
    "Ladder clear of sash",
    "Can the ladder be climbed while the sash stands open?",
    Some(Value::Yes),
);

pub const WELL_DRAIN: Detail = yes_no(
    "well-drain",
    WELL,
    "Drain of the well",
    "Does the well drain to the foundation drain, or into soil that drains well?",
    None,
);

pub const BARS: Detail = choice(
    "bars",
    WINDOW,
    "Bars or cover",
    "What stands before the window or over its well?",
    &["none", "released from inside without a tool", "locked or fixed"],
    Some("none"),
);

pub const KEYLESS: Detail = yes_no(
    "keyless",
    WINDOW,
    "Opens without a key",
    "Can it be opened from inside without a key, a tool or special knowledge?",
    Some(Value::Yes),
);

pub const UNDER_DECK: Detail = length(
    "under-deck",
    WINDOW,
    "Height under deck",
    "How high is it under a deck or porch over the window? Leave it empty where there is none.",
    Bound { what: "height under the deck", least: Len::ZERO, most: Len::inches(360) },
    Some(Value::Length(Len::inches(360))),
);

pub const DOOR_LOCK: Detail = choice(
    "door-lock",
    DOOR,
    "Lock",
    "How is the door locked towards the inside?",
    &["none, or a turn knob", "key on both sides"],
    Some("none, or a turn knob"),
);

pub(super) const ALL: &[&Detail] = &[
    &RUNGS_APART,
    &LADDER_WIDTH,
    &RUNGS_OFF_WALL,
    &LADDER_FREE,
    &WELL_DRAIN,
    &BARS,
    &KEYLESS,
    &UNDER_DECK,
    &DOOR_LOCK,
];
