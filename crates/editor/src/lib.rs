//! Tools as state machines, gestures, snapping, picking and selection. No egui, no files, no clock.
//!
//! A [`Session`] is one open plan with its history, selection and active tool. It is fed with
//! [`Gesture`]s in plan space; one gesture (press to release, or a typed value) is one undo step.
//! [`script`] drives a session by a text of gestures.

mod checked;
mod entry;
pub mod fields;
mod gesture;
mod live;
mod options;
mod outline;
mod pick;
mod pointer;
pub mod script;
mod session;
mod snap;
mod stops;
mod tool;
mod tools;

pub use checked::{Checked, Clock, Work, set_self_check};
pub use gesture::{EditorKey, Gesture, Mods};
pub use live::{Dimension, DimensionId, Entry, Snap, Status, heading};
pub use options::ToolOptions;
pub use pick::Hidden;
pub use session::Session;
pub use stops::Stop;
pub use tool::{Stage, ToolKind};
