//! Windows as safety glass is judged by.

use measure::Len;
use plan::detail::{Value, opening::SAFETY_GLASS};
use plan::element::{BodyKind, Window};
use plan::{Body, State};
use space::OpeningFacts;

use crate::Sheet;

/// Every new window that is not stated to be of safety glass.
pub(super) fn new_windows<'a>(
    sheet: &Sheet<'a>,
) -> impl Iterator<Item = (&'a OpeningFacts, &'a Window)> + use<'a> {
    let facts = sheet.facts;
    let windows = facts.standing(&[BodyKind::Window]).filter(|e| e.state == State::New);
    windows.filter_map(|element| {
        let o = facts.opening(element.id)?;
        if element.stated(&SAFETY_GLASS) == Some(Value::Yes) {
            return None;
        }
        let Body::Opening(opening) = &element.body else { return None };
        Some((o, opening.window()?))
    })
}

/// From the finished floor to the bottom of the frame.
pub(super) fn bottom(sheet: &Sheet<'_>, window: &Window) -> Len {
    window.sill - sheet.plan().site.floor_build
}
