//! Headroom: the ceiling, and what hangs below it.

mod ceiling_height;
mod limits;
mod projection_height;

use crate::Rule;

pub(crate) use limits::{HeightLimit, ceiling_limit, projection_limit};

pub(super) const RULES: &[Rule] = &[ceiling_height::RULE, projection_height::RULE];
