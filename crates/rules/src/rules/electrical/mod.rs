//! Outlets, lights, fans and alarms. Receptacles and lights are judged once one is drawn: a plan without a single
//! receptacle is no electrical plan, and says nothing about receptacles.

mod alarm_near_bath;
mod appliance_light;
mod appliance_receptacle;
mod bath_vent;
mod co_alarm;
pub(crate) mod devices;
mod panel_light;
mod receptacle_bath;
mod receptacle_hall;
mod receptacle_portion;
mod receptacle_spacing;
mod room_light;
mod room_switch;
mod stair_light;
mod storey_alarm;

use crate::Rule;

pub(super) const RULES: &[Rule] = &[
    receptacle_spacing::RULE,
    receptacle_hall::RULE,
    receptacle_portion::RULE,
    receptacle_bath::RULE,
    appliance_receptacle::RULE,
    room_light::RULE,
    room_switch::RULE,
    stair_light::RULE,
    panel_light::RULE,
    appliance_light::RULE,
    storey_alarm::RULE,
    co_alarm::RULE,
    alarm_near_bath::RULE,
    bath_vent::RULE,
];
