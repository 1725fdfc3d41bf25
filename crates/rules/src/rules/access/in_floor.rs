//! Drains and pits in the floor that something stands on.

use geometry::{Bounds, convex_overlap};
use plan::element::ServicePoint;
use plan::{Element, ElementId};
use space::SolidKind;

use crate::rules::rooms::words::{called, capital};
use crate::{Citation, Finding, Phrase, Place, Quantity, Severity, Sheet};

use super::{buried, judge, panel};

/// A correction where a wall, a column, a stair, an appliance or a furnishing stands on a part of a drain
/// or pit, one for each thing.
pub(super) fn findings(
    sheet: &Sheet<'_>,
    slug: &'static str,
    citation: &Citation,
    element: &Element,
    service: &ServicePoint,
    why: &str,
) -> Vec<Finding> {
    let finding = |id: ElementId| {
        let (thing, point) = (called(sheet, id), called(sheet, element.id));
        let finding = Finding::new(
            Severity::Correction,
            citation.clone(),
            slug,
            vec![element.id, id],
            Phrase::text(format!("{} stands on {point}", capital(&thing))),
            why,
        )
        .figures(Quantity::Words(format!("under {thing}")), Quantity::Words("nothing on it".into()))
        .at(Place::Under(element.id));
        judge::unless_existing(sheet, judge::unless_loose(sheet, finding, &[id]))
    };
    standing_on(sheet, element.id, service).into_iter().map(finding).collect()
}

fn standing_on(sheet: &Sheet<'_>, id: ElementId, service: &ServicePoint) -> Vec<ElementId> {
    let ring = service.placed().corners();
    let top = service.bottom + service.height;
    let covers = space::cover(sheet.facts, id);
    let appliances = sheet
        .facts
        .solids_near(Bounds::of(ring))
        .filter(|s| s.kind == SolidKind::Service && s.element != id && s.bottom <= top)
        .filter(|s| !panel::flush(sheet.facts, s) && convex_overlap(&ring, &s.ring))
        .map(|s| s.element);
    let mut things: Vec<ElementId> = buried::elements(&covers).chain(appliances).collect();
    things.sort_unstable();
    things.dedup();
    things
}
