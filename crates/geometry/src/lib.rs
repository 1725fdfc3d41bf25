//! Points on the integer grid, exact predicates, and the plane algorithms of the plan.
//!
//! One grid unit is one [`measure::Len`] unit, 1/320 mm. `y` points up (north) in the plan.
//! This crate knows neither walls nor files.

mod facing;
mod point;
mod ring;

pub use facing::{Facing, Placed};
pub use point::{Pt, Seg, Vec2, orient};
pub use ring::{Ring, Shape, twice_area};
