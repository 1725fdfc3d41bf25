//! The stair from the floor above.

use geometry::{Facing, Placed, Pt};
use measure::Len;
use serde::{Deserialize, Serialize};

/// A straight flight that goes up from its foot.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Stair {
    /// The middle of the lowest riser's face.
    pub foot: Pt,
    /// The way one walks up.
    pub up: Facing,
    pub width: Len,
    /// Number of risers; there is one tread less.
    pub risers: u32,
    /// Height of one riser.
    pub rise: Len,
    /// Depth of one tread, nosing to nosing.
    pub run: Len,
    /// Least headroom above the nosing line.
    pub headroom: Len,
}

impl Stair {
    /// Length in the plan: one tread less than risers.
    pub fn length(&self) -> Len {
        let treads = i32::try_from(self.risers.saturating_sub(1)).unwrap_or(i32::MAX);
        Len::from_units(self.run.units().saturating_mul(treads))
    }

    /// The whole flight in the plan.
    pub fn placed(&self) -> Placed {
        Placed { back: self.foot, facing: self.up, width: self.width, depth: self.length() }
    }
}
