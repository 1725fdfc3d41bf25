//! Cellarwright: basement plans drawn with a tape and checked while they are drawn.
//!
//! This crate is the outer ring: the window, the command line, files, the clock and threads. What a
//! plan is and means lies in the crates below it, which know none of these.
#![allow(
    clippy::disallowed_methods,
    reason = "this crate alone touches the disk, the clock and threads"
)]

mod carry_words;
pub mod cli;
mod examples;
pub mod export;
mod height_words;
mod move_words;
pub mod store;
mod way_words;
pub mod window;
