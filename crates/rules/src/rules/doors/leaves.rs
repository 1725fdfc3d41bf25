//! The door leaves of a plan.

use geometry::Bounds;
use space::{Leaf, OpeningFacts};

/// A leaf with its door and the box around its sweep.
pub(super) struct Swing<'a> {
    pub door: &'a OpeningFacts,
    pub leaf: &'a Leaf,
    pub bounds: Bounds,
}

/// The leaves of one door.
pub(super) fn leaves_of(door: &OpeningFacts) -> impl Iterator<Item = Swing<'_>> {
    door.leaves.iter().map(move |leaf| Swing { door, leaf, bounds: Bounds::of(&leaf.sweep) })
}
