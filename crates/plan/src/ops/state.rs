//! Existing, new or removed.

use crate::{Edit, EditError, Element, ElementId, Plan, State};

use super::elements;

/// Sets the state of elements.
pub fn set_state(plan: &Plan, ids: &[ElementId], state: State) -> Result<Edit, EditError> {
    let changed = elements(plan, ids)?.into_iter().filter(|e| e.state != state);
    Ok(Edit::Batch(changed.map(|e| Edit::Replace(Element { state, ..e.clone() })).collect()))
}
