//! Access: what must stay reachable, and the clear space that it needs.

mod appliance_passage;
mod appliance_service_space;
mod breaker_height;
mod buried;
mod cleanout_clearance;
mod cleanout_concealed;
mod clear_away;
mod clear_box;
mod damper_access;
mod disconnect_space;
mod filter_access;
mod filter_pull_out;
mod floor_drain_access;
mod gas_meter_ignition;
mod gas_valve_concealed;
mod gas_valve_distance;
mod hose_bib_valve_access;
mod in_floor;
mod in_room;
pub(crate) mod judge;
mod junction_box_access;
mod keep;
mod panel;
mod panel_dedicated_space;
mod panel_depth;
mod panel_door_swing;
mod panel_height;
mod panel_no_bath;
mod panel_no_clothes_closet;
mod panel_no_stair;
mod panel_open_door;
mod panel_width;
mod plumbing_device_access;
mod radon_pipe_visible;
mod sump_access;
mod water_meter_space;
mod water_valve_access;
mod ways;

use crate::Rule;

pub(crate) use keep::{KEEP, KEEP_KINDS, Keep, keep, keep_clears, keeps};

pub(super) const RULES: &[Rule] = &[
    panel_depth::RULE,
    panel_width::RULE,
    panel_height::RULE,
    panel_door_swing::RULE,
    panel_dedicated_space::RULE,
    panel_no_bath::RULE,
    panel_no_clothes_closet::RULE,
    panel_no_stair::RULE,
    breaker_height::RULE,
    disconnect_space::RULE,
    junction_box_access::RULE,
    appliance_service_space::RULE,
    appliance_passage::RULE,
    filter_access::RULE,
    filter_pull_out::RULE,
    damper_access::RULE,
    gas_valve_distance::RULE,
    gas_valve_concealed::RULE,
    gas_meter_ignition::RULE,
    water_valve_access::RULE,
    plumbing_device_access::RULE,
    hose_bib_valve_access::RULE,
    water_meter_space::RULE,
    cleanout_clearance::RULE,
    cleanout_concealed::RULE,
    floor_drain_access::RULE,
    sump_access::RULE,
    radon_pipe_visible::RULE,
    panel_open_door::RULE,
];
