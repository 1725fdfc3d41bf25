//! The code book, one rule per file, and findings as values.
//!
//! A rule measures nothing by itself: distances and areas are functions of `space`. Limits come from
//! the code book with their citation. This crate knows no drawing, no egui and no clock.

mod finding;
mod phrase;

pub use finding::{Citation, Confidence, Finding, Place, Quantity, Remedy, Safety, Severity};
pub use phrase::{Part, Phrase};
