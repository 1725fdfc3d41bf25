//! Details of rooms, stated at their tags.

use super::{Subject, yes_no};
use crate::detail::Detail;
use crate::element::Body;

const ROOM: Subject = Subject::Element(|body| matches!(body, Body::RoomTag(_)));

pub const HEATED: Detail = yes_no(
    "heated",
    ROOM,
    "Heated",
    "Can the room be held at the temperature that the code asks of a habitable room?",
    None,
);

pub(super) const ALL: &[&Detail] = &[&HEATED];
