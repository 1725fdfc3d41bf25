//! The elements of a plan, in the order of their ids, shared between versions of the plan.

use std::collections::BTreeSet;
use std::sync::Arc;

use crate::{Element, ElementId, List};

/// Elements sorted by id. Cloning copies a few pointers, whatever the number of elements.
#[derive(Clone, Debug, Default)]
pub struct Elements {
    list: List<Arc<Element>>,
    /// Each element that is fixed to another, behind that other, in order.
    fixed: Arc<Vec<(ElementId, ElementId)>>,
}

impl Elements {
    /// The element with an id.
    pub fn get(&self, id: ElementId) -> Option<&Element> {
        self.find(id).map(|i| &*self.list[i])
    }

    /// All elements in the order of their ids.
    pub fn iter(&self) -> impl DoubleEndedIterator<Item = &Element> + ExactSizeIterator {
        self.list.iter().map(|e| &**e)
    }

    /// All elements as shared pointers; the same pointer means the same element.
    pub fn shared(&self) -> &List<Arc<Element>> {
        &self.list
    }

    /// The elements that name this one as what they are fixed to, in the order of their ids.
    pub fn fixed_to(&self, host: ElementId) -> impl Iterator<Item = &Element> {
        let first = self.fixed.partition_point(|(h, _)| *h < host);
        let fixed = self.fixed[first..].iter().take_while(move |(h, _)| *h == host);
        fixed.filter_map(|(_, id)| self.get(*id))
    }

    /// The elements at the places at which two lists of one length differ, found by their pointers.
    pub fn differing<'a>(
        &'a self,
        other: &'a Elements,
    ) -> impl Iterator<Item = (&'a Element, &'a Element)> + use<'a> {
        self.list.differing(&other.list).map(|i| (&*self.list[i], &*other.list[i]))
    }

    pub fn len(&self) -> usize {
        self.list.len()
    }

    pub fn is_empty(&self) -> bool {
        self.list.is_empty()
    }

    /// Puts an element in the place of the one with the same id, where there is one.
    pub(crate) fn put(&mut self, element: Element) {
        let Some(i) = self.find(element.id) else { return };
        let (id, before, after) = (element.id, self.list[i].body.host(), element.body.host());
        self.list.put(i, Arc::new(element));
        if before != after {
            self.unfix(before, id);
            self.fix(after, id);
        }
    }

    /// Adds an element; its id is above all others.
    pub(crate) fn push(&mut self, element: Element) {
        self.fix(element.body.host(), element.id);
        self.list.push(Arc::new(element));
    }

    pub(crate) fn remove(&mut self, gone: &BTreeSet<ElementId>) {
        let left = self.list.iter().filter(|e| !gone.contains(&e.id)).cloned();
        *self = Elements::from(left.collect::<Vec<_>>());
    }

    fn find(&self, id: ElementId) -> Option<usize> {
        self.list.find(&id, |e| e.id)
    }

    fn fix(&mut self, host: Option<ElementId>, id: ElementId) {
        let Some(pair) = host.map(|host| (host, id)) else { return };
        if let Err(at) = self.fixed.binary_search(&pair) {
            Arc::make_mut(&mut self.fixed).insert(at, pair);
        }
    }

    fn unfix(&mut self, host: Option<ElementId>, id: ElementId) {
        let Some(pair) = host.map(|host| (host, id)) else { return };
        if let Ok(at) = self.fixed.binary_search(&pair) {
            Arc::make_mut(&mut self.fixed).remove(at);
        }
    }
}

/// What is fixed to what follows from the elements.
impl PartialEq for Elements {
    fn eq(&self, other: &Elements) -> bool {
        self.list == other.list
    }
}

impl Eq for Elements {}

/// Elements in any order, each with an id of its own.
impl From<Vec<Arc<Element>>> for Elements {
    fn from(mut all: Vec<Arc<Element>>) -> Elements {
        all.sort_by_key(|e| e.id);
        let fixed = all.iter().filter_map(|e| Some((e.body.host()?, e.id)));
        let mut fixed: Vec<_> = fixed.collect();
        fixed.sort_unstable();
        Elements { list: all.into(), fixed: Arc::new(fixed) }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::sample::any_plan;

    proptest! {
        /// What is fixed to an element, kept from edit to edit, is what a scan finds.
        #[test]
        fn what_is_fixed_is_found(plan in any_plan()) {
            let elements = plan.elements();
            for host in (0..plan.next_id).map(ElementId) {
                let scanned = elements.iter().filter(|e| e.body.host() == Some(host));
                prop_assert!(elements.fixed_to(host).eq(scanned));
            }
            let anew = Elements::from(elements.list.iter().rev().cloned().collect::<Vec<_>>());
            prop_assert_eq!(&anew.fixed, &elements.fixed);
            prop_assert_eq!(&anew, elements);
        }
    }
}
