//! The values of a door.

use egui::Ui;
use plan::bounds;
use plan::element::{Door, DoorOperation, End, Side};

use super::super::form::Form;

pub fn edit(ui: &mut Ui, form: &mut Form, door: &mut Door) {
    let kinds = DoorOperation::ALL.map(|o| (o, o.word()));
    form.choice(ui, "Kind", &mut door.operation, &kinds);
    let leaf = door.operation != DoorOperation::Cased;
    let (width, height) = if leaf { ("Leaf width", "Leaf height") } else { ("Width", "Height") };
    form.len(ui, width, &mut door.leaf_width, bounds::LEAF_WIDTH);
    form.len(ui, height, &mut door.leaf_height, bounds::LEAF_HEIGHT);
    if !leaf {
        return;
    }
    let hinged = matches!(door.operation, DoorOperation::Hinged | DoorOperation::Bifold);
    let jamb = if hinged { "Hinge at" } else { "Slides to" };
    let ends = [(End::Start, "start"), (End::Finish, "finish")];
    form.among(ui, jamb, &mut door.hinge, &ends);
    if hinged {
        let sides = [(Side::Left, "left"), (Side::Right, "right")];
        form.among(ui, "Swings", &mut door.swing, &sides);
    }
}
