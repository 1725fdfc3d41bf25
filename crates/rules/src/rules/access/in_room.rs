//! Rooms in which an electrical panel may not be.

use plan::element::RoomUse;

use crate::rules::rooms::words::room_called;
use crate::{Finding, Phrase, Place, Quantity, Severity, Sheet};

use super::{judge, panel};

/// A finding for every panel that looks into a room of a use.
pub(super) fn check(
    sheet: &Sheet<'_>,
    out: &mut Vec<Finding>,
    slug: &'static str,
    room_use: RoomUse,
    why: &str,
) {
    for (element, service) in panel::panels(sheet) {
        let Some(room) = judge::room_before(sheet, service) else { continue };
        if room.room_use != room_use {
            continue;
        }
        let mut elements = vec![element.id];
        elements.extend(room.tag);
        let title = format!("Electrical panel {} is in {}", element.name(), room_called(room));
        let not = format!("not in a {}", room_use.word());
        out.push(
            Finding::new(
                Severity::Correction,
                sheet.book.cite(slug),
                slug,
                elements,
                Phrase::text(title),
                why,
            )
            .figures(Quantity::Words(format!("in a {}", room_use.word())), Quantity::Words(not))
            .at(Place::Under(element.id)),
        );
    }
}
