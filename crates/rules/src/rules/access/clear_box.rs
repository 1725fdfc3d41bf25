//! A finding about a box that must be clear before a service point.

use measure::Len;
use plan::element::ServicePoint;
use plan::{Element, ElementId};

use crate::front::{Face, Fit, Space};
use crate::{Citation, Finding, Phrase, Place, Quantity, Severity, Sheet};

use super::judge;

/// What is demanded before a service point.
pub(super) struct Demand {
    pub slug: &'static str,
    pub citation: Citation,
    pub space: Space,
    pub title: String,
    pub why: &'static str,
}

/// A correction where the box does not fit: by its depth where something stands straight before the
/// face, else by its width. What stands there already, and what is loose, makes it one to verify.
pub(super) fn finding(
    sheet: &Sheet<'_>,
    element: &Element,
    service: &ServicePoint,
    fit: &Fit,
    demand: Demand,
) -> Option<Finding> {
    let face = Face::of(service.placed());
    let (measured, required, by, span) = if let Some(depth) = fit.short {
        let wider = demand.space.width < service.width;
        let mut before = fit.within.iter().filter(|o| wider || face.faces(o)).peekable();
        let span = before.peek().map(|o| face.distance(o));
        let by: Vec<ElementId> = before.map(|o| o.element).collect();
        (depth, demand.space.depth, by, span)
    } else if let Some(narrow) = &fit.narrow {
        let end = |across: Len| face.point(across, narrow.out);
        let span = Some((end(narrow.from), end(narrow.to)));
        (narrow.width(), demand.space.width, narrow.by.clone(), span)
    } else {
        return None;
    };
    let mut elements = vec![element.id];
    elements.extend(&by);
    let mut finding = Finding::new(
        Severity::Correction,
        demand.citation,
        demand.slug,
        elements,
        Phrase::text(demand.title),
        demand.why,
    )
    .figures(Quantity::Len(measured), Quantity::Len(required))
    .at(face.breach(fit));
    if let Some((from, to)) = span {
        finding = finding.at(Place::Span(from, to));
    }
    Some(judge::unless_existing(sheet, judge::unless_loose(sheet, finding, &by)))
}

/// Remedies for a finding of [`finding`]: by depth or by width, whichever it was that is missing.
pub(super) fn remedies(finding: &Finding, sheet: &Sheet<'_>) -> Vec<crate::Remedy> {
    let mut remedies = super::clear_away::out_of_depth(finding, sheet);
    remedies.extend(super::clear_away::out_of_width(finding, sheet));
    remedies
}
