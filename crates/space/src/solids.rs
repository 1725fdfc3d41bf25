//! What takes up space: convex pieces in the plan with a height range.

use geometry::Ring;
use measure::Len;
use plan::ElementId;

/// What a solid is a piece of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SolidKind {
    Wall,
    Column,
    Stair,
    Service,
    Furnishing,
}

/// A convex piece of an element with the height range it fills, from the slab.
#[derive(Clone, Debug)]
pub struct Solid {
    pub element: ElementId,
    pub kind: SolidKind,
    /// Convex, counter-clockwise.
    pub ring: Ring,
    pub bottom: Len,
    pub top: Len,
}
