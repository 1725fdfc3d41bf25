//! The notation as this program writes it, written and read fast.
//!
//! It is a part of RON: no attributes, no block comments, no raw strings, no names of structs, numbers in plain
//! decimals, `serves: 20` instead of `serves: Some(20)`.

mod read;
mod write;

pub(super) use read::read;
pub(super) use write::write;
