//! How far a plan reaches: what `View::fit` should show.

use geometry::Bounds;
use plan::Body;
use space::Facts;

use crate::outlines::outline;

/// The box round every element of a plan, removed ones and window wells included; empty for an empty plan.
/// Leave a margin of some 50 points round it for the dimensions outside the shell.
pub fn extent(facts: &Facts) -> Bounds {
    let mut all = Bounds::EMPTY;
    for element in facts.plan.elements().iter() {
        all = all.union(Bounds::of(outline(facts, element)));
        all = all.union(Bounds::of(element.body.points()));
        let Body::Opening(opening) = &element.body else { continue };
        let well = opening.window().and_then(|w| w.well);
        if let (Some(well), Some(opening)) = (well, facts.opening(element.id)) {
            all = all.union(Bounds::of(opening.well_ring(&well)));
        }
    }
    all
}
