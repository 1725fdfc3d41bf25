//! The elements of a plan, in the order of their ids, shared between versions of the plan.

use std::sync::Arc;

use crate::{Element, ElementId};

/// Elements sorted by id. Cloning copies pointers, not elements.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Elements(Vec<Arc<Element>>);

impl Elements {
    /// The element with an id.
    pub fn get(&self, id: ElementId) -> Option<&Element> {
        self.find(id).ok().map(|i| &*self.0[i])
    }

    /// All elements in the order of their ids.
    pub fn iter(&self) -> impl DoubleEndedIterator<Item = &Element> + ExactSizeIterator {
        self.0.iter().map(|e| &**e)
    }

    /// All elements as shared pointers; the same pointer means the same element.
    pub fn shared(&self) -> &[Arc<Element>] {
        &self.0
    }

    /// The elements at the places at which two lists of one length differ, found by their pointers.
    pub fn differing<'a>(
        &'a self,
        other: &'a Elements,
    ) -> impl Iterator<Item = (&'a Element, &'a Element)> + use<'a> {
        let pairs = self.0.iter().zip(&other.0).filter(|(a, b)| !Arc::ptr_eq(a, b));
        pairs.map(|(a, b)| (&**a, &**b)).filter(|(a, b)| a != b)
    }

    pub fn len(&self) -> usize {
        self.0.len()
    }

    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Puts an element in, in place of the one with the same id where there is one.
    pub(crate) fn put(&mut self, element: Element) {
        match self.find(element.id) {
            Ok(i) => self.0[i] = Arc::new(element),
            Err(i) => self.0.insert(i, Arc::new(element)),
        }
    }

    pub(crate) fn retain(&mut self, keep: impl Fn(ElementId) -> bool) {
        self.0.retain(|e| keep(e.id));
    }

    /// Puts a changed element, with the same id, in place of each for which `change` gives one.
    pub(crate) fn update(&mut self, change: impl Fn(&Element) -> Option<Element>) {
        for slot in &mut self.0 {
            if let Some(changed) = change(slot) {
                *slot = Arc::new(changed);
            }
        }
    }

    fn find(&self, id: ElementId) -> Result<usize, usize> {
        self.0.binary_search_by_key(&id, |e| e.id)
    }
}
