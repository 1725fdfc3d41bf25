//! Doors, cased openings and windows in their wall.

use egui::{RichText, Ui};
use measure::Precision;
use plan::element::{Opening, OpeningKind};
use plan::{ElementId, bounds};

use super::super::act::Cx;
use super::super::form::Form;
use super::{door, window};

pub fn show(ui: &mut Ui, form: &mut Form, cx: &mut Cx<'_>, id: ElementId, opening: &mut Opening) {
    if let Some(host) = cx.session.plan().get(opening.host) {
        form.fact(ui, "In", format!("{} {}", host.body.word(), host.name()));
    }
    form.len(ui, "From the start", &mut opening.at, bounds::PLACE_ON_WALL);
    match &mut opening.kind {
        OpeningKind::Door(d) => {
            door::edit(ui, form, d);
            passage(ui, form, cx, id);
        }
        OpeningKind::Window(w) => window::edit(ui, form, w),
    }
}

/// The clear opening of a door as the checks take it.
fn passage(ui: &mut Ui, form: &Form, cx: &Cx<'_>, id: ElementId) {
    let Some(facts) = cx.checked.facts.opening(id) else { return };
    let say = |l| form.system().inches(l, Precision::Floor);
    let text = format!("{} × {}", say(facts.clear_width), say(facts.clear_height));
    form.fact(ui, "Clear opening", RichText::new(text).strong());
}
