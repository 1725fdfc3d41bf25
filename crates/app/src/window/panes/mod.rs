//! The panes around the plan. Each reads a context and pushes acts.

pub mod findings;
pub mod headroom;
pub mod kit;
pub mod layers;
pub mod menu;
pub mod options;
pub mod sheets;
pub mod status;
pub mod ways;
