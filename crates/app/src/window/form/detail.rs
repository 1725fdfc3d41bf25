//! A row for a detail: stated or not, with what is assumed until then.

use egui::{Align, Button, ComboBox, Label, Layout, RichText, Ui, vec2};
use measure::System;
use plan::detail::{Detail, Details, Kind, Value};

use super::Form;
use super::entry::{Entry, entry};

/// The share of the row that the word takes: details have longer words than figures.
const WORD_SHARE: f32 = 0.46;

impl Form {
    /// States a detail, or takes it back. `mixed` is whether those selected differ in it.
    pub fn detail(
        &mut self,
        ui: &mut Ui,
        detail: &'static Detail,
        details: &mut Details,
        mixed: bool,
    ) {
        let stated = details.get(detail).filter(|_| !mixed);
        let system = self.system();
        let new = match detail.kind {
            Kind::YesNo => choose(ui, detail, stated, mixed, &[Value::Yes, Value::No], system),
            Kind::Choice(words) => {
                let values: Vec<Value> = words.iter().map(|word| Value::Word(word)).collect();
                choose(ui, detail, stated, mixed, &values, system)
            }
            Kind::Length(_) | Kind::Number(..) => write(ui, detail, stated, mixed, system),
        };
        if let Some(new) = new
            && (mixed || new != stated)
        {
            details.set(detail, new);
            self.touch(detail.word);
        }
    }
}

/// What stands in a field of which nothing is stated.
fn unstated(detail: &Detail, mixed: bool, system: System) -> String {
    match (mixed, detail.assumed) {
        (true, _) => "they differ".to_owned(),
        (false, None) => "not stated".to_owned(),
        (false, Some(value)) => format!("{} (assumed)", detail.say(value, system)),
    }
}

fn row(ui: &mut Ui, detail: &Detail, value: impl FnOnce(&mut Ui)) {
    ui.horizontal_top(|ui| {
        let height = ui.spacing().interact_size.y;
        let words = ui.available_width() * WORD_SHARE;
        let left = Layout::left_to_right(Align::Center);
        ui.allocate_ui_with_layout(vec2(words, height), left, |ui| {
            ui.set_min_size(vec2(words, height));
            ui.add(Label::new(RichText::new(detail.word).weak()).wrap()).on_hover_text(detail.asks);
        });
        ui.vertical(value);
    });
}

/// One of a few values, or none of them.
fn choose(
    ui: &mut Ui,
    detail: &Detail,
    stated: Option<Value>,
    mixed: bool,
    values: &[Value],
    system: System,
) -> Option<Option<Value>> {
    let mut new = None;
    row(ui, detail, |ui| {
        let shown = match stated {
            Some(value) => RichText::new(detail.say(value, system)),
            None => RichText::new(unstated(detail, mixed, system)).weak(),
        };
        let width = ui.available_width();
        let combo = ComboBox::from_id_salt(detail.slug).width(width).truncate().height(420.0);
        let response = combo.selected_text(shown).show_ui(ui, |ui| {
            let none = Button::selectable(stated.is_none(), unstated(detail, false, system));
            if ui.add(none).clicked() {
                new = Some(None);
            }
            for value in values {
                let text = detail.say(*value, system);
                if ui.add(Button::selectable(stated == Some(*value), text)).clicked() {
                    new = Some(Some(*value));
                }
            }
        });
        response.response.accessible_name(detail.word).on_hover_text(detail.asks);
    });
    new
}

/// A figure that is typed; an empty field states nothing.
fn write(
    ui: &mut Ui,
    detail: &Detail,
    stated: Option<Value>,
    mixed: bool,
    system: System,
) -> Option<Option<Value>> {
    let shown = stated.map_or_else(String::new, |value| value.say(system));
    let accepted = format!("{} {} Empty: not stated.", detail.asks, detail.accepted(system));
    let hint = unstated(detail, mixed, system);
    let field =
        Entry { word: detail.word, shown: &shown, unit: None, hint: &hint, accepted: &accepted };
    let read = |text: &str| match text.trim() {
        "" => Ok(None),
        text => detail.read(text, system).map(Some),
    };
    entry(ui, &field, |ui, value| row(ui, detail, value), read)
}
