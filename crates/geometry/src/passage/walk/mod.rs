//! The shortest walk of a round person between two places.
//!
//! A shortest way round convex pieces, grown by half the person's width, is made of straight legs and
//! of arcs round corners of the pieces, and a leg touches the circles at its two ends (for width zero:
//! the corners themselves). So legs from turn to turn are searched with A* (Hart, Nilsson, Raphael,
//! 1968), the straight distance to the target being the estimate. Corners are looked at by the detour that they make,
//! and whether a leg is free is asked only when its turn comes.

mod angle;
mod band;
mod exact;
mod leg;
mod round;
mod search;
mod turn;

use measure::Len;

use super::obstacles::Obstacles;
use crate::Pt;
use crate::reach::Reach;

/// A walk from one place to another.
#[derive(Clone, Debug, PartialEq)]
pub struct Walk {
    /// Its length in grid units. Floats: exact but for their rounding (better than one part in a million).
    pub length: f64,
    /// Its corners, arcs cut into short legs, each point rounded once to the grid; for width zero the
    /// corners of the pieces, exactly.
    pub line: Vec<Pt>,
}

/// The shortest walk of a round person of `width` (zero or more) from one place to another: the
/// person's middle stays half a width or more from every piece. `None` when there is no such walk.
///
/// Width zero is the limit of thinner and thinner people: the walk may follow the faces of pieces, but
/// does not pass where two touch, not even along the face that they share. Whether a leg is free is
/// then decided in whole numbers. For other widths it is decided in floats, with a thousandth of a
/// unit for their rounding: so there is a walk wherever [`super::ways`] says that the width passes, and
/// none wherever it does not pass by two thousandths of a unit. Ask that first: it is exact, and
/// only a walk that does not exist has to be sought everywhere.
pub fn walk(obstacles: &Obstacles, from: Pt, to: Pt, width: Len) -> Option<Walk> {
    let width = width.max(Len::ZERO);
    if from == to {
        let near = obstacles.nearest(from, width / 2 + Len::UNIT).map(|near| near.1.doubled());
        let stands = near.is_none_or(|near| !near.is_zero() && near >= Reach::of_len(width));
        return stands.then(|| Walk { length: 0.0, line: vec![from] });
    }
    search::shortest(obstacles, from, to, f64::from(width.units()) / 2.0)
}
