//! Remedies: changes of a window's well.

use plan::element::{OpeningKind, Well};
use plan::{Body, Edit};

use crate::rules::rooms::words::called;
use crate::{Finding, Phrase, Remedy, Safety, Sheet};

/// The change of the well of a finding's window, to be shown before it is made: a well is dug.
/// `label` gets the window's name.
pub(super) fn change_well(
    finding: &Finding,
    sheet: &Sheet<'_>,
    label: impl Fn(&str) -> Phrase,
    change: impl Fn(&mut Well),
) -> Vec<Remedy> {
    let mut remedies = Vec::new();
    for element in finding.elements.iter().filter_map(|id| sheet.plan().get(*id)) {
        let mut changed = element.clone();
        let Body::Opening(opening) = &mut changed.body else { continue };
        let OpeningKind::Window(window) = &mut opening.kind else { continue };
        let Some(well) = &mut window.well else { continue };
        change(well);
        remedies.push(Remedy {
            label: label(&called(sheet, element.id)),
            edit: Edit::Replace(changed),
            safety: Safety::Ask,
        });
    }
    remedies
}
