//! The person who walks.

use measure::Len;
use plan::Plan;

/// Height of a walking person: what hangs lower is in the way (common practice, no source).
pub const PERSON: Len = Len::inches(72);

/// What is no higher than this above the floor is stepped over: a curb, a lid (common practice, no source).
pub const STEP: Len = Len::inches(4);

/// The height range from the slab in which a thing is in a person's way.
pub(super) fn range(plan: &Plan) -> (Len, Len) {
    let floor = plan.site.floor_build;
    (floor + STEP, floor + PERSON)
}
