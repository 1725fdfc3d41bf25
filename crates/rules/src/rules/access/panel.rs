//! The working space in front of an electrical panel, measured once for the rules that ask about it.

use geometry::Pt;
use measure::Len;
use plan::element::{ServiceKind, ServicePoint};
use plan::{Body, Element};
use space::{Facts, Solid, SolidKind};

use crate::Sheet;
use crate::front::{Face, Fit, Space};

/// The panels of a plan.
pub(super) fn panels<'a>(
    sheet: &Sheet<'a>,
) -> impl Iterator<Item = (&'a Element, &'a ServicePoint)> + use<'a> {
    sheet.services().filter(|(_, s)| s.kind == ServiceKind::Panel)
}

/// The working space: as wide as the book or the panel asks, as deep as the book asks, from the floor
/// to the book's height or the panel's top.
pub(super) fn working_space(sheet: &Sheet<'_>, panel: &ServicePoint) -> Space {
    let floor = sheet.plan().site.floor_build;
    let book = sheet.book;
    Space {
        width: book.len("panel-width").value.max(panel.width),
        depth: book.len("panel-depth").value,
        bottom: floor,
        top: (floor + book.len("panel-height").value).max(panel.bottom + panel.height),
    }
}

/// How the working space fits.
pub(super) fn fit(sheet: &Sheet<'_>, id: plan::ElementId, panel: &ServicePoint) -> Fit {
    let face = Face::of(panel.placed());
    let allowed = sheet.book.len("panel-projection").value;
    face.fit(sheet.facts, working_space(sheet, panel), |solid| {
        solid.element == id
            || flush(sheet.facts, solid)
            || (electrical(sheet.facts, solid) && projection(&face, &solid.ring) <= allowed)
    })
}

fn projection(face: &Face, ring: &[Pt]) -> Len {
    ring.iter().map(|&p| face.out(p)).max().unwrap_or(Len::ZERO)
}

fn electrical(facts: &Facts, solid: &Solid) -> bool {
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
