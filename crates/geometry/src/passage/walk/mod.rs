//! The shortest walk of a round person between two places.
//!
//! A shortest way round convex pieces, grown by half the person's width, is made of straight legs and
//! of arcs round corners of the pieces, and a leg touches the circles at its two ends (for width zero:
//! the corners themselves). So legs from turn to turn are searched with A* (Hart, Nilsson, Raphael,
//! 1968), the straight distance to the target being the estimate. Whether a leg is free is asked only
//! when its turn comes.

mod angle;
mod exact;
mod leg;
mod round;
mod search;
mod turn;

use measure::Len;

use super::obstacles::Obstacles;
use super::ways;
use crate::Pt;

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
/// person's middle stays half a width or more from every piece. `None` when there is no way of that
/// width, exactly as [`ways`] decides.
///
/// Width zero is the limit of thinner and thinner people: the walk may follow the faces of pieces, but
/// does not pass where two touch, not even along the face that they share. Whether a leg is free is
/// then decided in whole numbers; for other widths in floats, with a thousandth of a unit for their
/// rounding.
pub fn walk(obstacles: &Obstacles, from: Pt, to: Pt, width: Len) -> Option<Walk> {
    let width = width.max(Len::ZERO);
    let passes = ways(obstacles, &[from], &[to], width).first().is_some_and(|w| w.passes(width));
    if !passes {
        return None;
    }
    search::shortest(obstacles, from, to, f64::from(width.units()) / 2.0)
}
