//! The plan itself.

use serde::{Deserialize, Serialize};

use crate::{ElementId, Elements, Site};

/// A finding that the user has set aside, with the reason. It stays in the file and is listed apart.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct SetAside {
    /// The rule's slug.
    pub rule: String,
    /// The elements the finding is about, in the order of their ids.
    pub elements: Vec<ElementId>,
    pub reason: String,
}

/// A basement and what is planned in it. A plain value: edits make a new one.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Plan {
    pub site: Site,
    pub(crate) elements: Elements,
    pub(crate) set_aside: Vec<SetAside>,
    /// The id that the next element gets.
    pub(crate) next_id: u32,
}

impl Plan {
    pub fn elements(&self) -> &Elements {
        &self.elements
    }

    pub fn set_aside(&self) -> &[SetAside] {
        &self.set_aside
    }

    pub fn get(&self, id: ElementId) -> Option<&crate::Element> {
        self.elements.get(id)
    }

    /// The ids that the next `n` added elements will get.
    pub fn next_ids(&self, n: u32) -> impl Iterator<Item = ElementId> + use<> {
        (self.next_id..self.next_id + n).map(ElementId)
    }
}
