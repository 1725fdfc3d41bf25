//! The code book, one rule per file, and findings as values.
//!
//! A rule measures nothing by itself: distances and areas are functions of `space`. Limits come from
//! the code book with their citation. This crate knows no drawing, no egui and no clock.

mod answer;
mod book;
mod check;
mod explain;
mod finding;
mod findings;
mod front;
mod heights;
mod keep_clear;
mod kept;
mod phrase;
mod remedy;
pub mod room_to_move;
mod rule;
mod rules;
#[cfg(test)]
mod testing;
mod trial;

pub use book::{
    Book, BookError, Clause, Entry, Figure, Layer, Limit, Locality, MODEL_CODE, faults, localities,
    locality, place_name, read_amendments, unknown_place, write_amendments,
};
pub use check::{check, check_with_keep_clears};
pub use explain::{explain, explain_markdown};
pub use finding::{Citation, Confidence, Finding, Place, Quantity, Remedy, Safety, Severity};
pub use findings::Findings;
pub use heights::{NamedHeight, named_heights};
pub use keep_clear::{KeepClear, keep_clears};
pub use kept::Kept;
pub use phrase::{Part, Phrase};
pub use remedy::remedies;
pub use rule::{Check, Group, HEADINGS, Reach, Rule, Sheet};
pub use rules::is_fixture;
pub use rules::rooms::words::capital;
pub use rules::{Demand, Met, RULES, demands, rule};
pub use space::On;
pub use trial::{Cure, Trial, in_use, try_use};
