//! The plan: elements with stable ids, edits as data, undo as a stack of whole plans, and the file format.
//!
//! This crate knows no derived facts, no rules, no drawing and no disk: text in, text out.

mod edit;
pub mod element;
mod elements;
mod history;
mod plan;
mod site;

pub use edit::{Edit, EditError};
pub use element::{Body, Draft, Element, ElementId, State};
pub use elements::Elements;
pub use history::History;
pub use plan::{Plan, SetAside};
pub use site::{CeilingBuild, Edition, House, Site};
