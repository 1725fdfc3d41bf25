//! The values of a column.

use egui::Ui;
use measure::Len;
use plan::bounds;
use plan::element::{Column, ColumnShape};

use super::super::form::Form;
use super::boxes;

pub fn edit(ui: &mut Ui, form: &mut Form, shape: &mut ColumnShape) {
    let mut round = matches!(shape, ColumnShape::Round { .. });
    let before = round;
    form.among(ui, "Section", &mut round, &[(true, "round"), (false, "square")]);
    if round != before {
        *shape = match *shape {
            ColumnShape::Round { diameter: d } => ColumnShape::Square { width: d, depth: d },
            ColumnShape::Square { width, .. } => ColumnShape::Round { diameter: width },
        };
    }
    match shape {
        ColumnShape::Round { diameter } => {
            form.len(ui, "Diameter", diameter, bounds::COLUMN_DIAMETER);
        }
        ColumnShape::Square { width, depth } => {
            form.len(ui, "Width", width, bounds::COLUMN_WIDTH);
            form.len(ui, "Depth", depth, bounds::COLUMN_DEPTH);
        }
    }
}

pub fn show(ui: &mut Ui, form: &mut Form, column: &mut Column) {
    edit(ui, form, &mut column.shape);
    boxes::place(ui, form, &mut column.at);
    if matches!(column.shape, ColumnShape::Square { width, depth } if width != depth || width > Len::ZERO)
    {
        boxes::facing(ui, form, "Faces", &mut column.facing);
    }
}
