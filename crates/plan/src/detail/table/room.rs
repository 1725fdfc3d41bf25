//! Details of rooms, stated at their tags.

use super::{Subject, number, yes_no};
use crate::bounds::CountBound;
use crate::detail::{Detail, Value};
use crate::element::{Body, BodyKind};

const ROOM: Subject =
    Subject::Element(&[BodyKind::RoomTag], |body| matches!(body, Body::RoomTag(_)));

pub const MECHANICAL_AIR: Detail = yes_no(
    "mechanical-air",
    ROOM,
    "Mechanical air",
    "Is the room aired by a fan or system that serves the whole house, at the rate of the code?",
    None,
);

pub const LAMPS: Detail = yes_no(
    "lamps",
    ROOM,
    "Lamps light it all",
    "Do lamps give an average of 6 footcandles over the room, 30 in above the floor?",
    None,
);

pub const HEATED: Detail = yes_no(
    "heated",
    ROOM,
    "Heated to 68 °F",
    "Can the room be held at 68 °F (20 °C) on the coldest design day, 3 ft above the floor and 2 ft from the walls?",
    None,
);

pub const STORM_SHELTER: Detail = yes_no(
    "storm-shelter",
    ROOM,
    "Storm shelter",
    "Is the room a storm shelter, built and marked as one to ICC 500?",
    Some(Value::No),
);

pub const SLEEPING_LOFT: Detail = yes_no(
    "sleeping-loft",
    ROOM,
    "Sleeping loft",
    "Does a loft to sleep in open to the room?",
    Some(Value::No),
);

pub const SLOPED_CEILING: Detail = yes_no(
    "sloped-ceiling",
    ROOM,
    "Sloped ceiling",
    "Does the ceiling of the room slope?",
    Some(Value::No),
);

pub const FLOOR_AT_HEIGHT: Detail = number(
    "floor-at-height",
    ROOM,
    "Floor at full height",
    "How much of the floor lies under the part of the slope that is as high as a level ceiling must be?",
    (CountBound { what: "floor at full height", least: 0, most: 100_000 }, "sq ft"),
    None,
)
.when(&SLOPED_CEILING, &[Value::Yes]);

pub const FLOOR_OVER_FIVE: Detail = number(
    "floor-over-five-feet",
    ROOM,
    "Floor over 5 ft",
    "How much of the floor lies under a height of 5 ft or more?",
    (CountBound { what: "floor under 5 ft or more", least: 0, most: 100_000 }, "sq ft"),
    None,
)
.when(&SLOPED_CEILING, &[Value::Yes]);

pub(super) const ALL: &[&Detail] = &[
    &MECHANICAL_AIR,
    &LAMPS,
    &HEATED,
    &STORM_SHELTER,
    &SLEEPING_LOFT,
    &SLOPED_CEILING,
    &FLOOR_AT_HEIGHT,
    &FLOOR_OVER_FIVE,
];
