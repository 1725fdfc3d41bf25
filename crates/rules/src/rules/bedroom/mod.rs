//! Bedroom or office: what a use demands of a room, and rooms that read as a bedroom.

mod bedroom_alarms;
mod bedroom_light;
mod borrowed;
mod demands;
#[cfg(test)]
mod demands_tests;
pub(crate) mod glazing;
mod reads_as_bedroom;
mod room_air;
mod room_daylight;

use crate::Rule;

pub use demands::{Demand, Met, demands};

pub(super) const RULES: &[Rule] = &[
    bedroom_alarms::RULE,
    bedroom_light::RULE,
    reads_as_bedroom::RULE,
    room_daylight::RULE,
    room_air::RULE,
];
