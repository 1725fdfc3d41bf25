//! Rooms: area, least dimension, hall width, and tags that find no room.

mod ceiling_slope;
mod closet_depth;
mod core;
mod furniture_space;
mod hall_width;
mod private_way;
mod room_area;
mod room_area_under_low_ceiling;
mod room_dimension;
mod room_heat;
mod room_two_uses;
mod room_untagged;
mod tag_open_face;
pub(crate) mod uses;
pub(crate) mod words;

use crate::Rule;

pub(super) use self::core::{least_dimension, least_hall_width};
pub(super) use room_area::area_limit;
pub(super) use room_dimension::dimension_limit;

pub(super) const RULES: &[Rule] = &[
    room_area::RULE,
    room_dimension::RULE,
    room_area_under_low_ceiling::RULE,
    hall_width::RULE,
    tag_open_face::RULE,
    room_untagged::RULE,
    room_two_uses::RULE,
    room_heat::RULE,
    private_way::RULE,
    furniture_space::RULE,
    closet_depth::RULE,
    ceiling_slope::RULE,
];
