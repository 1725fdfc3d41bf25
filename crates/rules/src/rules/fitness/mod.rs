//! Whether the space is fit to be finished, by what is stated of the house. Findings here are advice: what they name
//! is not the building code's, but comes before everything else.

mod air_humidity;
mod damp_basement;
mod floating_wall;
mod old_house;
mod plastic_test;
mod radon_level;
mod slab_moisture;
mod wall_cracks;

use crate::{Citation, Finding, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(super) const RULES: &[Rule] = &[
    radon_level::RULE,
    damp_basement::RULE,
    wall_cracks::RULE,
    old_house::RULE,
    floating_wall::RULE,
    slab_moisture::RULE,
    air_humidity::RULE,
    plastic_test::RULE,
];

/// Advice about the whole basement, painted at its first room.
fn advice(
    sheet: &Sheet<'_>,
    rule: &'static str,
    citation: Citation,
    title: &str,
    why: &str,
    (measured, required): (String, String),
) -> Finding {
    let finding =
        Finding::new(Severity::Advice, citation, rule, Vec::new(), Phrase::text(title), why)
            .figures(Quantity::Words(measured), Quantity::Words(required));
    match sheet.facts.rooms.first() {
        Some(room) => finding.at(Place::Label(room.index)),
        None => finding,
    }
}

/// Whether rooms are being made to live in.
fn is_finished(sheet: &Sheet<'_>) -> bool {
    let mut rooms = sheet.facts.rooms.iter();
    rooms.any(|room| crate::rules::rooms::uses::habitable(room.room_use))
}
