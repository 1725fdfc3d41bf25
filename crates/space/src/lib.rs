//! What the drawing means: wall faces and layers, rooms, openings, solids, headroom and clear space.
//!
//! Everything here is a pure function of the plan. This crate knows no limit of any code, no rule and
//! no drawing: it measures, others judge.

mod facts;
mod openings;
mod overheads;
mod rooms;
mod solids;
mod walls;

pub use facts::{Facts, derive};
pub use openings::{Leaf, OpeningFacts};
pub use overheads::OverheadFacts;
pub use rooms::{Room, RoomIndex};
pub use solids::{Solid, SolidKind};
pub use walls::{LayerStrip, WallFacts};
