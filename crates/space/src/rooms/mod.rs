//! Rooms: faces of the arrangement of walls, with islands.

mod contact;
mod core;
mod describe;
mod find;

use geometry::{Facing, Pt, Shape};
use measure::{Area, Len};
use plan::ElementId;
use plan::element::RoomUse;

pub use self::core::room_core;
pub(crate) use describe::{About, Tags};
pub(crate) use find::{Floors, LEAST, enclosed, within};

/// Index of a room in `Facts::rooms`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct RoomIndex(pub usize);

/// A room: a face enclosed by walls and the lines of doors and cased openings.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Room {
    pub index: RoomIndex,
    /// The floor at the finished faces; islands (columns are not islands, closed walls are) are holes.
    pub shape: Shape,
    /// Net area at the finished faces.
    pub area: Area,
    /// The tag that speaks for the room: the one with the lowest id. Others are listed in `more_tags`.
    pub tag: Option<ElementId>,
    pub more_tags: Vec<ElementId>,
    /// The tag's name; `Room 3` by its place in the list where no tag names it.
    pub name: String,
    /// The tag's use; unfinished where there is no tag.
    pub room_use: RoomUse,
    /// Along the longest wall of the room.
    pub along: Facing,
    /// Clear width and depth of the box around the room, along and across its longest wall.
    pub clear: (Len, Len),
    /// Walls with a face on the room, and openings in them that open to it, by id.
    pub walls: Vec<ElementId>,
    pub openings: Vec<ElementId>,
    /// A point well inside, for the label.
    pub label_at: Pt,
    /// Least and greatest clear height, finished floor to ceiling or overhead.
    pub lowest: Len,
    pub highest: Len,
}

#[cfg(test)]
mod tests;
