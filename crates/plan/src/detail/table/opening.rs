//! Details of doors, windows and wells.

use super::{Subject, choice, length, number, yes_no};
use crate::bounds::{Bound, CountBound};
use crate::detail::{Detail, Value};
use crate::element::{Body, BodyKind, OpeningKind};
use measure::Len;

const WINDOW: Subject = Subject::Element(
    &[BodyKind::Window],
    |body| matches!(body, Body::Opening(o) if matches!(o.kind, OpeningKind::Window(_))),
);
const DOOR: Subject = Subject::Element(
    &[BodyKind::Door],
    |body| matches!(body, Body::Opening(o) if matches!(o.kind, OpeningKind::Door(_))),
);
const WELL: Subject = Subject::Element(
    &[BodyKind::Window],
    |body| matches!(body, Body::Opening(o) if o.window().is_some_and(|w| w.well.is_some())),
);
const LADDER: Subject = Subject::Element(
    &[BodyKind::Window],
    |body| matches!(body, Body::Opening(o) if o.window().and_then(|w| w.well).is_some_and(|w| w.ladder)),
);

pub const RUNGS_APART: Detail = length(
    "rungs-apart",
    LADDER,
    "Rungs apart",
    "How far apart are the rungs of the ladder, centre to centre?",
    Bound { what: "distance between rungs", least: Len::ZERO, most: Len::inches(60) },
    Some(Value::Length(Len::inches(12))),
)
.when(&WELL_CLIMB, &[Value::Word("ladder")]);

pub const LADDER_WIDTH: Detail = length(
    "ladder-width",
    LADDER,
    "Ladder width",
    "How wide is the ladder inside its rails?",
    Bound { what: "width of the ladder", least: Len::ZERO, most: Len::inches(60) },
    Some(Value::Length(Len::inches(16))),
)
.when(&WELL_CLIMB, &[Value::Word("ladder")]);

pub const RUNGS_OFF_WALL: Detail = length(
    "rungs-off-wall",
    LADDER,
    "Rungs off the wall",
    "How far do the rungs stand off the wall of the well?",
    Bound { what: "distance of the rungs from the wall", least: Len::ZERO, most: Len::inches(24) },
    Some(Value::Length(Len::inches(3))),
)
.when(&WELL_CLIMB, &[Value::Word("ladder")]);

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

pub const GLASS_IN_DOOR: Detail = choice(
    "glass-in-door",
    DOOR,
    "Glass in the door",
    "Is there glass in the leaf, and is it safety glass? A pane that a 3 in ball doesn't pass is no glass here.",
    &["none", "safety glass", "plain glass"],
    Some("none"),
);

pub const LANDING: Detail = length(
    "landing-outside",
    DOOR,
    "Landing outside",
    "How deep is the floor or landing outside this door, in the direction in which one leaves?",
    Bound { what: "landing", least: Len::ZERO, most: Len::inches(1200) },
    None,
);

pub const STEP_DOWN: Detail = length(
    "step-down-outside",
    DOOR,
    "Step down outside",
    "How far is it down from the threshold to the landing outside?",
    Bound { what: "step down", least: Len::ZERO, most: Len::inches(120) },
    None,
);

pub const LEAF_MADE_OF: Detail = choice(
    "leaf-made-of",
    DOOR,
    "Leaf",
    "What is the leaf made of? It matters between a garage and the house.",
    &["solid wood 1 3/8 in", "steel 1 3/8 in", "rated 20 minutes", "hollow or thinner"],
    None,
);

pub const CLOSES_ITSELF: Detail = yes_no(
    "closes-itself",
    DOOR,
    "Closes itself",
    "Does a spring or closer shut and latch the door?",
    None,
);

pub const LEADS_TO: Detail = choice(
    "leads-to",
    WINDOW,
    "Leads to",
    "What lies outside the window, or at the top of its well?",
    &["yard or street", "court with a gate", "enclosed court", "garage, porch or crawl space"],
    Some("yard or street"),
);

pub const PATH_WIDTH: Detail = length(
    "path-width",
    WINDOW,
    "Way to the street",
    "How wide is the narrowest place of the yard or path from the opening to the street?",
    Bound { what: "width of the way to the street", least: Len::ZERO, most: Len::inches(1200) },
    Some(Value::Length(Len::inches(1200))),
);

pub const WELL_GUARD: Detail = choice(
    "well-guard",
    WELL,
    "Beside the well",
    "Do people walk beside the well, and what keeps them from falling in?",
    &["nobody walks there", "guard or cover", "people walk there, nothing"],
    Some("nobody walks there"),
);

pub const OPENABLE_AREA: Detail = number(
    "openable-area",
    WINDOW,
    "Opens",
    "How large is the part that opens, by the maker's sheet? Without it the net clear opening counts.",
    (CountBound { what: "area that opens", least: 0, most: 50_000 }, "sq in"),
    None,
);

pub const EGRESS_DOOR: Detail = yes_no(
    "egress-door",
    DOOR,
    "Egress door",
    "Is this the required egress door of the house?",
    Some(Value::No),
);

pub const SAFETY_GLASS: Detail = yes_no(
    "safety-glass",
    WINDOW,
    "Safety glass",
    "Does the pane carry the mark of safety glass?",
    None,
);

