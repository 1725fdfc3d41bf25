//! The options of the tool in hand: what the next click or drag will place.

use editor::{ToolKind, ToolOptions};
use egui::{Label, RichText, Ui};
use geometry::{Facing, Pt};
use measure::{Len, System};
use plan::bounds;
use plan::element::{Furnishing, OverheadKind, RoomUse, ServiceKind, ServicePoint};

use super::super::act::Cx;
use super::super::form::Form;
use super::super::inspector::{column, door, state, window};
use super::kit::heading;
use super::layers::{self, Of};

/// Shows the options of the tool in hand.
pub fn show(ui: &mut Ui, cx: &mut Cx<'_>) {
    let tool = cx.session.tool();
    heading(ui, tool.word());
    let system = cx.system();
    let mut form = Form::new(system);
    let options = cx.session.options_mut();
    ui.push_id(tool.word(), |ui| match tool {
        ToolKind::Select => note(ui, "Click an element to change it here at the right, drag it, or click a figure on its tape and type."),
        ToolKind::Tape => note(ui, "Press at one point and let go at another."),
        ToolKind::Shell => {
            form.len(ui, "Thickness", &mut options.shell_thickness, bounds::WALL_THICKNESS);
            form.len(ui, "Height", &mut options.shell_height, bounds::WALL_HEIGHT);
            note(ui, "Drawn by the inner face, the one the tape touches, with the room on the left.");
        }
        ToolKind::Partition => {
            state(ui, &mut form, &mut options.partition_state);
            layers::edit(ui, &mut form, &mut options.partition_layers, Of::Partition);
            form.len(ui, "Stud spacing", &mut options.stud_spacing, bounds::STUD_SPACING);
        }
        ToolKind::Furring => {
            layers::edit(ui, &mut form, &mut options.furring_layers, Of::Furring);
            form.len(ui, "Stud spacing", &mut options.stud_spacing, bounds::STUD_SPACING);
        }
        ToolKind::Door => door::edit(ui, &mut form, &mut options.door),
        ToolKind::Window => {
            window::usual(ui, &mut form, &mut options.window);
            window::edit(ui, &mut form, &mut options.window);
        }
        ToolKind::Column => column::edit(ui, &mut form, &mut options.column),
        ToolKind::Stair => {
            form.len(ui, "Width", &mut options.stair_width, bounds::STAIR_WIDTH);
            form.count(ui, "Risers", &mut options.stair_risers, bounds::RISERS);
            form.len(ui, "Rise", &mut options.stair_rise, bounds::RISE);
            form.len(ui, "Tread run", &mut options.stair_run, bounds::RUN);
            form.len(ui, "Headroom", &mut options.stair_headroom, bounds::HEADROOM);
        }
        ToolKind::Overhead => {
            let kinds = OverheadKind::ALL.map(|k| (k, k.word()));
            form.choice(ui, "Kind", &mut options.overhead, &kinds);
            form.len(ui, "Width", &mut options.overhead_width, bounds::OVERHEAD_WIDTH);
            form.len(ui, "Underside", &mut options.overhead_underside, bounds::UNDERSIDE);
            note(ui, "The underside is measured from the slab.");
        }
        ToolKind::Service => service(ui, &mut options.service, system),
        ToolKind::Furnishing => furnishing(ui, &mut form, &mut options.furnishing),
        ToolKind::RoomTag => {
            let uses = RoomUse::ALL.map(|u| (u, u.word()));
            form.choice(ui, "Use", &mut options.room_use, &uses);
            form.text(ui, "Name", &mut options.room_name, bounds::ROOM_NAME);
            note(ui, "Without a name the room is called by its use.");
        }
        ToolKind::Note => form.text(ui, "Text", &mut options.note, bounds::NOTE),
        ToolKind::Section => note(
            ui,
            "The permit set gets a section of the building for each such line. It is looked at with the start of the line at the left hand.",
        ),
    });
    if !matches!(tool, ToolKind::Select) {
        ui.add_space(6.0);
        catching(ui, &mut form, options);
    }
}

/// A hint in soft ink.
fn note(ui: &mut Ui, text: &str) {
    ui.add(Label::new(RichText::new(text).weak()).wrap());
}

/// What points are caught by.
fn catching(ui: &mut Ui, form: &mut Form, options: &mut ToolOptions) {
    form.check(ui, "Catch faces, ends and directions", &mut options.snap);
    let grids: &[(Len, &str)] = match form.system() {
        System::Imperial => &[
            (Len::ZERO, "none"),
            (Len::sixty_fourths(16), "1/4 in"),
            (Len::inches(1), "1 in"),
            (Len::inches(6), "6 in"),
            (Len::inches(12), "1 ft"),
        ],
        System::Metric => &[
            (Len::ZERO, "none"),
            (Len::mm(5), "5 mm"),
            (Len::mm(10), "10 mm"),
            (Len::mm(50), "50 mm"),
            (Len::mm(100), "100 mm"),
        ],
    };
    form.choice(ui, "Grid", &mut options.grid, grids);
}

