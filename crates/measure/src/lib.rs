//! Exact lengths and areas.
//!
//! A [`Len`] is a whole count of 1/320 mm, so 1/64 inch (127) and 1 mm (320) are both exact, and a
//! limit that is met exactly passes in both unit systems. This crate knows no geometry and no plan.

mod area;
mod bare_unit;
mod len;
mod read;
mod read_error;
mod scan;
mod write;

pub use area::Area;
pub use bare_unit::BareUnit;
pub use len::Len;
pub use read::{read_len, read_len_in};
pub use read_error::ReadError;
pub use write::{Precision, System};
