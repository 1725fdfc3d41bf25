//! Moving a wall along its normal.

use measure::Len;

use crate::{Edit, EditError, ElementId, Plan};

use super::moving::Moving;

/// Moves a wall along its left normal by `by` (negative: to the right, looking from `a` to `b`). Exact
/// for axis-parallel walls; rounded once to the grid for others.
///
/// - Walls that continue it in line from a shared end point move with it.
/// - Walls that end on it (on its line, a face, or in between) grow or shrink along their own line, so
///   that they stay straight and go on ending on it. Partitions give way to any wall, foundation walls
///   to foundation walls.
/// - Its own ends slide along the walls that it ends on, where those are not square to it.
/// - Openings and furring of all these keep their place; service points mounted on a face go along.
///
/// Refused with the follower's name where one would turn inside out or lose an opening.
pub fn move_wall(plan: &Plan, id: ElementId, by: Len) -> Result<Edit, EditError> {
    Moving::of(plan, id)?.edit(by)
}

/// How far [`move_wall`] may go before a follower turns inside out or loses an opening: the least
/// (zero or negative) and the most. Both zero for what is not a wall.
pub fn move_wall_range(plan: &Plan, id: ElementId) -> (Len, Len) {
    Moving::of(plan, id).map_or((Len::ZERO, Len::ZERO), |moving| moving.range())
}
