//! Access: what must stay reachable, and the clear space that it needs.

// mod clear_away;
mod panel;
mod panel_depth;

use crate::Rule;

pub(super) const RULES: &[Rule] = &[panel_depth::RULE];
