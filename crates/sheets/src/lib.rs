//! The permit set: sheets to scale, drawn from the plan without redrawing, and what a permit desk asks of them.
//!
//! [`set`] is a pure function of a plan with its findings. A sheet is a list of marks in points (1/72 in), the same
//! that the screen paints; files are written elsewhere. To add a kind of sheet, write its file in `kinds` and put one
//! line into the list there.

mod desk;
mod dimension;
mod fabric;
mod flow;
mod frame;
mod kinds;
mod labels;
mod leaders;
mod legend;
mod one_sheet;
mod paper;
mod plan_view;
mod scale;
mod set;
mod skew;
mod strings;
mod type_set;
mod wall_types;

pub use desk::{Answer, Answered, Department, Desk, Seen, department, departments};
pub use one_sheet::CROWDED;
pub use paper::Paper;
pub use set::{Join, LeftOut, Options, Set, Sheet, Source, set};
