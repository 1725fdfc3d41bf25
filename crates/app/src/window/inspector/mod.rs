//! The inspector: every value of what is selected.

mod boxes;
pub mod column;
pub mod details;
pub mod door;
pub mod furnishing;
mod many;
mod moving;
mod nothing;
mod opening;
mod overhead;
pub mod room;
mod section;
mod service;
mod stair;
mod tag;
mod wall;
pub mod window;

use egui::{Label, RichText, Ui};
use plan::{Body, Edit, Element, State};
use rules::capital;

use super::act::{Act, Cx};
use super::form::Form;
use super::panes::kit::heading;
use super::view::FindingKey;

/// Shows the inspector of the selection.
pub fn show(ui: &mut Ui, cx: &mut Cx<'_>) {
    let mut ids = cx.session.selection().iter().copied();
    match (ids.next(), ids.next()) {
        (None, _) => nothing::show(ui, cx),
        (Some(id), None) => {
            if let Some(element) = cx.session.plan().get(id).cloned() {
                one(ui, cx, element);
            }
        }
        (Some(_), Some(_)) => many::show(ui, cx),
    }
}

fn one(ui: &mut Ui, cx: &mut Cx<'_>, before: Element) {
    let mut element = before.clone();
    heading(ui, &format!("{} {}", capital(element.body.word()), element.name()));
    open_findings(ui, cx, &element);
    let mut form = Form::new(cx.system());
    ui.push_id(("element", element.id.0), |ui| {
        if !matches!(element.body, Body::RoomTag(_) | Body::Note(_) | Body::Section(_)) {
            state(ui, &mut form, &mut element.state);
        }
        wall::length(ui, cx, &before);
        match &mut element.body {
            Body::Shell(w) => wall::shell(ui, &mut form, w),
            Body::Partition(w) => wall::partition(ui, &mut form, w),
            Body::Furring(f) => wall::furring(ui, &mut form, f),
            Body::Opening(o) => opening::show(ui, &mut form, cx, before.id, o),
            Body::Column(c) => column::show(ui, &mut form, c),
            Body::Stair(s) => stair::show(ui, &mut form, s),
            Body::Overhead(o) => overhead::show(ui, &mut form, cx, o),
            Body::Service(s) => service::show(ui, &mut form, cx, s),
            Body::Furnishing(f) => furnishing::show(ui, &mut form, f),
            Body::RoomTag(t) => tag::room(ui, &mut form, t),
            Body::Note(n) => tag::note(ui, &mut form, n),
            Body::Section(s) => section::show(ui, &mut form, s),
        }
        if let Body::RoomTag(_) = &before.body {
            room::facts(ui, cx, before.id);
        }
        moving::show(ui, cx, &before);
        details::one(ui, &mut form, &mut element);
    });
    if let Some(word) = form.changed()
        && element != before
    {
        cx.edit(format!("Change {word} of {}", before.name()), Edit::Replace(element));
    }
}

/// Existing, new or removed.
pub fn state(ui: &mut Ui, form: &mut Form, state: &mut State) {
    let states = [(State::Existing, "existing"), (State::New, "new"), (State::Removed, "removed")];
    form.among(ui, "State", state, &states);
}

/// The open findings about an element, by title; a click shows one.
fn open_findings(ui: &mut Ui, cx: &mut Cx<'_>, element: &Element) {
    let system = cx.system();
    let findings = std::sync::Arc::clone(&cx.checked.findings);
    let about =
        findings.iter().filter(|f| f.set_aside.is_none() && f.elements.contains(&element.id));
    for finding in about {
        let text = format!("{}: {}", capital(finding.severity.word()), finding.title.say(system));
        let colour = super::panes::findings::ink(finding.severity, cx.view.look);
        let label =
            Label::new(RichText::new(text).color(colour)).wrap().sense(egui::Sense::click());
        if ui.add(label).on_hover_text("Shows it on the plan.").clicked() {
            cx.push(Act::ShowFinding(FindingKey::of(finding)));
        }
    }
}
