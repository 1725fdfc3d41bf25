//! Foundation walls, partitions and furring.

use egui::{RichText, Ui};
use measure::Len;
use plan::element::{End, Furring, Justify, Partition, ShellWall};
use plan::{Body, Element, bounds, ops};

use super::super::act::Cx;
use super::super::form::Form;
use super::super::panes::layers::{self, Of};

pub fn shell(ui: &mut Ui, form: &mut Form, wall: &mut ShellWall) {
    form.len(ui, "Thickness", &mut wall.thickness, bounds::WALL_THICKNESS);
    form.len(ui, "Height", &mut wall.height, bounds::WALL_HEIGHT);
}

pub fn partition(ui: &mut Ui, form: &mut Form, wall: &mut Partition) {
    let lines = [
        (Justify::Centre, "middle"),
        (Justify::LeftFace, "left face"),
        (Justify::RightFace, "right face"),
    ];
    form.choice(ui, "Drawn by", &mut wall.justify, &lines);
    layers::edit(ui, form, &mut wall.layers, Of::Partition);
    form.len(ui, "Stud spacing", &mut wall.spacing, bounds::STUD_SPACING);
}

pub fn furring(ui: &mut Ui, form: &mut Form, furring: &mut Furring) {
    form.len(ui, "From", &mut furring.from, bounds::PLACE_ON_WALL);
    form.len(ui, "To", &mut furring.to, bounds::PLACE_ON_WALL);
    ui.label(RichText::new("Along the wall, from its start.").weak());
    layers::edit(ui, form, &mut furring.layers, Of::Furring);
    form.len(ui, "Stud spacing", &mut furring.spacing, bounds::STUD_SPACING);
}

/// The length of a wall's line: its start stays, its finish moves.
pub fn length(ui: &mut Ui, cx: &mut Cx<'_>, wall: &Element) {
    let line = match &wall.body {
        Body::Shell(w) => w.line(),
        Body::Partition(w) => w.line(),
        _ => return,
    };
    let before = line.len();
    let mut length: Len = before;
    let mut form = Form::new(cx.system());
    form.len(ui, "Length", &mut length, bounds::WALL_LENGTH);
    if form.changed().is_some() && length != before {
        let plan = std::sync::Arc::clone(cx.session.plan());
        match ops::set_wall_length(&plan, wall.id, length, End::Start) {
            Ok(edit) => cx.edit(format!("Change length of {}", wall.name()), edit),
            Err(why) => cx.push(super::super::act::Act::Notice(why.to_string())),
        }
    }
}
