//! The values of a furnishing.

use egui::Ui;
use plan::bounds;
use plan::element::Furnishing;

use super::super::form::Form;
use super::boxes;

pub fn edit(ui: &mut Ui, form: &mut Form, furnishing: &mut Furnishing) {
    form.text(ui, "Name", &mut furnishing.name, bounds::FURNISHING_NAME);
    form.len(ui, "Width", &mut furnishing.width, bounds::FURNISHING_WIDTH);
    form.len(ui, "Depth", &mut furnishing.depth, bounds::FURNISHING_DEPTH);
    form.len(ui, "Height", &mut furnishing.height, bounds::FURNISHING_HEIGHT);
    form.check(ui, "Built in, can't be moved aside", &mut furnishing.fixed);
}

pub fn show(ui: &mut Ui, form: &mut Form, furnishing: &mut Furnishing) {
    edit(ui, form, furnishing);
    boxes::facing(ui, form, "Faces", &mut furnishing.facing);
    boxes::place(ui, form, &mut furnishing.at);
}
