//! Outlets, lights and alarms, judged once some of their kind are drawn: a plan without a single receptacle is
//! no electrical plan, and says nothing about receptacles.

mod alarm_near_bath;
pub(crate) mod devices;
mod receptacle_hall;
mod receptacle_portion;
mod receptacle_spacing;
mod room_light;
mod room_switch;

use crate::Rule;

pub(super) const RULES: &[Rule] = &[
    receptacle_spacing::RULE,
    receptacle_hall::RULE,
    receptacle_portion::RULE,
    room_light::RULE,
    room_switch::RULE,
    alarm_near_bath::RULE,
];
