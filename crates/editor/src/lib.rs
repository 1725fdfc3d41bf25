//! Tools as state machines, gestures, snapping, picking and selection. No egui, no files, no clock.
//!
//! A [`Session`] is one open plan with its history, selection and active tool. It is fed with
//! [`Gesture`]s in plan space; one gesture (press to release, or a typed value) is one undo step.

mod gesture;
mod live;
mod options;
mod session;
mod tool;

pub use gesture::{EditorKey, Gesture, Mods};
pub use live::{Dimension, DimensionId, Entry, Snap, Status};
pub use options::ToolOptions;
pub use session::{Checked, Session};
pub use tool::{Stage, ToolKind};
