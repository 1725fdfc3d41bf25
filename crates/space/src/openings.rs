//! Openings: where they cut the wall, what they leave clear, where their leaf swings.

use geometry::{Pt, Ring, Seg};
use measure::Len;
use plan::ElementId;

use crate::RoomIndex;

/// One door, cased opening or window in its wall.
#[derive(Clone, Debug)]
pub struct OpeningFacts {
    pub id: ElementId,
    pub host: ElementId,
    /// The hole in the wall (and in furring on that wall), counter-clockwise.
    pub quad: [Pt; 4],
    /// Along the host's line, from the near jamb to the far jamb.
    pub line: Seg,
    /// Clear width with the leaf open 90°: see `clear_width` in this file for what is taken off.
    pub clear_width: Len,
    pub clear_height: Len,
    /// The room on the host's left and on its right; `None` outdoors or in no room.
    pub left: Option<RoomIndex>,
    pub right: Option<RoomIndex>,
    /// In a foundation wall, so that it leads outdoors.
    pub outside: bool,
    /// Each moving leaf of a door; empty for windows, cased openings, sliding and pocket doors.
    pub leaves: Vec<Leaf>,
}

/// A door leaf and the floor it sweeps.
#[derive(Clone, Debug)]
pub struct Leaf {
    pub hinge: Pt,
    /// The free edge when shut and when open 90°.
    pub shut: Pt,
    pub open: Pt,
    pub width: Len,
    /// The swept quarter disc as a convex polygon that contains it.
    pub sweep: Ring,
}
