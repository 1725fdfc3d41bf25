//! The part of a room that is wide enough both ways.

use geometry::{Shape, square_core};
use measure::Len;

use super::Room;

/// The part of a room's floor that a square of this side reaches while it stays inside, aligned with
/// the room's longest wall. What is left out (an alcove, a passage, the tip of a corner) measures less
/// than `side` in one of the two directions.
pub fn room_core(room: &Room, side: Len) -> Vec<Shape> {
    square_core(&room.shape, room.along, side)
}
