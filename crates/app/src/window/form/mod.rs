//! Rows of a form: a word at the left, a value at the right. Each row edits a value in place and the
//! form remembers which one was changed.

use egui::{Align, Button, ComboBox, Layout, RichText, Ui, Vec2, WidgetText, vec2};
use measure::{BareUnit, Len, Precision, System, read_len};
use plan::bounds::{Bound, CountBound, TextBound};

/// The width of the words at the left.
const WORDS: f32 = 104.0;

mod detail;
mod entry;

use entry::entry_row;
pub use entry::select_all;

/// A pane narrower than this has no room for a wide value beside its word.
const NARROW: f32 = 250.0;

/// A form in one unit system.
#[derive(Debug)]
pub struct Form {
    system: System,
    /// The word of the row that was changed, in lower case.
    changed: Option<String>,
}

/// What a bare number means in a unit system.
pub fn bare_unit(system: System) -> BareUnit {
    match system {
        System::Imperial => BareUnit::Inches,
        System::Metric => BareUnit::Millimetres,
    }
}

/// The unit that stands beside a field.
pub fn unit_word(system: System) -> &'static str {
    match system {
        System::Imperial => "in",
        System::Metric => "mm",
    }
}

/// Reads a length and checks its range; the error is a sentence with the accepted range.
pub fn read_within(text: &str, system: System, bound: Bound) -> Result<Len, String> {
    let value = read_len(text.trim(), bare_unit(system)).map_err(|e| e.to_string())?;
    if bound.holds(value) {
        return Ok(value);
    }
    Err(format!(
        "{} is out of range: the {} may be {}.",
        system.len(value, Precision::Fine),
        bound.what,
        bound.accepted(system)
    ))
}

impl Form {
    pub fn new(system: System) -> Form {
        Form { system, changed: None }
    }

    /// The word of the row that was changed in this frame.
    pub fn changed(self) -> Option<String> {
        self.changed
    }

    pub fn system(&self) -> System {
        self.system
    }

    fn mark(&mut self, word: &str) {
        self.changed = Some(word.to_lowercase());
    }

    /// Marks a change that a row of the caller's own made.
    pub fn touch(&mut self, word: &str) {
        self.mark(word);
    }

    /// A length that may be typed in any of the accepted ways.
    pub fn len(&mut self, ui: &mut Ui, word: &str, value: &mut Len, bound: Bound) {
        let system = self.system;
        let shown = system.len(*value, Precision::Fine);
        // The unit stands beside the field, and the field may be narrow.
        let shown = shown.strip_suffix(" mm").unwrap_or(&shown).to_owned();
        let accepted = format!(
            "{}: {}. Feet, inches, fractions, mm or m are read; a bare number means {}.",
            rules::capital(bound.what),
            bound.accepted(system),
            match system {
                System::Imperial => "inches",
                System::Metric => "millimetres",
            }
        );
        let read = |text: &str| read_within(text, system, bound);
        if let Some(new) = entry_row(ui, word, &shown, Some(unit_word(system)), &accepted, read)
            && new != *value
        {
            *value = new;
            self.mark(word);
        }
    }

    /// A whole number.
    pub fn count(&mut self, ui: &mut Ui, word: &str, value: &mut u32, bound: CountBound) {
        let accepted = format!("A whole number {bound}.");
        let read = |text: &str| match text.trim().parse::<u32>() {
            Ok(n) if bound.holds(n as usize) => Ok(n),
            _ => Err(format!(
                "“{}” is not accepted: the {} is a whole number {bound}.",
                text.trim(),
                bound.what
            )),
        };
        if let Some(new) = entry_row(ui, word, &value.to_string(), None, &accepted, read)
            && new != *value
        {
            *value = new;
            self.mark(word);
        }
    }

    /// A line of text.
    pub fn text(&mut self, ui: &mut Ui, word: &str, value: &mut String, bound: TextBound) {
        let read = |text: &str| {
            let text = text.trim();
            let length = text.chars().count();
            if length < bound.least as usize {
                return Err(format!("Some text is needed: the old {} stays.", bound.what));
            }
            if length > bound.most as usize {
                return Err(format!(
                    "That is {length} letters; the {} may have {}.",
                    bound.what, bound.most
                ));
            }
            Ok(text.to_owned())
        };
        if let Some(new) = entry_row(ui, word, &value.clone(), None, "Enter keeps it.", read)
            && new != *value
        {
            *value = new;
            self.mark(word);
        }
    }

    /// One of a list of values.
    pub fn choice<T: PartialEq + Clone>(
        &mut self,
        ui: &mut Ui,
        word: &str,
        value: &mut T,
        choices: &[(T, &str)],
    ) {
        let shown = choices.iter().find(|(v, _)| v == value).map_or("other", |(_, w)| w);
        let mut new = None;
        wide_row(ui, word, |ui| {
            let width = ui.available_width();
            ComboBox::from_id_salt(word)
                .width(width)
                .truncate()
                .height(420.0)
                .selected_text(shown)
                .show_ui(ui, |ui| {
                    for (choice, text) in choices {
                        if ui.add(Button::selectable(choice == value, *text)).clicked() {
                            new = Some(choice.clone());
                        }
                    }
                })
                .response
                .accessible_name(word);
        });
        if let Some(new) = new
            && new != *value
        {
            *value = new;
            self.mark(word);
        }
    }

    /// One of a few values, side by side.
    pub fn among<T: PartialEq + Copy>(
        &mut self,
        ui: &mut Ui,
        word: &str,
        value: &mut T,
        choices: &[(T, &str)],
    ) {
        let mut new = None;
        wide_row(ui, word, |ui| {
            ui.spacing_mut().item_spacing.x = 4.0;
            ui.spacing_mut().button_padding.x = 6.0;
            for (choice, text) in choices {
                let chosen = choice == value;
                let button = Button::selectable(chosen, *text).frame_when_inactive(true);
                if ui.add(button).accessible_name(format!("{word}: {text}")).clicked() && !chosen {
                    new = Some(*choice);
                }
            }
        });
        if let Some(new) = new {
            *value = new;
            self.mark(word);
        }
    }

    /// A yes or no.
    pub fn check(&mut self, ui: &mut Ui, word: &str, value: &mut bool) {
        if ui.checkbox(value, word).changed() {
            self.mark(word);
        }
    }

    /// A fact that can't be edited here.
    pub fn fact(&self, ui: &mut Ui, word: &str, value: impl Into<WidgetText>) {
        row(ui, word, |ui| {
            ui.add(egui::Label::new(value).wrap());
        });
    }
}

/// A row whose value needs room: in a narrow pane the word stands above it.
fn wide_row(ui: &mut Ui, word: &str, value: impl FnOnce(&mut Ui)) {
    if ui.available_width() >= NARROW {
        return row(ui, word, value);
    }
    ui.add(egui::Label::new(RichText::new(word).weak()).truncate());
    ui.horizontal_wrapped(value);
}

/// A row with its word at the left.
pub fn row(ui: &mut Ui, word: &str, value: impl FnOnce(&mut Ui)) {
    ui.horizontal_top(|ui| {
        let height = ui.spacing().interact_size.y;
        let words = WORDS.min(ui.available_width() * 0.45);
        ui.allocate_ui_with_layout(
            vec2(words, height),
            Layout::left_to_right(Align::Center),
            |ui| {
                ui.set_min_size(Vec2::new(words, height));
                ui.add(egui::Label::new(RichText::new(word).weak()).truncate());
            },
        );
        ui.vertical(|ui| ui.horizontal_wrapped(value));
    });
}
