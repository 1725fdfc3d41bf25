//! Findings about the house as a whole, painted where one of its elements stands or at the first room.

use plan::ElementId;

use crate::{Citation, Finding, Phrase, Place, Quantity, Severity, Sheet};

/// A correction about the whole house.
pub(super) fn finding(
    sheet: &Sheet<'_>,
    rule: &'static str,
    citation: Citation,
    about: Vec<ElementId>,
    (title, why): (&str, &str),
    (measured, required): (String, String),
) -> Finding {
    let places: Vec<Place> = about.iter().map(|id| Place::Of(*id)).collect();
    let mut finding =
        Finding::new(Severity::Correction, citation, rule, about, Phrase::text(title), why)
            .figures(Quantity::Words(measured), Quantity::Words(required));
    finding.places = match (places.is_empty(), sheet.facts.rooms.first()) {
        (true, Some(room)) => vec![Place::Label(room.index)],
        _ => places,
    };
    finding
}
