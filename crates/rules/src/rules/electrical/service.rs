//! Demands on the electric service of the house that begin when it is new or replaced.

use plan::House;
use plan::detail::Detail;
use plan::detail::site::SERVICE_REPLACED;

use crate::{Finding, Phrase, Place, Quantity, Severity, Sheet};

/// Something that a new or replaced service has. The rule's slug is its limit's: 1 where the edition asks for it.
pub(super) struct Demand {
    pub rule: &'static str,
    pub detail: &'static Detail,
    pub title: &'static str,
    pub why: &'static str,
    pub required: &'static str,
}

/// Whether the service is stated to be replaced.
pub(super) fn is_replaced(sheet: &Sheet<'_>) -> bool {
    sheet.ask_site(&SERVICE_REPLACED).yes() == Some(true)
}

pub(super) fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>, demand: &Demand) {
    let asked = sheet.book.count(demand.rule);
    let new = sheet.plan().site.house == House::New;
    if asked.value == 0 || !(new || is_replaced(sheet)) {
        return;
    }
    let answer = sheet.ask_site(demand.detail);
    let measured = match answer.yes() {
        Some(true) => return,
        Some(false) => "none",
        None if is_replaced(sheet) => "not stated",
        None => return,
    };
    let figures = (measured.to_owned(), demand.required.to_owned());
    let title = demand.title;
    let finding = finding(sheet, demand.rule, Severity::Correction, title, demand.why, figures);
    out.push(finding.resting_on(&answer));
}

/// A finding about the service, painted at the panel, or where there is none at the first room.
pub(super) fn finding(
    sheet: &Sheet<'_>,
    rule: &'static str,
    severity: Severity,
    title: &str,
    why: &str,
    (measured, required): (String, String),
) -> Finding {
    let panel = sheet.services().find(|(_, s)| s.kind == plan::element::ServiceKind::Panel);
    let place = match panel {
        Some((panel, _)) => Some(Place::Of(panel.id)),
        None => sheet.facts.rooms.first().map(|room| Place::Label(room.index)),
    };
    let about = panel.map(|(element, _)| element.id).into_iter().collect();
    let finding =
        Finding::new(severity, sheet.book.cite(rule), rule, about, Phrase::text(title), why)
            .figures(Quantity::Words(measured), Quantity::Words(required));
    match place {
        Some(place) => finding.at(place),
        None => finding,
    }
}
