//! Windows as safety glass is judged by.

use measure::Len;
use plan::element::Window;
use plan::{Body, State};
use space::OpeningFacts;

use crate::Sheet;

/// Every new window.
pub(super) fn new_windows<'a>(
    sheet: &Sheet<'a>,
) -> impl Iterator<Item = (&'a OpeningFacts, &'a Window)> + use<'a> {
    let facts = sheet.facts;
    facts.openings.iter().filter_map(|o| {
        let element = facts.plan.get(o.id).filter(|e| e.state == State::New)?;
        let Body::Opening(opening) = &element.body else { return None };
        Some((o, opening.window()?))
    })
}

/// From the finished floor to the bottom of the frame.
pub(super) fn bottom(sheet: &Sheet<'_>, window: &Window) -> Len {
    window.sill - sheet.plan().site.floor_build
}
