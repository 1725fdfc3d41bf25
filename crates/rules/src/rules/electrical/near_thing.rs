//! A thing that asks for a receptacle near it.

use geometry::gap;
use measure::Len;
use plan::element::{BodyKind, Furnishing, ServiceKind};
use plan::{Body, Element};

use super::devices::{in_room, room_of};
use crate::rules::rooms::words::{called, capital};
use crate::{Finding, Limit, Phrase, Place, Quantity, Severity, Sheet};

/// Looks for a receptacle of the same room within the limit of each thing that asks for one; rooms in which none is
/// drawn are left to the rules that ask for one.
pub(super) fn look(
    sheet: &Sheet<'_>,
    out: &mut Vec<Finding>,
    slug: &'static str,
    why: &'static str,
    asks: impl Fn(&Furnishing) -> bool,
) {
    let limit = sheet.book.len(slug);
    for element in sheet.facts.standing(&[BodyKind::Furnishing]) {
        match &element.body {
            Body::Furnishing(thing) if asks(thing) => {
                one(sheet, out, (slug, &limit, why), (element, thing));
            }
            _ => {}
        }
    }
}

fn one(
    sheet: &Sheet<'_>,
    out: &mut Vec<Finding>,
    (slug, limit, why): (&'static str, &Limit<Len>, &'static str),
    (element, thing): (&Element, &Furnishing),
) {
    let placed = thing.placed();
    let Some(room) = sheet.facts.room_at(placed.centre()) else { return };
    let corners = placed.corners();
    let nearest = in_room(sheet, ServiceKind::Receptacle, room)
        .into_iter()
        .filter(|(_, s)| room_of(sheet, s) == Some(room))
        .map(|(e, s)| (gap(&corners, &s.placed().corners()), e.id))
        .min_by_key(|(gap, id)| (gap.len, *id));
    let Some((gap, receptacle)) = nearest else { return };
    if gap.len <= limit.value {
        return;
    }
    let title = format!("{} has no receptacle near it", capital(&called(sheet, element.id)));
    out.push(
        Finding::new(
            Severity::Correction,
            limit.citation.clone(),
            slug,
            vec![element.id, receptacle],
            Phrase::text(title),
            why,
        )
        .figures(Quantity::Len(gap.len), Quantity::Len(limit.value))
        .at(Place::Span(gap.from, gap.to)),
    );
}
