//! Details of stairs.

use super::{Subject, choice, length, number, yes_no};
use crate::bounds::{Bound, CountBound};
use crate::detail::{Detail, Value};
use crate::element::{Body, BodyKind};
use measure::Len;

const STAIR: Subject = Subject::Element(&[BodyKind::Stair], |body| matches!(body, Body::Stair(_)));

pub const HANDRAIL: Detail = choice(
    "handrail",
    STAIR,
    "Handrail",
    "On which sides is there a handrail?",
    &["none", "one side", "both sides"],
    None,
)
.when(&STAIR_KIND, WALKED);

pub const RAIL_HEIGHT: Detail = length(
    "rail-height",
    STAIR,
    "Height of handrail",
    "How high is the top of the handrail above the line of the nosings?",
    Bound { what: "height of the handrail", least: Len::ZERO, most: Len::inches(60) },
    Some(Value::Length(Len::inches(36))),
)
.when(&STAIR_KIND, WALKED);

pub const RAIL_PROJECTION: Detail = length(
    "rail-projection",
    STAIR,
    "Rail into the stair",
    "How far does the handrail reach into the width of the stair?",
    Bound { what: "projection of the handrail", least: Len::ZERO, most: Len::inches(24) },
    Some(Value::Length(Len::sixty_fourths(224))),
)
.when(&STAIR_KIND, WALKED);

pub const RAIL_GAP: Detail = length(
    "rail-gap",
    STAIR,
    "Gap behind rail",
    "How much room is there between the handrail and the wall?",
    Bound { what: "gap behind the handrail", least: Len::ZERO, most: Len::inches(24) },
    Some(Value::Length(Len::sixty_fourths(96))),
)
.when(&STAIR_KIND, WALKED);

pub const RAIL_GRIP: Detail = choice(
    "rail-grip",
    STAIR,
    "Grip of handrail",
    "What is the shape of the handrail?",
    &["round, 1 1/4 to 2 in", "profile with finger recesses", "flat board or larger"],
    Some("round, 1 1/4 to 2 in"),
)
.when(&STAIR_KIND, WALKED);

pub const RAIL_WHOLE: Detail = yes_no(
    "rail-continuous",
    STAIR,
    "Rail in one run",
    "Does the handrail run from the lowest to the highest riser, its ends turned to a wall or post?",
    Some(Value::Yes),
)
.when(&STAIR_KIND, WALKED);

pub const NOSING: Detail = length(
    "nosing",
    STAIR,
    "Nosing",
    "How far does a tread reach over the one below?",
    Bound { what: "nosing", least: Len::ZERO, most: Len::inches(12) },
    Some(Value::Length(Len::inches(1))),
)
.when(&STAIR_KIND, WALKED);

pub const OPEN_RISER: Detail = length(
    "open-riser",
    STAIR,
    "Gap at the riser",
    "How wide is the gap between two treads? 0 where the risers are closed.",
    Bound { what: "gap at the riser", least: Len::ZERO, most: Len::inches(24) },
    Some(Value::Length(Len::inches(0))),
)
.when(&STAIR_KIND, STRAIGHT);

pub const RISER_DIFFERENCE: Detail = length(
    "riser-difference",
    STAIR,
    "Riser difference",
    "How much do the tallest and the lowest riser differ, with the finish floors in place?",
    Bound { what: "difference between risers", least: Len::ZERO, most: Len::inches(12) },
    Some(Value::Length(Len::inches(0))),
)
.when(&STAIR_KIND, WALKED);

pub const TREAD_DIFFERENCE: Detail = length(
    "tread-difference",
    STAIR,
    "Tread difference",
    "How much do the deepest and the shallowest tread differ?",
    Bound { what: "difference between treads", least: Len::ZERO, most: Len::inches(12) },
    Some(Value::Length(Len::inches(0))),
)
.when(&STAIR_KIND, WALKED);

pub const GUARD_OPENING: Detail = length(
    "guard-opening",
    STAIR,
    "Gap in the guard",
    "How large a ball passes the guard at the open side of the stair? 0 for a closed one.",
    Bound { what: "gap in the guard", least: Len::ZERO, most: Len::inches(24) },
    Some(Value::Length(Len::inches(0))),
)
.when(&STAIR_KIND, WALKED);

pub const STRINGERS_BLOCKED: Detail = yes_no(
    "stringers-blocked",
    STAIR,
    "Stringers blocked",
    "Is the space between the stringers closed at the top and the bottom of the run?",
    None,
);

pub const UNDERSIDE_LINED: Detail = yes_no(
    "underside-lined",
    STAIR,
    "Underside lined",
    "Is the closed space under the stair lined with 1/2 in board on its inside, or sealed off for good?",
    None,
);

pub const GUARD_HEIGHT: Detail = length(
    "guard-height",
    STAIR,
    "Height of guard",
    "How high is the guard at the open side of the stair above the line of the nosings?",
    Bound { what: "height of the guard", least: Len::ZERO, most: Len::inches(120) },
    None,
)
.when(&STAIR_KIND, WALKED);

