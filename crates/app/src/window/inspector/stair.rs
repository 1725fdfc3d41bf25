//! The values of a stair.

use egui::Ui;
use measure::Precision;
use plan::bounds;
use plan::element::Stair;

use super::super::form::Form;
use super::boxes;

pub fn show(ui: &mut Ui, form: &mut Form, stair: &mut Stair) {
    form.len(ui, "Width", &mut stair.width, bounds::STAIR_WIDTH);
    form.count(ui, "Risers", &mut stair.risers, bounds::RISERS);
    form.len(ui, "Rise", &mut stair.rise, bounds::RISE);
    form.len(ui, "Tread run", &mut stair.run, bounds::RUN);
    form.len(ui, "Headroom", &mut stair.headroom, bounds::HEADROOM);
    boxes::facing(ui, form, "Goes up", &mut stair.up);
    boxes::place(ui, form, &mut stair.foot);
    let system = form.system();
    form.fact(ui, "Length", system.len(stair.length(), Precision::Tape));
    let units = i64::from(stair.rise.units()) * i64::from(stair.risers);
    if let Ok(units) = i32::try_from(units) {
        let height = measure::Len::from_units(units);
        form.fact(ui, "Total rise", system.len(height, Precision::Tape));
    }
}
