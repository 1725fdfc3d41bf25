//! Change is data: an [`Edit`] turns one plan into the next.

use crate::{Draft, Element, ElementId, Plan, SetAside, Site};

/// One change of a plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Edit {
    /// Adds an element; it gets the plan's next id.
    Add(Draft),
    /// Replaces the element that has the same id.
    Replace(Element),
    /// Deletes elements, and what is fixed to them (openings and furring).
    Remove(Vec<ElementId>),
    /// Replaces the site facts.
    Site(Box<Site>),
    /// Sets a finding aside, or changes its reason.
    SetAside(SetAside),
    /// Takes a finding up again.
    TakeUp { rule: String, elements: Vec<ElementId> },
    /// Several changes, all or none, in order.
    Batch(Vec<Edit>),
}

/// Why an edit can't be made. `Display` says what, where and what to do.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum EditError {}

impl Plan {
    /// The plan after an edit; `self` is untouched, also on an error.
    pub fn with(&self, _edit: &Edit) -> Result<Plan, EditError> {
        unimplemented!()
    }
}
