//! What walls, stairs, glass and baths are built like, and where appliances stand.

mod appliance_room;
mod basin_side;
mod bonding_clamp;
mod cable_depth;
mod column_base;
mod draftstop;
mod dryer_duct_plates;
mod finish_flame;
mod finish_smoke;
mod fireblock_material;
mod fireblock_stated;
mod fireblocking;
mod fixture_front;
pub(crate) mod fixtures;
mod floor_membrane;
mod foam_barrier;
mod foam_before_batts;
mod furring_on_concrete;
pub(crate) mod garage;
mod garage_bedroom_door;
mod garage_board;
mod garage_door;
mod garage_ignition;
mod gas_pipe_plates;
mod glass;
mod glass_by_door;
mod glass_by_stair;
mod glass_in_bath;
mod glass_in_door;
mod glass_in_guard;
mod glass_low;
mod hammer_arrestor;
mod insulation_value;
mod kraft_facing;
mod penetrations;
mod pipe_frost;
mod pipe_plates;
mod plates_on_slab;
mod rim_foam;
mod shower_door;
mod shower_head;
mod shower_size;
mod slip_joints;
mod soffit_fireblock;
mod stair_handrail;
mod sump_check_valve;
mod supply_stop;
mod toilet_side;
mod treated_fasteners;
mod under_stair;
mod vapour_retarder_fibre;

use crate::Rule;

pub(super) const RULES: &[Rule] = &[
    foam_barrier::RULE,
    furring_on_concrete::RULE,
    plates_on_slab::RULE,
    fireblocking::RULE,
    under_stair::RULE,
    stair_handrail::RULE,
    glass_low::RULE,
    glass_by_door::RULE,
    glass_in_bath::RULE,
    fixture_front::RULE,
    basin_side::RULE,
    toilet_side::RULE,
    shower_size::RULE,
    appliance_room::RULE,
    vapour_retarder_fibre::RULE,
    kraft_facing::RULE,
    fireblock_stated::RULE,
    soffit_fireblock::RULE,
    glass_in_door::RULE,
    rim_foam::RULE,
    insulation_value::RULE,
    floor_membrane::RULE,
    draftstop::RULE,
    glass_by_stair::RULE,
    garage_bedroom_door::RULE,
    garage_board::RULE,
    garage_door::RULE,
    garage_ignition::RULE,
    foam_before_batts::RULE,
    column_base::RULE,
    penetrations::RULE,
    shower_door::RULE,
    shower_head::RULE,
    pipe_plates::RULE,
    gas_pipe_plates::RULE,
    dryer_duct_plates::RULE,
    treated_fasteners::RULE,
    finish_flame::RULE,
    finish_smoke::RULE,
    cable_depth::RULE,
    fireblock_material::RULE,
    pipe_frost::RULE,
    glass_in_guard::RULE,
    slip_joints::RULE,
    supply_stop::RULE,
    hammer_arrestor::RULE,
    bonding_clamp::RULE,
    sump_check_valve::RULE,
];
