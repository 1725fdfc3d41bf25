//! The demo plans.

mod build;
mod large;
mod passes;
mod trouble;

use plan::Plan;

/// Name of the file in `demo-plans/` and the plan in it; the window opens the first when none is named.
pub fn all() -> Vec<(&'static str, Plan)> {
    vec![
        ("passes.ron", passes::plan()),
        ("trouble.ron", trouble::plan()),
        ("trouble-no-bedroom.ron", trouble::without_bedroom()),
        ("trouble-sprinklers.ron", trouble::with_sprinklers()),
        ("trouble-outlets.ron", trouble::outlets::plan()),
        ("trouble-services.ron", trouble::services::plan()),
        ("trouble-stated.ron", trouble::stated::plan()),
        ("trouble-exceptions.ron", trouble::exceptions::plan()),
        ("large.ron", large::plan()),
    ]
}