const ANY: Subject =
    Subject::Element(&[BodyKind::Door, BodyKind::Window], |body| matches!(body, Body::Opening(_)));

pub const HEADER: Detail = choice(
    "header",
    ANY,
    "Header",
    "What carries the load over the opening? A partition that bears nothing needs a flat plate alone.",
    &[
        "flat plate, bears nothing",
        "two 2x4",
        "two 2x6",
        "two 2x8",
        "two 2x10",
        "two 2x12",
        "steel or concrete lintel",
        "by an engineer",
    ],
    None,
);

pub const WELL_CLIMB: Detail = choice(
    "well-climb",
    LADDER,
    "Ladder or steps",
    "What does one climb out of the well by?",
    &["ladder", "steps"],
    Some("ladder"),
);

pub const STEPS_WIDTH: Detail = length(
    "steps-width",
    LADDER,
    "Width of steps",
    "How wide are the steps of the well?",
    Bound { what: "width of the steps", least: Len::ZERO, most: Len::inches(120) },
    Some(Value::Length(Len::inches(16))),
)
.when(&WELL_CLIMB, &[Value::Word("steps")]);

pub const STEPS_TREAD: Detail = length(
    "steps-tread",
    LADDER,
    "Tread of steps",
    "How deep is a step of the well?",
    Bound { what: "depth of a step", least: Len::ZERO, most: Len::inches(60) },
    Some(Value::Length(Len::inches(6))),
)
.when(&WELL_CLIMB, &[Value::Word("steps")]);

pub const STEPS_RISER: Detail = length(
    "steps-riser",
    LADDER,
    "Riser of steps",
    "How high is the highest step of the well?",
    Bound { what: "height of a step", least: Len::ZERO, most: Len::inches(60) },
    Some(Value::Length(Len::inches(12))),
)
.when(&WELL_CLIMB, &[Value::Word("steps")]);

pub const REPLACES: Detail = choice(
    "replaces-window",
    WINDOW,
    "Replaces a window",
    "Does it take the place of a window in the same frame or rough opening, of the same or a better kind, and is it \
     the maker's largest standard size for it?",
    &["no", "yes, the maker's largest", "yes, not the largest"],
    Some("no"),
);

pub const OCCUPANCY: Detail = yes_no(
    "change-of-occupancy",
    WINDOW,
    "Change of occupancy",
    "Does the permit change what the building is used as? A new room in a house that stays a house is no such change.",
    Some(Value::No),
);

pub const BULKHEAD: Detail = choice(
    "bulkhead",
    DOOR,
    "Bulkhead outside",
    "Does the door lead out below the ground, under hinged covers over a stair or a pit?",
    &["none", "covers open from inside", "covers locked or stuck"],
    Some("none"),
);

pub const BULKHEAD_WIDTH: Detail = length(
    "bulkhead-width",
    DOOR,
    "Bulkhead, clear width",
    "How wide is the bulkhead's opening with its covers fully open?",
    Bound { what: "width of the bulkhead", least: Len::ZERO, most: Len::inches(240) },
    None,
)
.when(&BULKHEAD, UNDER_COVERS);

pub const BULKHEAD_LENGTH: Detail = length(
    "bulkhead-length",
    DOOR,
    "Bulkhead, clear length",
    "How long is the bulkhead's opening, out from the house, with its covers fully open?",
    Bound { what: "length of the bulkhead", least: Len::ZERO, most: Len::inches(240) },
    None,
)
.when(&BULKHEAD, UNDER_COVERS);

const UNDER_COVERS: &[Value] =
    &[Value::Word("covers open from inside"), Value::Word("covers locked or stuck")];

pub const OUTSIDE_STAIR_LIGHT: Detail = choice(
    "outside-stair-light",
    DOOR,
    "Light of outside stair",
    "Does a stair go down to this door outside, and where is its light?",
    &["no stair outside", "near the bottom", "at the top alone", "none"],
    Some("no stair outside"),
);

pub const GLASS_AREA: Detail = number(
    "glass-area",
    WINDOW,
    "Glass",
    "How large is the glass of the window? Without it the frame counts.",
    (CountBound { what: "area of the glass", least: 0, most: 50_000 }, "sq in"),
    None,
);

pub(super) const ALL: &[&Detail] = &[
    &SAFETY_GLASS,
    &OPENABLE_AREA,
    &EGRESS_DOOR,
    &RUNGS_APART,
    &LADDER_WIDTH,
    &RUNGS_OFF_WALL,
    &LADDER_FREE,
    &WELL_DRAIN,
    &BARS,
    &KEYLESS,
    &UNDER_DECK,
    &DOOR_LOCK,
    &GLASS_IN_DOOR,
    &LANDING,
    &STEP_DOWN,
    &LEAF_MADE_OF,
    &CLOSES_ITSELF,
    &LEADS_TO,
    &PATH_WIDTH,
    &WELL_GUARD,
    &HEADER,
    &WELL_CLIMB,
    &STEPS_WIDTH,
    &STEPS_TREAD,
    &STEPS_RISER,
    &REPLACES,
    &OCCUPANCY,
    &BULKHEAD,
    &BULKHEAD_WIDTH,
    &BULKHEAD_LENGTH,
    &OUTSIDE_STAIR_LIGHT,
    &GLASS_AREA,
];
