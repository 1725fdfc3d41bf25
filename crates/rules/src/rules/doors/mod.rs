//! Doors: leaves against leaves, against things that stand in their way, and in keep-clears.

use crate::Rule;

pub(super) const RULES: &[Rule] = &[];