/// The kinds of service points, by trade.
const SERVICES: &[(&str, &[ServiceKind])] = &[
    (
        "Water",
        &[
            ServiceKind::MainWaterValve,
            ServiceKind::WaterMeter,
            ServiceKind::FixtureValve,
            ServiceKind::HoseBibValve,
            ServiceKind::WaterHeater,
            ServiceKind::PressureReducer,
            ServiceKind::BackflowPreventer,
        ],
    ),
    (
        "Drains",
        &[
            ServiceKind::FloorDrain,
            ServiceKind::Sump,
            ServiceKind::Ejector,
            ServiceKind::Cleanout,
            ServiceKind::BackwaterValve,
            ServiceKind::AirAdmittanceValve,
            ServiceKind::Standpipe,
        ],
    ),
    ("Gas", &[ServiceKind::GasValve, ServiceKind::GasMeter]),
    ("Electric", &[ServiceKind::Panel, ServiceKind::Disconnect, ServiceKind::JunctionBox]),
    (
        "Heat and air",
        &[
            ServiceKind::Furnace,
            ServiceKind::AirFilter,
            ServiceKind::Damper,
            ServiceKind::SupplyRegister,
            ServiceKind::ReturnGrille,
            ServiceKind::ClothesDryer,
            ServiceKind::RadonPipe,
        ],
    ),
    (
        "Outlets and alarms",
        &[
            ServiceKind::Receptacle,
            ServiceKind::Switch,
            ServiceKind::Light,
            ServiceKind::ExhaustFan,
            ServiceKind::SmokeAlarm,
            ServiceKind::CoAlarm,
        ],
    ),
];

fn service(ui: &mut Ui, kind: &mut ServiceKind, system: System) {
    ui.spacing_mut().item_spacing.y = 1.0;
    for (trade, kinds) in SERVICES {
        ui.add_space(4.0);
        ui.label(RichText::new(*trade).small().weak());
        for choice in *kinds {
            let button = egui::Button::selectable(kind == choice, choice.word())
                .min_size(egui::vec2(ui.available_width(), 24.0));
            if ui.add(button).clicked() {
                *kind = *choice;
            }
        }
    }
    ui.add_space(4.0);
    let usual = ServicePoint::usual(*kind, Pt::default(), Facing::SOUTH);
    let say = |l: Len| system.inches(l, measure::Precision::Tape);
    note(
        ui,
        &format!(
            "Placed with its usual size, {} × {} × {} high. Change it at the right once it stands.",
            say(usual.width),
            say(usual.depth),
            say(usual.height)
        ),
    );
}

/// Usual furnishings: name, width, depth, height in inches, fixed (common practice, no source).
const FURNISHINGS: &[(&str, i32, i32, i32, bool)] = &[
    ("desk", 60, 30, 29, false),
    ("office chair", 26, 26, 40, false),
    ("bed, twin", 39, 76, 24, false),
    ("bed, full", 54, 76, 24, false),
    ("bed, queen", 60, 81, 24, false),
    ("wardrobe", 48, 24, 78, false),
    ("shelf", 36, 12, 72, false),
    ("sofa", 84, 36, 34, false),
    ("table", 60, 36, 29, false),
    ("workbench", 72, 28, 36, false),
    ("storage rack", 48, 18, 72, false),
    ("chest freezer", 44, 28, 34, false),
    ("washer", 27, 32, 39, false),
    ("dryer", 27, 32, 39, false),
    ("laundry sink", 24, 22, 34, true),
    ("toilet", 20, 28, 30, true),
    ("wash basin", 24, 20, 33, true),
    ("shower", 36, 36, 80, true),
    ("bath tub", 60, 30, 20, true),
    ("cabinet", 36, 24, 36, true),
];

fn furnishing(ui: &mut Ui, form: &mut Form, furnishing: &mut Furnishing) {
    let make = |&(name, w, d, h, fixed): &(&str, i32, i32, i32, bool)| Furnishing {
        name: name.to_owned(),
        width: Len::inches(w),
        depth: Len::inches(d),
        height: Len::inches(h),
        fixed,
        ..furnishing.clone()
    };
    let choices: Vec<(Furnishing, &str)> = FURNISHINGS.iter().map(|f| (make(f), f.0)).collect();
    form.choice(ui, "Usual", furnishing, &choices);
    super::super::inspector::furnishing::edit(ui, form, furnishing);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_of_service_point_is_offered_once() {
        let mut offered: Vec<ServiceKind> =
            SERVICES.iter().flat_map(|(_, kinds)| kinds.iter().copied()).collect();
        offered.sort_unstable();
        let mut all = ServiceKind::ALL.to_vec();
        all.sort_unstable();
        assert_eq!(offered, all);
    }

    #[test]
    fn usual_furnishings_are_in_range() {
        for (name, w, d, h, _) in FURNISHINGS {
            assert!(bounds::FURNISHING_WIDTH.holds(Len::inches(*w)), "{name}");
            assert!(bounds::FURNISHING_DEPTH.holds(Len::inches(*d)), "{name}");
            assert!(bounds::FURNISHING_HEIGHT.holds(Len::inches(*h)), "{name}");
        }
    }
}
