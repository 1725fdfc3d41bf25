//! A field that is read when it is left.

use egui::{Align2, Id, Key, RichText, TextEdit, Ui};

use super::row;

/// What a field holds while it is being typed into, and why the last entry was refused.
#[derive(Clone, Default)]
struct Typing {
    text: String,
    active: bool,
    refused: Option<String>,
}

/// A field and what stands around it.
pub(super) struct Entry<'a> {
    pub word: &'a str,
    /// The value as it is.
    pub shown: &'a str,
    pub unit: Option<&'a str>,
    /// What stands in an empty field.
    pub hint: &'a str,
    /// What it accepts, shown to the pointer that rests on it.
    pub accepted: &'a str,
}

/// A row with its word at the left and a field.
pub(super) fn entry_row<T>(
    ui: &mut Ui,
    word: &str,
    shown: &str,
    unit: Option<&str>,
    accepted: &str,
    read: impl Fn(&str) -> Result<T, String>,
) -> Option<T> {
    let field = Entry { word, shown, unit, hint: "", accepted };
    entry(ui, &field, |ui, value| row(ui, word, value), read)
}

/// A field that is read when Enter is pressed or it is left. What is refused is said under the field, and the
/// old value comes back. `place` lays it out beside its word.
pub(super) fn entry<T>(
    ui: &mut Ui,
    field: &Entry<'_>,
    place: impl FnOnce(&mut Ui, &mut dyn FnMut(&mut Ui)),
    read: impl Fn(&str) -> Result<T, String>,
) -> Option<T> {
    let Entry { word, shown, unit, hint, accepted } = *field;
    let id = ui.make_persistent_id((word, "entry"));
    let mut typing: Typing = ui.data(|d| d.get_temp(id)).unwrap_or_default();
    let mut new = None;
    place(ui, &mut |ui: &mut Ui| {
        // Fields without a unit are as wide as those with one.
        let unit_width = if unit.is_none() && !hint.is_empty() { -10.0 } else { 26.0 };
        if !typing.active {
            shown.clone_into(&mut typing.text);
        }
        let edit = TextEdit::singleline(&mut typing.text)
            .id(id)
            .align(Align2::LEFT_CENTER)
            .hint_text(hint)
            .desired_width(ui.available_width() - unit_width - 10.0);
        let response = ui.add(edit).accessible_name(word);
        if let Some(unit) = unit {
            ui.weak(unit);
        }
        if response.gained_focus() {
            typing.active = true;
            select_all(ui, id, typing.text.chars().count());
        }
        if response.changed() {
            typing.active = true;
            typing.refused = None;
        }
        // Losing the keyboard may be told in more than one pass: only the first counts.
        if response.lost_focus() && std::mem::take(&mut typing.active) {
            let left_by_escape = ui.input(|i| i.key_pressed(Key::Escape));
            typing.refused = None;
            if !left_by_escape && typing.text.trim() != shown {
                match read(&typing.text) {
                    Ok(value) => new = Some(value),
                    Err(why) => typing.refused = Some(why),
                }
            }
        }
        if typing.refused.is_none() {
            response.on_hover_text(accepted);
        }
    });
    if let Some(why) = &typing.refused {
        let text = RichText::new(why).color(ui.visuals().error_fg_color).small();
        ui.add(egui::Label::new(text).wrap());
    }
    ui.data_mut(|d| d.insert_temp(id, typing));
    new
}

/// Marks all text of a field, so that typing replaces it.
pub fn select_all(ui: &Ui, id: Id, chars: usize) {
    use egui::text::{CCursor, CCursorRange};
    if let Some(mut state) = TextEdit::load_state(ui.ctx(), id) {
        let all = CCursorRange::two(CCursor::new(0), CCursor::new(chars));
        state.cursor.set_char_range(Some(all));
        TextEdit::store_state(ui.ctx(), id, state);
    }
}
