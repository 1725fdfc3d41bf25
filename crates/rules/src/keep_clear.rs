//! Keep-clear boxes: the space before a service point that nothing may enter.

use geometry::Ring;
use measure::Len;
use plan::ElementId;
use space::Facts;

use crate::{Book, Sheet, rules};

/// A box that must stay clear, sized by the code book.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeepClear {
    pub service: ElementId,
    /// The rule whose box it is.
    pub rule: &'static str,
    /// What it is for, in a word or two: `working space`, `dedicated space`, `service space`.
    pub word: &'static str,
    /// Convex, counter-clockwise.
    pub ring: Ring,
    /// Height range from the slab.
    pub bottom: Len,
    pub top: Len,
    /// Whether something stands in it now.
    pub breached: bool,
}

/// Every keep-clear box of a plan, by service point.
pub fn keep_clears(facts: &Facts, book: &Book) -> Vec<KeepClear> {
    rules::keep_clears(&Sheet::new(facts, book))
}
