//! Doors: leaves against leaves, against things that stand in their way, and in keep-clears.

mod door_landing;
mod egress_door;
mod egress_door_lock;
mod leaf_against_leaf;
mod leaf_against_obstacle;
mod leaf_in_keep_clear;
mod leaves;

use crate::Rule;

pub(super) const RULES: &[Rule] = &[
    leaf_against_leaf::RULE,
    leaf_against_obstacle::RULE,
    leaf_in_keep_clear::RULE,
    egress_door_lock::RULE,
    egress_door::RULE,
    door_landing::RULE,
];
