//! The demo plans, as built by code, and random numbers, for the tests that see every crate (in `tests/tests`).
//!
//! The scenario is invented: a house at 14 Quarrystone Lane, its basement 36 ft x 28 ft with a jog.

pub mod demo;
pub mod random;
