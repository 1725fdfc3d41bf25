//! The door leaves of a plan.

use geometry::Bounds;
use space::{Leaf, OpeningFacts};

use crate::Sheet;

/// A leaf with its door and the box around its sweep.
pub(super) struct Swing<'a> {
    pub door: &'a OpeningFacts,
    pub leaf: &'a Leaf,
    pub bounds: Bounds,
}

/// Every leaf, by door.
pub(super) fn leaves<'a>(sheet: &Sheet<'a>) -> impl Iterator<Item = Swing<'a>> + use<'a> {
    let facts = sheet.facts;
    facts.openings.iter().flat_map(leaves_of)
}

/// The leaves of one door.
pub(super) fn leaves_of(door: &OpeningFacts) -> impl Iterator<Item = Swing<'_>> {
    door.leaves.iter().map(move |leaf| Swing { door, leaf, bounds: Bounds::of(&leaf.sweep) })
}
