//! Moving one end of a wall to a point.

use geometry::{Pt, Seg};

use crate::element::End;
use crate::{Edit, EditError, ElementId, Plan};

use super::joint::walls;
use super::{stretch, wall};

/// Moves an end of a wall to the point `to`; the wall turns about its other end. Walls of the same kind
/// that share exactly that end point come along, so that a corner stays closed. Openings and furring
/// keep their distance from the end that stays.
pub fn move_end(plan: &Plan, id: ElementId, end: End, to: Pt) -> Result<Edit, EditError> {
    let (element, line) = wall(plan, id)?;
    let corner = match end {
        End::Start => line.a,
        End::Finish => line.b,
    };
    let all = walls(plan);
    let shell = all.iter().any(|w| w.element.id == id && w.shell);
    let mut edits = Vec::new();
    for w in all.iter().filter(|w| w.shell == shell && w.element.stands() == element.stands()) {
        let line = Seg::new(
            if w.line.a == corner { to } else { w.line.a },
            if w.line.b == corner { to } else { w.line.b },
        );
        if line == w.line {
            continue;
        }
        let shift = if line.a == w.line.a { 0 } else { stretch::by_length(w.line, line) };
        let fixed = stretch::fixed_to(plan, w.element);
        edits.extend(stretch::edits(w.element, &fixed, w.line, line, shift));
    }
    Ok(Edit::Batch(edits))
}
