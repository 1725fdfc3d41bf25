//! Rows for things that are placed by a point and face a way.

use egui::{Button, Ui};
use geometry::{Facing, Pt, Vec2};
use measure::Len;
use plan::bounds;

use super::super::form::{Form, row};

/// The place: two coordinates from the plan's origin.
pub fn place(ui: &mut Ui, form: &mut Form, at: &mut Pt) {
    let (mut x, mut y) = (Len::from_units(at.x), Len::from_units(at.y));
    form.len(ui, "Place x", &mut x, bounds::COORDINATE);
    form.len(ui, "Place y", &mut y, bounds::COORDINATE);
    *at = Pt::at(x, y);
}

/// The way it faces, with a button for a quarter turn.
pub fn facing(ui: &mut Ui, form: &mut Form, word: &str, facing: &mut Facing) {
    row(ui, word, |ui| {
        ui.label(way(facing.vec()));
        if ui.add(Button::new("Quarter turn")).clicked() {
            *facing = facing.left();
            form.touch(word);
        }
    });
}

/// The way in words: up is the top of the screen.
pub fn way(f: Vec2) -> &'static str {
    match (f.x.signum(), f.y.signum()) {
        (0, 1) => "up",
        (0, _) => "down",
        (1, 0) => "right",
        (_, 0) => "left",
        (1, 1) => "up right",
        (1, _) => "down right",
        (_, 1) => "up left",
        (_, _) => "down left",
    }
}
