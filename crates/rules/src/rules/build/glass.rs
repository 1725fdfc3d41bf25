//! Windows as safety glass is judged by.

use measure::Len;
use plan::detail::{Value, opening::SAFETY_GLASS};
use plan::element::{BodyKind, Window};
use plan::{Body, State};
use space::{Facts, OpeningFacts};

use crate::Sheet;

/// Every new window that is not stated to be of safety glass.
pub(super) fn new_windows<'a>(
    sheet: &Sheet<'a>,
) -> impl Iterator<Item = (&'a OpeningFacts, &'a Window)> + use<'a> {
    let facts = sheet.facts;
    let openings = facts.standing(&[BodyKind::Window]).filter_map(|e| facts.opening(e.id));
    openings.filter_map(move |o| Some((o, one(facts, o)?)))
}

/// The window of an opening, where it is such a one.
pub(super) fn new_window<'a>(sheet: &Sheet<'a>, opening: &OpeningFacts) -> Option<&'a Window> {
    one(sheet.facts, opening)
}

fn one<'a>(facts: &'a Facts, opening: &OpeningFacts) -> Option<&'a Window> {
    let element = facts.plan.get(opening.id).filter(|e| e.state == State::New)?;
    match &element.body {
        _ if element.stated(&SAFETY_GLASS) == Some(Value::Yes) => None,
        Body::Opening(opening) => opening.window(),
        _ => None,
    }
}

/// From the finished floor to the bottom of the frame.
pub(super) fn bottom(sheet: &Sheet<'_>, window: &Window) -> Len {
    window.sill - sheet.plan().site.floor_build
}
