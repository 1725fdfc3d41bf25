//! Points on the integer grid, exact predicates, and the plane algorithms of the plan.
//!
//! One grid unit is one [`measure::Len`] unit, 1/320 mm. `y` points up (north) in the plan.
//! Predicates are exact for coordinates within ±[`measure::Len::COORD_LIMIT`]; a point that falls off
//! the grid is rounded once. This crate knows neither walls nor files.

mod bounds;
pub mod carry;
mod convex;
mod engine;
mod facing;
mod gap;
mod grid;
mod label_point;
mod locate;
pub mod overlay;
pub mod passage;
mod point;
mod reach;
mod ring;
#[cfg(test)]
mod sample;
mod sector;
mod segment;
mod square_core;
mod stretches;
mod triangulate;
mod wide;

pub use bounds::Bounds;
pub use convex::{convex_clip, convex_hull, convex_overlap};
pub use facing::{Facing, Placed};
pub use gap::{Gap, closer_than, gap};
pub use grid::Grid;
pub use locate::{Where, locate};
pub use point::{Pt, Seg, Vec2, orient};
pub use ring::{Ring, Shape, edges, twice_area};
pub use sector::{TANGENTS, sector};
pub use segment::{line_crossing, nearest_on, segs_touch};
pub use square_core::{SKEW_SLACK, square_core};
pub use stretches::stretches;
pub use triangulate::triangulate;
