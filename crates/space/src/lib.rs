//! What the drawing means: wall faces and layers, rooms, openings, solids, headroom and clear space.
//!
//! Everything here is a pure function of the plan. This crate knows no limit of any code, no rule and
//! no drawing: it measures, others judge.

pub mod carry;
mod changes;
mod common_wall;
mod cover;
mod cut;
mod facts;
mod gap;
mod headroom;
mod openings;
mod overheads;
mod places;
mod reach;
mod rooms;
mod round;
mod solids;
mod standing;
mod step;
#[cfg(test)]
#[path = "../tests/common/mod.rs"]
mod testing;
mod wall_space;
mod walls;
pub mod ways;

pub use changes::{BEFORE_A_DEVICE, BEFORE_A_FACE, Changes, Near, On};
pub use common_wall::common_walls;
pub use cover::{Cover, CoverBy, cover};
pub use cut::{Cut, CutKind, CutPiece, CutRoom, cut, lowest_over};
pub use facts::{Facts, derive, derive_in_parts};
pub use gap::{ClearGap, clear_to_next};
pub use headroom::{HeightRegion, area_at_least, clear_over, height_regions, height_shares};
pub use openings::{DoorClear, Leaf, NetClear, OpeningFacts, door_clear, leaf_reaches, net_clear};
pub use overheads::OverheadFacts;
pub use plan::List;
pub use reach::{
    ClearSpan, Intrusion, Zone, box_before, clear_before, clear_span, front_box, intrusions,
};
pub use rooms::{Room, RoomIndex, room_core};
pub use solids::{Solid, SolidKind, Solids};
pub use step::derive_from;
pub use wall_space::{WallSpace, wall_spaces};
pub use walls::{LayerStrip, WallFacts, WallKind};
