//! The values of a window and its well.

use egui::{Label, RichText, Ui};
use measure::{Len, Precision};
use plan::bounds;
use plan::element::{ClearOpening, Well, Window, WindowOperation};

use super::super::form::Form;

/// A well that meets the usual sizes when it is added (common practice, no source).
const NEW_WELL: Well = Well {
    width: Len::inches(36),
    projection: Len::inches(36),
    depth: Len::inches(36),
    ladder: false,
    ladder_projection: Len::ZERO,
};

/// Usual windows: operation, frame width, frame height, sill in inches (common practice, no source).
const USUAL: &[(&str, WindowOperation, i32, i32, i32)] = &[
    ("small slider", WindowOperation::Slider, 32, 16, 70),
    ("hopper", WindowOperation::Hopper, 32, 19, 68),
    ("casement", WindowOperation::Casement, 30, 48, 40),
    ("tall slider", WindowOperation::Slider, 48, 48, 40),
    ("hung", WindowOperation::Hung, 36, 60, 30),
];

/// A choice of usual windows, for the tool.
pub fn usual(ui: &mut Ui, form: &mut Form, window: &mut Window) {
    let make = |&(name, operation, w, h, sill): &(&'static str, WindowOperation, i32, i32, i32)| {
        let usual = Window {
            operation,
            frame_width: Len::inches(w),
            frame_height: Len::inches(h),
            clear: ClearOpening::Estimated,
            sill: Len::inches(sill),
            ..window.clone()
        };
        (usual, name)
    };
    let choices: Vec<(Window, &str)> = USUAL.iter().map(make).collect();
    form.choice(ui, "Usual", window, &choices);
}

pub fn edit(ui: &mut Ui, form: &mut Form, window: &mut Window) {
    let operations = WindowOperation::ALL.map(|o| (o, o.word()));
    form.choice(ui, "Opens as", &mut window.operation, &operations);
    form.len(ui, "Frame width", &mut window.frame_width, bounds::FRAME_WIDTH);
    form.len(ui, "Frame height", &mut window.frame_height, bounds::FRAME_HEIGHT);
    net_clear(ui, form, window);
    arithmetic(ui, form, window);
    form.len(ui, "Sill", &mut window.sill, bounds::SILL);
    form.len(ui, "Outside grade", &mut window.grade, bounds::GRADE);
    ui.label(RichText::new("Sill and grade are measured from the slab.").weak());
    well(ui, form, &mut window.well);
}

/// The net clear opening: width by height, and the area.
fn arithmetic(ui: &mut Ui, form: &Form, window: &Window) {
    let clear = space::net_clear(window);
    let say = |l| form.system().inches(l, Precision::Floor);
    let sum = format!(
        "{} × {} = {}",
        say(clear.width),
        say(clear.height),
        form.system().area(clear.area())
    );
    form.fact(ui, "Clear opening", RichText::new(sum).strong());
    if clear.estimated {
        let text = "Estimated from the frame by how it opens; the maker's sheet decides.";
        ui.add(Label::new(RichText::new(text).weak()).wrap());
    }
}

/// Where the net clear opening comes from.
fn net_clear(ui: &mut Ui, form: &mut Form, window: &mut Window) {
    let mut from_sheet = window.clear != ClearOpening::Estimated;
    let before = from_sheet;
    form.among(ui, "Net clear", &mut from_sheet, &[(false, "estimated"), (true, "from the sheet")]);
    if from_sheet != before {
        window.clear = match from_sheet {
            // The estimate is what the sheet's figures are typed over.
            true => {
                let estimate = space::net_clear(window);
                ClearOpening::Sheet { width: estimate.width, height: estimate.height }
            }
            false => ClearOpening::Estimated,
        };
    }
    if let ClearOpening::Sheet { width, height } = &mut window.clear {
        form.len(ui, "Net width", width, bounds::CLEAR_WIDTH);
        form.len(ui, "Net height", height, bounds::CLEAR_HEIGHT);
    }
}

fn well(ui: &mut Ui, form: &mut Form, well: &mut Option<Well>) {
    let mut has = well.is_some();
    form.check(ui, "Window well", &mut has);
    match (has, well.is_some()) {
        (true, false) => *well = Some(NEW_WELL),
        (false, true) => *well = None,
        _ => {}
    }
    let Some(well) = well else { return };
    form.len(ui, "Well width", &mut well.width, bounds::WELL_WIDTH);
    form.len(ui, "Well projection", &mut well.projection, bounds::WELL_PROJECTION);
    form.len(ui, "Well depth", &mut well.depth, bounds::WELL_DEPTH);
    form.check(ui, "Ladder or steps", &mut well.ladder);
    if well.ladder {
        form.len(ui, "Ladder takes", &mut well.ladder_projection, bounds::LADDER_PROJECTION);
    }
}
