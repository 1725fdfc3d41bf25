//! Openings: along their wall, hinge and swing.

use measure::Len;

use crate::element::{Body, Door, Opening, OpeningKind};
use crate::{Edit, EditError, Element, ElementId, Plan};

use super::{element, replace};

/// Puts the near edge of an opening at the distance `at` from the start of its wall.
pub fn slide_opening(plan: &Plan, id: ElementId, at: Len) -> Result<Edit, EditError> {
    let (element, opening) = opening(plan, id)?;
    Ok(replace(element, Body::Opening(Opening { at, ..opening.clone() })))
}

/// Hangs a door on its other jamb.
pub fn flip_hinge(plan: &Plan, id: ElementId) -> Result<Edit, EditError> {
    with_door(plan, id, |d| d.hinge = d.hinge.other())
}

/// Lets a door swing to the other side of its wall.
pub fn flip_swing(plan: &Plan, id: ElementId) -> Result<Edit, EditError> {
    with_door(plan, id, |d| d.swing = d.swing.other())
}

fn with_door(
    plan: &Plan,
    id: ElementId,
    change: impl FnOnce(&mut Door),
) -> Result<Edit, EditError> {
    let (element, opening) = opening(plan, id)?;
    let mut opening = opening.clone();
    let OpeningKind::Door(door) = &mut opening.kind else {
        return Err(EditError::WrongKind { who: element.name(), needed: "a door" });
    };
    change(door);
    Ok(replace(element, Body::Opening(opening)))
}

pub(super) fn opening(plan: &Plan, id: ElementId) -> Result<(&Element, &Opening), EditError> {
    let element = element(plan, id)?;
    match &element.body {
        Body::Opening(o) => Ok((element, o)),
        _ => {
            let needed = "a door, a window or a cased opening";
            Err(EditError::WrongKind { who: element.name(), needed })
        }
    }
}
