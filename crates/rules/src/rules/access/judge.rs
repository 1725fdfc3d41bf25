//! What softens a finding about access.

use geometry::Pt;
use measure::Len;
use plan::element::ServicePoint;
use plan::{Body, ElementId, House, State};
use space::{BEFORE_A_FACE, Room};

use crate::front::Face;
use crate::rules::rooms::words::called;
use crate::{Finding, Sheet};

/// In a standing house, what stands there already may stay as it is where it was allowed when it was built.
pub(crate) fn unless_existing(sheet: &Sheet<'_>, finding: Finding) -> Finding {
    let existing = |id: &ElementId| {
        sheet.plan().get(*id).is_some_and(|element| element.state == State::Existing)
    };
    if sheet.plan().site.house == House::Existing && finding.elements.iter().all(existing) {
        return finding
            .assuming("it was not allowed when it was built: what was may stay as it is");
    }
    finding
}

/// Furniture can be pushed aside: a finding that rests on loose things alone assumes that they stay.
pub(super) fn unless_loose(sheet: &Sheet<'_>, finding: Finding, by: &[ElementId]) -> Finding {
    let is_loose = |id: &ElementId| match sheet.plan().get(*id).map(|e| &e.body) {
        Some(Body::Furnishing(f)) => !f.fixed,
        _ => false,
    };
    if by.is_empty() || !by.iter().all(is_loose) {
        return finding;
    }
    let names: Vec<String> = by.iter().map(|id| called(sheet, *id)).collect();
    finding.assuming(format!("{} stays where it is drawn", names.join(" and ")))
}

/// The room that a service point looks into.
pub(super) fn room_before<'a>(sheet: &Sheet<'a>, service: &ServicePoint) -> Option<&'a Room> {
    let face = Face::of(service.placed());
    room_at(sheet, face.point(Len::ZERO, BEFORE_A_FACE))
}

/// The room that a service point stands in, or else the one that it looks into.
pub(super) fn room_of<'a>(sheet: &Sheet<'a>, service: &ServicePoint) -> Option<&'a Room> {
    room_at(sheet, service.placed().centre()).or_else(|| room_before(sheet, service))
}

fn room_at<'a>(sheet: &Sheet<'a>, p: Pt) -> Option<&'a Room> {
    sheet.facts.room_at(p).map(|index| sheet.facts.room(index))
}
