//! Things behind or above finish, without an opening to reach them through.

use measure::Len;
use plan::element::{AccessOpening, ServicePoint};
use plan::{Body, Edit, Element, ElementId};
use space::{Cover, CoverBy};

use crate::rules::rooms::words::{called, capital};
use crate::{Citation, Finding, Phrase, Place, Quantity, Remedy, Safety, Severity, Sheet};

/// What covers a service point for good: lay-in tiles lift out and don't count.
pub(super) fn covers(sheet: &Sheet<'_>, id: ElementId) -> Vec<Cover> {
    let mut covers = space::cover(sheet.facts, id);
    covers.retain(|cover| cover.by != CoverBy::LayInCeiling);
    covers
}

/// The elements among covers.
pub(super) fn elements(covers: &[Cover]) -> impl Iterator<Item = ElementId> {
    covers.iter().filter_map(|cover| match cover.by {
        CoverBy::Element(id) => Some(id),
        CoverBy::BoardCeiling | CoverBy::LayInCeiling => None,
    })
}

/// A correction where a service point is covered and has no access opening.
pub(super) fn finding(
    sheet: &Sheet<'_>,
    slug: &'static str,
    citation: Citation,
    element: &Element,
    service: &ServicePoint,
    why: &str,
) -> Option<Finding> {
    if service.access.is_some() {
        return None;
    }
    let covers = covers(sheet, element.id);
    let first = covers.first()?;
    let mut about = vec![element.id];
    about.extend(elements(&covers));
    let preposition = match first.by {
        CoverBy::Element(_) => "behind",
        CoverBy::BoardCeiling | CoverBy::LayInCeiling => "above the",
    };
    let where_it_is = match first.by {
        CoverBy::Element(id) => format!("{preposition} {}", called(sheet, id)),
        _ => format!("{preposition} {}", first.word),
    };
    let title = format!("{} is buried {where_it_is}", capital(&called(sheet, element.id)));
    Some(
        Finding::new(Severity::Correction, citation, slug, about, Phrase::text(title), why)
            .figures(
                Quantity::Words(format!("{preposition} {}", first.word)),
                Quantity::Words("an access opening".into()),
            )
            .at(Place::Under(element.id)),
    )
}

/// The side of the access opening that a remedy provides (common practice, no source).
const OPENING: Len = Len::inches(12);

/// Provides an access opening of 12 in by 12 in, or as large as the thing where that is larger.
pub(super) fn remedies(finding: &Finding, sheet: &Sheet<'_>) -> Vec<Remedy> {
    let plan = sheet.plan();
    let buried =
        finding.elements.iter().filter_map(|id| plan.get(*id)).find_map(|e| match &e.body {
            Body::Service(s) => Some((e, s)),
            _ => None,
        });
    let Some((element, service)) = buried else { return Vec::new() };
    let size = OPENING.max(service.width);
    let height = OPENING.max(service.height);
    let access = Some(AccessOpening { width: size, height });
    let body = Body::Service(ServicePoint { access, ..service.clone() });
    vec![Remedy {
        label: Phrase::text("Provide an access opening of ")
            .inches(size)
            .then(" × ")
            .inches(height)
            .then(format!(" for {}", called(sheet, element.id))),
        edit: Edit::Replace(Element { body, ..element.clone() }),
        safety: Safety::Safe,
    }]
}
