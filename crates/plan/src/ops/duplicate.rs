//! Copies beside the original.

use geometry::Vec2;

use crate::{Edit, EditError, ElementId, Plan, fragment};

/// Adds copies of elements, with what is fixed to them, moved by `by`. A copy of an opening whose wall is
/// not among them goes to the nearest free place on the same wall; refused where there is none.
/// The copies get the next ids in the order of the originals' ids.
pub fn duplicate(plan: &Plan, ids: &[ElementId], by: Vec2) -> Result<Edit, EditError> {
    super::elements(plan, ids)?;
    let pieces = fragment::pieces(plan, ids);
    let pasted = fragment::paste(plan, &pieces, by)?;
    match pasted.dropped.into_iter().next() {
        Some(reason) => Err(reason),
        None => Ok(pasted.edit),
    }
}
