//! The values of a section line.

use egui::{Button, RichText, Ui};
use plan::bounds;
use plan::element::SectionLine;

use super::super::form::{Form, row};
use super::boxes;

pub fn show(ui: &mut Ui, form: &mut Form, section: &mut SectionLine) {
    let before = section.line().len();
    let mut length = before;
    form.len(ui, "Length", &mut length, bounds::SECTION_LENGTH);
    if length != before {
        section.b = section.line().point_at(length);
    }
    row(ui, "Looks", |ui| {
        ui.label(boxes::way(section.looks()));
        if ui.add(Button::new("Other way")).clicked() {
            *section = section.turned();
            form.touch("direction");
        }
    });
    ui.label(RichText::new("It is drawn on a sheet of the permit set.").weak());
}
