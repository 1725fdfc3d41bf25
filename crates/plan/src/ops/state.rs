//! Existing, new or removed.

use crate::{Edit, EditError, Element, ElementId, Plan, State};

use super::elements;

/// Sets the state of elements.
pub fn set_state(plan: &Plan, ids: &[ElementId], state: State) -> Result<Edit, EditError> {
    let changed = elements(plan, ids)?.into_iter().filter(|e| e.state != state);
    Ok(Edit::Batch(changed.map(|e| Edit::Replace(Element { state, ..e.clone() })).collect()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample;

    #[test]
    fn only_what_differs_is_changed() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (20, 20), (80, 20));
        let edit = set_state(&plan, &[wall, ElementId(1)], State::Existing).expect("an edit");
        assert!(matches!(&edit, Edit::Batch(edits) if edits.len() == 1));
        let next = plan.with(&edit).expect("accepted");
        assert_eq!(next.get(wall).map(|e| e.state), Some(State::Existing));
        assert!(set_state(&plan, &[ElementId(9)], State::New).is_err());
    }
}
