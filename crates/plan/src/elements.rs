//! The elements of a plan, in the order of their ids, shared between versions of the plan.

use std::cmp::Ordering;
use std::collections::BTreeSet;
use std::sync::Arc;

use geometry::Bounds;

use crate::boxes::Boxes;
use crate::{Element, ElementId, List};

/// Elements sorted by id. Cloning copies a few pointers, whatever the number of elements.
#[derive(Clone, Debug, Default)]
pub struct Elements {
    list: List<Arc<Element>>,
    /// Each element that is fixed to another, behind that other, in order.
    fixed: Arc<Vec<(ElementId, ElementId)>>,
    /// The box round the points of each element.
    boxes: Boxes,
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

    /// The elements of which the box round all points meets a box, in the order of their ids. What is fixed to a wall has
    /// no points.
    pub fn near(&self, bounds: Bounds) -> impl Iterator<Item = &Element> {
        self.boxes.near(bounds).map(|i| &*self.list[i])
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
        self.boxes.put(i, Bounds::of(element.body.points()));
        self.list.put(i, Arc::new(element));
        if before != after {
            self.unfix(before, id);
            self.fix(after, id);
        }
    }

    /// Adds an element; its id is above all others.
    pub(crate) fn push(&mut self, element: Element) {
        self.fix(element.body.host(), element.id);
        self.boxes.push(Bounds::of(element.body.points()));
        self.list.push(Arc::new(element));
    }

    pub(crate) fn remove(&mut self, gone: &BTreeSet<ElementId>) {
        let left = self.list.iter().filter(|e| !gone.contains(&e.id)).cloned();
        *self = Elements::from(left.collect::<Vec<_>>());
    }

    /// The place of an element. Ids rise from place to place, so it is at most its id, and at least its id less the number
    /// of ids up to the last that no element has: where few were deleted, it is found at once.
    fn find(&self, id: ElementId) -> Option<usize> {
        let last = self.list.len().checked_sub(1)?;
        let missing = (self.list[last].id.0 as usize).saturating_sub(last);
        let wanted = id.0 as usize;
        let (mut from, mut to) = (wanted.saturating_sub(missing), wanted.min(last) + 1);
        while from < to {
            let middle = from + (to - from) / 2;
            match self.list[middle].id.cmp(&id) {
                Ordering::Less => from = middle + 1,
                Ordering::Equal => return Some(middle),
                Ordering::Greater => to = middle,
            }
        }
        None
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

/// What is fixed to what, and the boxes, follow from the elements.
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
        let boxes: Vec<Bounds> = all.iter().map(|e| Bounds::of(e.body.points())).collect();
        Elements { list: all.into(), fixed: Arc::new(fixed), boxes: boxes.into() }
    }
}

#[cfg(test)]
impl Elements {
    /// The same elements, all of them near to every box: what looks at what is near then looks at everything.
    pub fn near_to_all(mut self) -> Elements {
        let [least, most] = [i32::MIN, i32::MAX].map(|c| geometry::Pt::new(c, c));
        self.boxes = vec![Bounds { min: least, max: most }; self.list.len()].into();
        self
    }
}

#[cfg(test)]
mod tests {
    use geometry::Pt;
    use measure::Len;
    use proptest::prelude::*;

    use super::*;
    use crate::sample::any_plan;

    proptest! {
        /// An element is found by its id, and none by another.
        #[test]
        fn an_element_is_found_by_its_id(plan in any_plan()) {
            for id in (0..plan.next_id + 3).map(ElementId) {
                prop_assert_eq!(plan.get(id), plan.elements().iter().find(|e| e.id == id));
            }
        }

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

        /// What is near, kept from edit to edit, is what a scan finds.
        #[test]
        fn what_is_near_is_found(plan in any_plan(), at: prop::sample::Index, by in 0..400i32) {
            let elements = plan.elements();
            let around = elements.iter().nth(at.index(elements.len().max(1)));
            let around = around.map_or(vec![Pt::new(0, 0)], |e| e.body.points());
            let around = Bounds::of(around).grow(Len::inches(by));
            let scanned = elements.iter().filter(|e| Bounds::of(e.body.points()).meets(around));
            prop_assert!(elements.near(around).eq(scanned));
        }
    }
}