pub const HEAD_LANDING: Detail = length(
    "head-landing",
    STAIR,
    "Floor at the head",
    "How deep is the floor at the head of the stair, up to a door that swings over it or a wall?",
    Bound { what: "depth of the floor at the head", least: Len::ZERO, most: Len::inches(600) },
    Some(Value::Length(Len::inches(36))),
)
.when(&STAIR_KIND, WALKED);

pub const BETWEEN_RAILS: Detail = length(
    "between-rails",
    STAIR,
    "Width at the rails",
    "How wide is the stair at the height of its handrails and below?",
    Bound { what: "width between the handrails", least: Len::ZERO, most: Len::inches(240) },
    Some(Value::Length(Len::sixty_fourths(2016))),
)
.when(&STAIR_KIND, STRAIGHT);

/// The kinds that the rules for stairs hold for.
const WALKED: &[Value] =
    &[Value::Word("straight"), Value::Word("with winders"), Value::Word("spiral")];
/// Those of them that are no spiral, for which several demands are lifted.
const STRAIGHT: &[Value] = &[Value::Word("straight"), Value::Word("with winders")];

pub const STAIR_KIND: Detail = choice(
    "stair-kind",
    STAIR,
    "Kind of stair",
    "Are there winders at a turn, or is it a spiral stair, or a cellar stair under a bulkhead that isn't the way out?",
    &["straight", "with winders", "spiral", "under a bulkhead"],
    Some("straight"),
);

pub const WINDER_WALKLINE: Detail = length(
    "winder-walkline",
    STAIR,
    "Winder at walk line",
    "How deep is the shallowest winder 12 in from its narrow end?",
    Bound { what: "depth of a winder", least: Len::ZERO, most: Len::inches(60) },
    None,
)
.when(&STAIR_KIND, &[Value::Word("with winders")]);

pub const WINDER_NARROW: Detail = length(
    "winder-narrow",
    STAIR,
    "Winder, narrow end",
    "How deep is the shallowest winder at its narrow end, within the clear width?",
    Bound { what: "narrow end of a winder", least: Len::ZERO, most: Len::inches(60) },
    None,
)
.when(&STAIR_KIND, &[Value::Word("with winders")]);

pub const WALKLINE_RADIUS: Detail = length(
    "walkline-radius",
    STAIR,
    "Walk line, radius",
    "How far is the walk line from the middle of the spiral? It lies 12 in from the narrow side of the treads.",
    Bound { what: "radius of the walk line", least: Len::ZERO, most: Len::inches(120) },
    Some(Value::Length(Len::inches(15))),
)
.when(&STAIR_KIND, &[Value::Word("spiral")]);

pub const TREAD_SLOPE: Detail = length(
    "tread-slope",
    STAIR,
    "Slope of treads",
    "How much does the steepest tread or landing fall over 4 ft of its length?",
    Bound { what: "slope of the treads", least: Len::ZERO, most: Len::inches(24) },
    Some(Value::Length(Len::inches(0))),
)
.when(&STAIR_KIND, WALKED);

pub const RISER_LEAN: Detail = number(
    "riser-lean",
    STAIR,
    "Lean of risers",
    "How far do the risers lean from the vertical, in degrees?",
    (CountBound { what: "lean of the risers", least: 0, most: 90 }, "°"),
    Some(0),
)
.when(&STAIR_KIND, WALKED);

pub const TREAD_LIGHT: Detail = number(
    "tread-light",
    STAIR,
    "Light on the treads",
    "How much light falls on the darkest tread or landing, at its middle, in tenths of a footcandle: 10 for 1.0?",
    (CountBound { what: "light on the treads", least: 0, most: 10_000 }, "tenths fc"),
    Some(10),
);

pub const GUARD_GLASS: Detail = choice(
    "guard-glass",
    STAIR,
    "Glass in the guard",
    "Is there glass in the guard or rail, and is it safety glass?",
    &["none", "safety glass", "plain glass"],
    Some("none"),
)
.when(&STAIR_KIND, WALKED);

pub const LEADS_UP: Detail = choice(
    "leads-up",
    STAIR,
    "Leads up into",
    "Where does one arrive at its head, on the way out of the house?",
    &["the house", "a garage"],
    Some("the house"),
)
.when(&STAIR_KIND, WALKED);

pub(super) const ALL: &[&Detail] = &[
    &STAIR_KIND,
    &GUARD_HEIGHT,
    &HANDRAIL,
    &RAIL_HEIGHT,
    &RAIL_PROJECTION,
    &RAIL_GAP,
    &RAIL_GRIP,
    &RAIL_WHOLE,
    &NOSING,
    &OPEN_RISER,
    &RISER_DIFFERENCE,
    &TREAD_DIFFERENCE,
    &GUARD_OPENING,
    &STRINGERS_BLOCKED,
    &UNDERSIDE_LINED,
    &HEAD_LANDING,
    &BETWEEN_RAILS,
    &WINDER_WALKLINE,
    &WINDER_NARROW,
    &WALKLINE_RADIUS,
    &TREAD_SLOPE,
    &RISER_LEAN,
    &TREAD_LIGHT,
    &GUARD_GLASS,
    &LEADS_UP,
];
