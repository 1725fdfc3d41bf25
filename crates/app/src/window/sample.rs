//! The sample plan that the program brings along.

use plan::Plan;

/// The first of the demo plans, part of the program so that it opens without any file.
const FIRST: &str = include_str!("../../../../demo-plans/passes.ron");

/// The first sample plan; the error says what is wrong with it.
pub fn first() -> Result<Plan, String> {
    plan::file::read(FIRST).map_err(|why| why.to_string())
}
