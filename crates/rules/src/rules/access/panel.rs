//! The working space in front of an electrical panel, measured once for the rules that ask about it.

use geometry::{Pt, Ring, Shape};
use measure::Len;
use plan::element::{ServiceKind, ServicePoint};
use plan::{Body, Element, ElementId};
use space::{Facts, Solid, SolidKind};

use crate::Sheet;
use crate::front::{Face, Fit, Space};

/// The panels of a plan.
pub(super) fn panels<'a>(
    sheet: &Sheet<'a>,
) -> impl Iterator<Item = (&'a Element, &'a ServicePoint)> + use<'a> {
    sheet.services().filter(|(_, s)| s.kind == ServiceKind::Panel)
}

/// The working space before electrical equipment: as wide as the book or the equipment asks, as deep as
/// the book asks, from the floor to the book's height or the equipment's top.
pub(super) fn working_space(sheet: &Sheet<'_>, equipment: &ServicePoint) -> Space {
    let floor = sheet.plan().site.floor_build;
    let book = sheet.book;
    Space {
        width: book.length("panel-width").max(equipment.width),
        depth: book.length("panel-depth"),
        bottom: floor,
        top: (floor + book.length("panel-height")).max(equipment.bottom + equipment.height),
    }
}

/// The working space and how it fits between what stands on the floor and hangs on the walls.
pub(super) fn measure(sheet: &Sheet<'_>, id: ElementId, equipment: &ServicePoint) -> (Space, Fit) {
    let face = Face::of(equipment.placed());
    let space = working_space(sheet, equipment);
    let allowed = sheet.book.length("panel-projection");
    let fit = face.fit(sheet.facts, space, |solid| {
        solid.element == id
            || flush(sheet.facts, solid)
            || (electrical(sheet.facts, solid) && projection(&face, &solid.ring) <= allowed)
    });
    (space, fit)
}

/// The clear height over the working space at the place where it is highest, and that place.
pub(super) fn head(sheet: &Sheet<'_>, fit: &Fit) -> (Len, Ring) {
    let over = |ring: &Ring| {
        let region = Shape { outer: ring.clone(), holes: Vec::new() };
        space::clear_over(sheet.facts, &region)
    };
    let mut best = (over(&fit.ring), fit.ring.clone());
    for place in fit.places.iter().skip(1) {
        let height = over(place);
        if height > best.0 {
            best = (height, place.clone());
        }
    }
    best
}

fn projection(face: &Face, ring: &[Pt]) -> Len {
    ring.iter().map(|&p| face.out(p)).max().unwrap_or(Len::ZERO)
}

/// Part of the electrical installation.
pub(super) fn electrical(facts: &Facts, solid: &Solid) -> bool {
    let kinds = [ServiceKind::Panel, ServiceKind::Disconnect, ServiceKind::JunctionBox];
    service_kind(facts, solid).is_some_and(|kind| kinds.contains(&kind))
}

/// Set in the floor, so that one can stand on it.
pub(super) fn flush(facts: &Facts, solid: &Solid) -> bool {
    let kinds = [ServiceKind::FloorDrain, ServiceKind::Sump, ServiceKind::Ejector];
    service_kind(facts, solid).is_some_and(|kind| kinds.contains(&kind))
}

fn service_kind(facts: &Facts, solid: &Solid) -> Option<ServiceKind> {
    if solid.kind != SolidKind::Service {
        return None;
    }
    match &facts.plan.get(solid.element)?.body {
        Body::Service(s) => Some(s.kind),
        _ => None,
    }
}
