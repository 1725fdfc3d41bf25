//! The plan: elements with stable ids, edits as data, undo as a stack of whole plans, and the file format.
//!
//! This crate knows no derived facts, no rules, no drawing and no disk: text in, text out.

pub mod bounds;
mod boxes;
pub mod detail;
mod edit;
mod edit_error;
pub mod element;
mod elements;
pub mod file;
pub mod fragment;
mod history;
mod list;
pub mod ops;
mod papers;
mod plan;
#[cfg(any(test, feature = "sample"))]
pub mod sample;
mod site;
mod validate;

pub use edit::Edit;
pub use edit_error::EditError;
pub use element::{Body, Draft, Element, ElementId, State};
pub use elements::Elements;
pub use history::History;
pub use list::List;
pub use papers::Papers;
pub use plan::{Plan, SetAside};
pub use site::{Amendment, CeilingBuild, Edition, House, Site};
