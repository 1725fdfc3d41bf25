//! Heating, gas, water and drains: what is stated of them, and the air that they burn with.

mod air_valve;
mod air_way_back;
mod appliance_base;
mod appliance_straps;
mod backwater_valve;
mod bath_fan_duct;
mod bath_fan_end;
mod bath_fan_rate;
mod burners;
mod cleanout_size;
mod cleanout_spacing;
mod combustion_openings;
mod combustion_volume;
mod condensate;
mod condensate_cleaned;
mod condensate_pump;
mod dryer_closet_air;
mod dryer_duct_build;
mod dryer_end;
mod dryer_label;
mod dryer_length;
mod duct_cavity;
mod ejector_valves;
mod ejector_vent;
mod exhaust_makeup;
mod expansion_control;
mod floor_drain_trap;
mod gas_connector;
mod gas_valve_label;
mod house;
mod kitchen_fan_rate;
mod label_clearance;
mod main_valve;
mod pit;
mod propane_basement;
mod radon_end;
mod radon_fan_place;
mod radon_pipe_size;
mod relief_pipe;
mod return_air_room;
mod return_near_flame;
mod sediment_trap;
mod standpipe_height;
mod told;
mod water_heater_pan;
mod water_pressure;
mod whirlpool_panel;

use crate::Rule;

pub(super) const RULES: &[Rule] = &[
    combustion_volume::RULE,
    combustion_openings::RULE,
    air_valve::RULE,
    air_way_back::RULE,
    appliance_base::RULE,
    appliance_straps::RULE,
    bath_fan_end::RULE,
    cleanout_spacing::RULE,
    condensate::RULE,
    condensate_pump::RULE,
    dryer_closet_air::RULE,
    dryer_duct_build::RULE,
    dryer_end::RULE,
    duct_cavity::RULE,
    ejector_valves::RULE,
    ejector_vent::RULE,
    floor_drain_trap::RULE,
    gas_connector::RULE,
    gas_valve_label::RULE,
    main_valve::RULE,
    radon_fan_place::RULE,
    radon_pipe_size::RULE,
    relief_pipe::RULE,
    sediment_trap::RULE,
    standpipe_height::RULE,
    water_heater_pan::RULE,
    dryer_length::RULE,
    bath_fan_rate::RULE,
    return_near_flame::RULE,
    return_air_room::RULE,
    pit::RULE,
    propane_basement::RULE,
    expansion_control::RULE,
    backwater_valve::RULE,
    bath_fan_duct::RULE,
    cleanout_size::RULE,
    dryer_label::RULE,
    exhaust_makeup::RULE,
    label_clearance::RULE,
    water_pressure::RULE,
    whirlpool_panel::RULE,
    condensate_cleaned::RULE,
    radon_end::RULE,
    kitchen_fan_rate::RULE,
];
