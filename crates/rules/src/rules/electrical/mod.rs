//! Outlets, lights, fans and alarms. Receptacles and lights are judged once one is drawn: a plan without a single
//! receptacle is no electrical plan, and says nothing about receptacles.

mod alarm_near_bath;
mod alarm_near_cooker;
mod alarm_near_register;
mod alarm_power;
mod alarm_tall_room;
mod alarms_elsewhere;
mod alarms_interconnected;
mod appliance_disconnect;
mod appliance_light;
mod appliance_receptacle;
mod arc_protection;
mod bath_vent;
mod box_setback;
mod closet_light;
mod co_alarm;
pub(crate) mod devices;
mod dryer_shock_protection;
mod furnace_circuit;
mod heater_circuit;
mod near_thing;
mod outdoor_disconnect;
mod outside_stair_light;
mod panel_directory;
mod panel_floor;
mod panel_light;
mod pump_shock_protection;
mod receptacle_basin;
mod receptacle_bath;
mod receptacle_circuit;
mod receptacle_hall;
mod receptacle_over_heater;
mod receptacle_portion;
mod receptacle_spacing;
mod receptacle_washer;
mod recessed_light;
mod room_light;
mod room_switch;
mod service;
mod service_rating;
mod shock_protection;
mod shock_protection_reach;
mod stair_light;
mod stair_switches;
mod storey_alarm;
mod surge_device;
mod switch_behind_leaf;
mod switch_neutral;
mod tamper_resistant;

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
    alarm_tall_room::RULE,
    alarm_near_bath::RULE,
    bath_vent::RULE,
    tamper_resistant::RULE,
    shock_protection_reach::RULE,
    recessed_light::RULE,
    switch_neutral::RULE,
    alarms_interconnected::RULE,
    alarm_power::RULE,
    panel_directory::RULE,
    panel_floor::RULE,
    appliance_disconnect::RULE,
    shock_protection::RULE,
    arc_protection::RULE,
    closet_light::RULE,
    stair_switches::RULE,
    switch_behind_leaf::RULE,
    receptacle_washer::RULE,
    receptacle_basin::RULE,
    alarm_near_cooker::RULE,
    alarm_near_register::RULE,
    receptacle_over_heater::RULE,
    furnace_circuit::RULE,
    pump_shock_protection::RULE,
    receptacle_circuit::RULE,
    heater_circuit::RULE,
    surge_device::RULE,
    outdoor_disconnect::RULE,
    service_rating::RULE,
    outside_stair_light::RULE,
    box_setback::RULE,
    dryer_shock_protection::RULE,
    alarms_elsewhere::RULE,
];
