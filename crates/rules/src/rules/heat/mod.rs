//! Heating, gas, water and drains: what is stated of them, and the air that they burn with.

mod appliance_base;
mod burners;
mod combustion_openings;
mod combustion_volume;
mod condensate_drain;
mod ejector_valves;
mod fan_outdoors;
mod fan_rate;
mod floor_drain_seal;
mod gas_connector;
mod heater_expansion;
mod heater_pan;
mod heater_relief;
mod main_valve_kind;
mod pit_lid;
mod radon_label;
mod return_near_flame;
mod sediment_trap;
mod sump_check_valve;

use crate::Rule;

pub(super) const RULES: &[Rule] = &[
    heater_pan::RULE,
    heater_relief::RULE,
    heater_expansion::RULE,
    appliance_base::RULE,
    sediment_trap::RULE,
    fan_outdoors::RULE,
    fan_rate::RULE,
    condensate_drain::RULE,
    return_near_flame::RULE,
    pit_lid::RULE,
    ejector_valves::RULE,
    sump_check_valve::RULE,
    floor_drain_seal::RULE,
    gas_connector::RULE,
    main_valve_kind::RULE,
    radon_label::RULE,
    combustion_volume::RULE,
    combustion_openings::RULE,
];
