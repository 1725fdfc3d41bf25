//! What every plan keeps to: each figure within its bound, each reference to something that is there.

mod details;
mod element;
mod fixed;
mod outline;
mod site;
mod text;

use std::collections::BTreeSet;

use crate::{EditError, Element, ElementId, Plan};

pub(crate) use site::{amendments, set_aside};

/// What an edit has touched and must be checked again.
pub(crate) struct Touched {
    pub elements: BTreeSet<ElementId>,
    pub site: bool,
    /// A service point was replaced by something else, so that others may say they serve it.
    pub lost_service: bool,
    /// Ids from here on are new in this edit.
    first_new: u32,
}

impl Touched {
    pub fn since(next_id: u32) -> Touched {
        Touched { elements: BTreeSet::new(), site: false, lost_service: false, first_new: next_id }
    }

    /// An element's name in a message.
    fn name(&self, e: &Element) -> String {
        if e.id.0 < self.first_new {
            e.name()
        } else {
            format!("New {}", element::kind_word(&e.body))
        }
    }
}

/// What a message calls the thing that is wrong; asked only where something is.
type Who<'a> = &'a dyn Fn() -> String;

/// Checks what an edit has touched.
pub(crate) fn touched(plan: &Plan, touched: &Touched) -> Result<(), EditError> {
    let name = |e: &Element| touched.name(e);
    if touched.site {
        site::check(&plan.site)?;
    }
    let there = || touched.elements.iter().filter_map(|&id| plan.get(id));
    for e in there() {
        by_itself(plan, e, &|| name(e))?;
    }
    if touched.lost_service {
        for e in plan.elements.iter() {
            element::check_serves(plan, &|| name(e), &e.body)?;
        }
    }
    match fixed::problems(plan, &fixed::beside(plan, there()), &name).into_iter().next() {
        Some((_, problem)) => Err(problem),
        None => Ok(()),
    }
}

/// Checks the figures, the texts and the details of one element, and what it serves.
fn by_itself(plan: &Plan, e: &Element, who: Who) -> Result<(), EditError> {
    element::check(who, &e.body)?;
    details::check(who, &e.details, |d| d.fits(&e.body))?;
    element::check_serves(plan, who, &e.body)
}

/// Something that is wrong with a plan, and the element it is about.
pub(crate) type Problem = (Option<ElementId>, EditError);

/// Everything that is wrong with a plan.
pub(crate) fn whole(plan: &Plan) -> Vec<Problem> {
    let mut problems: Vec<Problem> =
        site::check(&plan.site).err().map(|p| (None, p)).into_iter().collect();
    for e in plan.elements.iter() {
        let found = by_itself(plan, e, &|| e.name());
        problems.extend(found.err().map(|p| (Some(e.id), p)));
    }
    // How an opening lies in its wall can be asked only where all figures are sound.
    if problems.is_empty() {
        let fixed: Vec<&Element> =
            plan.elements.iter().filter(|e| e.body.host().is_some()).collect();
        let found = fixed::problems(plan, &fixed, &Element::name);
        problems.extend(found.into_iter().map(|(id, p)| (Some(id), p)));
    }
    let asides = plan.set_aside.iter().filter_map(|s| set_aside(plan, s).err());
    problems.extend(asides.map(|p| (None, p)));
    problems
}
