//! The rules: one file each, registered in one list.

use crate::Rule;

/// Every rule in force, in the order of the book.
pub const RULES: &[Rule] = &[];
