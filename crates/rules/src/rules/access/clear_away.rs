//! Remedies that move what stands in a keep-clear.

use geometry::Facing;
use measure::Len;
use plan::{Body, Element, State};

use crate::front::Face;
use crate::{Finding, Phrase, Quantity, Remedy, Safety, Sheet};

/// What a tape can be set to: a shortage is rounded up to it.
const TAPE: Len = Len::sixty_fourths(4);

/// Moves new partitions and loose furnishings of a finding away from the face of its service point, by what is missing.
pub(super) fn out_of_depth(finding: &Finding, sheet: &Sheet<'_>) -> Vec<Remedy> {
    let (Some(face), Some(missing)) = (face(finding, sheet), missing(finding)) else {
        return Vec::new();
    };
    let by = to_tape(missing);
    movable(finding, sheet).filter_map(|e| moved(sheet, e, face.facing, by)).collect()
}

/// Moves new partitions and loose furnishings of a finding aside, by what is missing.
pub(super) fn out_of_width(finding: &Finding, sheet: &Sheet<'_>) -> Vec<Remedy> {
    let (Some(face), Some(missing)) = (face(finding, sheet), missing(finding)) else {
        return Vec::new();
    };
    let by = to_tape(missing);
    let sides = [face.facing.left(), face.facing.right()];
    movable(finding, sheet)
        .flat_map(|e| sides.into_iter().filter_map(move |side| moved(sheet, e, side, by)))
        .collect()
}

/// The face of the service point that a finding is about.
fn face(finding: &Finding, sheet: &Sheet<'_>) -> Option<Face> {
    finding.elements.iter().find_map(|&id| match &sheet.plan().get(id)?.body {
        Body::Service(s) => Some(Face::of(s.placed())),
        _ => None,
    })
}

fn missing(finding: &Finding) -> Option<Len> {
    match (&finding.measured, &finding.required) {
        (Some(Quantity::Len(m)), Some(Quantity::Len(r))) => Some(*r - *m),
        _ => None,
    }
}

fn to_tape(len: Len) -> Len {
    let (units, step) = (len.units(), TAPE.units());
    Len::from_units((units + step - 1) / step * step)
}

fn movable<'a>(
    finding: &'a Finding,
    sheet: &Sheet<'a>,
) -> impl Iterator<Item = &'a Element> + use<'a> {
    let plan = sheet.plan();
    finding.elements.iter().filter_map(|&id| plan.get(id)).filter(|e| match &e.body {
        Body::Partition(_) => e.state == State::New,
        Body::Furnishing(f) => !f.fixed,
        _ => false,
    })
}

fn moved(sheet: &Sheet<'_>, element: &Element, way: Facing, by: Len) -> Option<Remedy> {
    let edit = match &element.body {
        Body::Partition(w) => {
            let left = w.line().dir().left();
            if left.cross(way.vec()) != 0 {
                return None;
            }
            let by = if left.dot(way.vec()) > 0 { by } else { -by };
            plan::ops::move_wall(sheet.plan(), element.id, by).ok()?
        }
        Body::Furnishing(_) => {
            plan::ops::translate(sheet.plan(), &[element.id], way.step(by)).ok()?
        }
        _ => return None,
    };
    Some(Remedy {
        label: Phrase::text(format!("Move {} by ", element.name())).inches(by),
        edit,
        safety: Safety::Ask,
    })
}
