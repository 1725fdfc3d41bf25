//! Overheads: the floor they hang over and the clear height under them.

use geometry::Ring;
use measure::Len;
use plan::ElementId;
use plan::element::OverheadKind;

/// One overhead as it hangs over the floor.
#[derive(Clone, Debug)]
pub struct OverheadFacts {
    pub id: ElementId,
    pub kind: OverheadKind,
    /// Counter-clockwise, not necessarily convex.
    pub ring: Ring,
    /// Finished floor to its underside (its board included where it is boxed in: a bare beam, duct or
    /// pipe counts as it hangs).
    pub clear: Len,
}
