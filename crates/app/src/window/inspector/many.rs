//! Several elements are selected.

use std::collections::BTreeMap;

use egui::{Label, RichText, Ui};
use plan::{Element, ElementId, State, ops};

use super::super::act::Cx;
use super::super::commands::Command;
use super::heading;

/// Counts, the shared state, and what can be done to all.
pub fn show(ui: &mut Ui, cx: &mut Cx<'_>) {
    let plan = std::sync::Arc::clone(cx.session.plan());
    let ids: Vec<ElementId> = cx.session.selection().iter().copied().collect();
    let elements: Vec<&Element> = ids.iter().filter_map(|id| plan.get(*id)).collect();
    heading(ui, &format!("{} elements", elements.len()));
    let mut kinds: BTreeMap<&str, usize> = BTreeMap::new();
    for element in &elements {
        *kinds.entry(element.body.word()).or_default() += 1;
    }
    let list: Vec<String> = kinds.iter().map(|(word, n)| format!("{n} × {word}")).collect();
    ui.add(Label::new(RichText::new(list.join(", ")).weak()).wrap());
    let states = [State::Existing, State::New, State::Removed];
    let shared = states.into_iter().find(|s| elements.iter().all(|e| e.state == *s));
    super::super::form::row(ui, "State", |ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        for (state, word) in states.into_iter().zip(["existing", "new", "removed"]) {
            let chosen = shared == Some(state);
            let button = egui::Button::selectable(chosen, word).frame_when_inactive(true);
            let response = ui.add(button).accessible_name(format!("State: {word}"));
            if response.clicked()
                && !chosen
                && let Ok(edit) = ops::set_state(&plan, &ids, state)
            {
                cx.edit(format!("Make {} elements {word}", elements.len()), edit);
            }
        }
    });
    if shared.is_none() {
        ui.add(Label::new(RichText::new("Their states differ.").weak()).wrap());
    }
    super::details::many(ui, cx, &elements);
    ui.horizontal_wrapped(|ui| {
        for command in [Command::Duplicate, Command::Turn, Command::Delete] {
            if let Some(row) = super::super::commands::row_of(command)
                && ui.button(row.text).on_hover_text(row.help).clicked()
            {
                cx.command(command);
            }
        }
    });
}
