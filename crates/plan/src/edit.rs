//! Change is data: an [`Edit`] turns one plan into the next.

use std::collections::BTreeSet;
use std::sync::Arc;

use crate::element::{Body, ServicePoint};
use crate::validate::{self, Touched};
use crate::{Draft, EditError, Element, ElementId, Plan, SetAside, Site, bounds};

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
    /// Several changes, all or none, in order. What counts is the plan after the last of them: in
    /// between, an opening may stick out of its wall.
    Batch(Vec<Edit>),
}

impl Plan {
    /// The plan after an edit; `self` is untouched, also on an error.
    ///
    /// Only what the edit touches is checked, so that an edit of one element is cheap in a large plan.
    pub fn with(&self, edit: &Edit) -> Result<Plan, EditError> {
        let mut next = self.clone();
        let mut touched = Touched::since(self.next_id);
        next.apply(edit, &mut touched)?;
        validate::touched(&next, &touched)?;
        Ok(next)
    }

    fn apply(&mut self, edit: &Edit, touched: &mut Touched) -> Result<(), EditError> {
        match edit {
            Edit::Add(draft) => self.add(draft, touched),
            Edit::Replace(element) => self.replace(element, touched),
            Edit::Remove(ids) => self.remove(ids),
            Edit::Site(site) => {
                self.site = Site::clone(site);
                touched.site = true;
                Ok(())
            }
            Edit::SetAside(set_aside) => self.put_set_aside(set_aside),
            Edit::TakeUp { rule, elements } => self.take_up(rule, elements),
            Edit::Batch(edits) => edits.iter().try_for_each(|e| self.apply(e, touched)),
        }
    }

    fn add(&mut self, draft: &Draft, touched: &mut Touched) -> Result<(), EditError> {
        let full = EditError::PlanFull { most: bounds::ELEMENTS.most };
        if !bounds::ELEMENTS.holds(self.elements.len() + 1) {
            return Err(full);
        }
        let id = ElementId(self.next_id);
        self.next_id = self.next_id.checked_add(1).ok_or(full)?;
        let Draft { state, body, mut details } = draft.clone();
        details.keep_fitting(&body);
        self.elements.push(Element { id, state, body, details });
        touched.elements.insert(id);
        Ok(())
    }

    fn replace(&mut self, element: &Element, touched: &mut Touched) -> Result<(), EditError> {
        let before = self.get(element.id).ok_or(EditError::Missing { id: element.id })?;
        let is_service = |body: &Body| matches!(body, Body::Service(_));
        touched.lost_service |= is_service(&before.body) && !is_service(&element.body);
        let mut element = element.clone();
        element.details.keep_fitting(&element.body);
        touched.elements.insert(element.id);
        self.elements.put(element);
        Ok(())
    }

    fn remove(&mut self, ids: &[ElementId]) -> Result<(), EditError> {
        if let Some(&id) = ids.iter().find(|&&id| self.get(id).is_none()) {
            return Err(EditError::Missing { id });
        }
        let mut gone: BTreeSet<ElementId> = ids.iter().copied().collect();
        gone.extend(ids.iter().flat_map(|&id| self.elements.fixed_to(id)).map(|e| e.id));

        self.elements.remove(&gone);
        let served = self.elements.iter().filter_map(|e| match &e.body {
            Body::Service(s) if s.serves.is_some_and(|id| gone.contains(&id)) => {
                let body = Body::Service(ServicePoint { serves: None, ..s.clone() });
                Some(Element { body, ..e.clone() })
            }
            _ => None,
        });
        for free in served.collect::<Vec<_>>() {
            self.elements.put(free);
        }
        Arc::make_mut(&mut self.set_aside)
            .retain(|s| !s.elements.iter().any(|id| gone.contains(id)));
        Ok(())
    }

    pub(crate) fn put_set_aside(&mut self, set_aside: &SetAside) -> Result<(), EditError> {
        let set_aside = SetAside { elements: in_order(&set_aside.elements), ..set_aside.clone() };
        validate::set_aside(self, &set_aside)?;
        let place = self.find_set_aside(&set_aside.rule, &set_aside.elements);
        let all = Arc::make_mut(&mut self.set_aside);
        match place {
            Ok(i) => all[i] = set_aside,
            Err(i) => all.insert(i, set_aside),
        }
        Ok(())
    }

    fn take_up(&mut self, rule: &str, elements: &[ElementId]) -> Result<(), EditError> {
        let i = self
            .find_set_aside(rule, &in_order(elements))
            .map_err(|_| EditError::NotSetAside { rule: rule.to_owned() })?;
        Arc::make_mut(&mut self.set_aside).remove(i);
        Ok(())
    }

    /// Where a set-aside stands in the list, which is in the order of rule and elements.
    fn find_set_aside(&self, rule: &str, elements: &[ElementId]) -> Result<usize, usize> {
        self.set_aside.binary_search_by(|s| (&*s.rule, &*s.elements).cmp(&(rule, elements)))
    }
}

fn in_order(ids: &[ElementId]) -> Vec<ElementId> {
    ids.iter().copied().collect::<BTreeSet<_>>().into_iter().collect()
}
