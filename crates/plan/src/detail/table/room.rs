//! Details of rooms, stated at their tags.

use super::{Subject, yes_no};
use crate::detail::Detail;
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

pub(super) const ALL: &[&Detail] = &[&MECHANICAL_AIR, &LAMPS, &HEATED];
