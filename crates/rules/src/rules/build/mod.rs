//! What walls, stairs, glass and the places of appliances are built like.

mod appliance_room;
mod fireblocking;
mod foam_barrier;
mod furring_on_concrete;
mod glass;
mod glass_by_door;
mod glass_in_bath;
mod glass_low;
mod plates_on_slab;
mod stair_handrail;
mod under_stair;

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
    appliance_room::RULE,
];
