//! The plan itself.

use std::sync::Arc;

use serde::{Deserialize, Serialize};

use crate::element::{SectionLine, section_mark};
use crate::{Body, Element, ElementId, Elements, Site};

/// A finding that the user has set aside, with the reason. It stays in the file and is listed apart.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct SetAside {
    /// The rule's slug.
    pub rule: String,
    /// The elements the finding is about, in the order of their ids, without repeats.
    pub elements: Vec<ElementId>,
    pub reason: String,
}

/// A basement and what is planned in it. A plain value: edits make a new one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    pub site: Site,
    pub(crate) elements: Elements,
    pub(crate) set_aside: Arc<Vec<SetAside>>,
    /// The id that the next element gets.
    pub(crate) next_id: u32,
}

/// A blank plan; its first element will be number 1.
impl Default for Plan {
    fn default() -> Plan {
        Plan {
            site: Site::default(),
            elements: Elements::default(),
            set_aside: Arc::default(),
            next_id: 1,
        }
    }
}

impl Plan {
    pub fn elements(&self) -> &Elements {
        &self.elements
    }

    /// In the order of rule and elements.
    pub fn set_aside(&self) -> &[SetAside] {
        &self.set_aside
    }

    pub fn get(&self, id: ElementId) -> Option<&Element> {
        self.elements.get(id)
    }

    /// The standing section lines with their letters, in the order of their ids.
    pub fn section_lines(&self) -> impl Iterator<Item = (&Element, &SectionLine, String)> {
        let lines = self.elements.iter().filter(|e| e.stands()).filter_map(|e| match &e.body {
            Body::Section(line) => Some((e, line)),
            _ => None,
        });
        lines.enumerate().map(|(n, (e, line))| (e, line, section_mark(n)))
    }

    /// Whether two plans say the same; which id comes next does not count.
    pub fn says_the_same(&self, other: &Plan) -> bool {
        self.site == other.site
            && self.elements == other.elements
            && self.set_aside == other.set_aside
    }

    /// Everything that is wrong with the plan, element by element; empty for every plan that edits
    /// or the file reader made.
    pub fn validate(&self) -> Vec<crate::EditError> {
        crate::validate::whole(self).into_iter().map(|(_, problem)| problem).collect()
    }

    /// The ids that the next `n` added elements will get.
    pub fn next_ids(&self, n: u32) -> impl Iterator<Item = ElementId> + use<> {
        (self.next_id..self.next_id.saturating_add(n)).map(ElementId)
    }
}
