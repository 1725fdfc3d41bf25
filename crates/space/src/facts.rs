//! All derived facts of one plan.

use std::sync::Arc;

use plan::{ElementId, Plan};

use crate::{OpeningFacts, OverheadFacts, Room, RoomIndex, Solid, WallFacts};

/// What was derived from one plan. Every list is in a fixed order: elements by id, rooms by their
/// lowest-leftmost corner.
#[derive(Clone, Debug)]
pub struct Facts {
    pub plan: Arc<Plan>,
    /// Standing foundation walls, partitions and furring.
    pub walls: Vec<WallFacts>,
    /// Standing openings whose host stands.
    pub openings: Vec<OpeningFacts>,
    pub rooms: Vec<Room>,
    /// Everything standing that takes up floor or body space, as convex pieces with a height range.
    pub solids: Vec<Solid>,
    pub overheads: Vec<OverheadFacts>,
}

/// Derives the facts of a plan from scratch.
pub fn derive(_plan: &Arc<Plan>) -> Facts {
    unimplemented!()
}

impl Facts {
    pub fn wall(&self, _id: ElementId) -> Option<&WallFacts> {
        unimplemented!()
    }

    pub fn opening(&self, _id: ElementId) -> Option<&OpeningFacts> {
        unimplemented!()
    }

    pub fn room(&self, index: RoomIndex) -> &Room {
        &self.rooms[index.0]
    }

    /// The room whose floor holds a point (a point on a boundary counts for the first such room).
    pub fn room_at(&self, _p: geometry::Pt) -> Option<RoomIndex> {
        unimplemented!()
    }
}
