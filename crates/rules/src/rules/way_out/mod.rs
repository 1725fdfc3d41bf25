//! Way out: escape openings and their wells.
//!
//! Each need (a sleeping room, or the basement) rests on the opening that comes nearest to what is demanded; every
//! rule but the first three is one demand on that opening.

mod basement_without_escape;
mod bedroom_without_escape;
mod candidate;
mod choice;
mod escape_area;
mod escape_bars;
mod escape_bulkhead;
mod escape_door_operation;
mod escape_height;
mod escape_kept_window;
mod escape_keyed_lock;
mod escape_leads_out;
mod escape_operation;
mod escape_path_width;
mod escape_replacement;
mod escape_shelter_exception;
mod escape_sill;
mod escape_size_estimated;
mod escape_sprinkler_exception;
mod escape_under_deck;
mod escape_width;
mod fix;
mod ladder_obstructed;
mod ladder_rungs;
mod ladder_stand_off;
mod ladder_width;
pub(crate) mod need;
#[cfg(test)]
pub(crate) mod sample;
mod told;
mod well_area;
mod well_depth_near_limit;
mod well_drain;
mod well_guard;
mod well_ladder;
mod well_ladder_encroachment;
mod well_missing;
mod well_projection;
mod well_sash_strikes;
mod well_steps;
mod well_width;

use crate::{Rule, Sheet};

pub(super) use choice::nearest;

/// Whether a sleeping room may rest on an exception: that for sprinklers, or that for storm shelters.
pub(super) fn may_do_without(sheet: &Sheet<'_>, room: &space::Room) -> bool {
    need::sprinkler_exception(sheet).is_some() || need::is_shelter(sheet, room)
}

pub(super) const RULES: &[Rule] = &[
    bedroom_without_escape::RULE,
    basement_without_escape::RULE,
    escape_sprinkler_exception::RULE,
    escape_shelter_exception::RULE,
    escape_replacement::RULE,
    escape_kept_window::RULE,
    escape_bulkhead::RULE,
    escape_operation::RULE,
    escape_door_operation::RULE,
    escape_size_estimated::RULE,
    escape_area::RULE,
    escape_height::RULE,
    escape_width::RULE,
    escape_sill::RULE,
    well_missing::RULE,
    well_area::RULE,
    well_projection::RULE,
    well_width::RULE,
    well_ladder::RULE,
    well_depth_near_limit::RULE,
    well_ladder_encroachment::RULE,
    well_sash_strikes::RULE,
    ladder_rungs::RULE,
    ladder_width::RULE,
    ladder_stand_off::RULE,
    ladder_obstructed::RULE,
    well_steps::RULE,
    well_drain::RULE,
    escape_bars::RULE,
    escape_keyed_lock::RULE,
    escape_under_deck::RULE,
    escape_leads_out::RULE,
    escape_path_width::RULE,
    well_guard::RULE,
];
