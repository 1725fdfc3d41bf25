//! The status line: what the tool expects, what was caught, where the pointer is, and the caution.

use egui::{Align, Label, Layout, RichText, Ui, vec2};
use measure::{Len, Precision, System};

use super::super::act::Cx;
use super::super::commands::Command;
use super::super::theme::SMALL;

/// Widths of the parts at the right, so that nothing jumps while figures change.
const CAUTION: f32 = 296.0;
const UNITS: f32 = 118.0;
const POINTER: f32 = 304.0;
/// A line wider than this has room for every word of what was caught.
const WIDE: f32 = 1350.0;

/// Shows the line; `notice` is what the last command has to say.
pub fn show(ui: &mut Ui, cx: &mut Cx<'_>, notice: Option<&str>) {
    ui.horizontal(|ui| {
        let height = ui.spacing().interact_size.y;
        let pointer = if ui.available_width() > WIDE { POINTER + 40.0 } else { POINTER };
        let room = (ui.available_width() - CAUTION - UNITS - pointer - 30.0).max(120.0);
        part(ui, room, height, |ui| expects(ui, cx, notice));
        part(ui, pointer, height, |ui| {
            let system = cx.system();
            let caught = cx.session.status().caught.as_ref();
            let caught =
                caught.map_or_else(String::new, |snap| format!("   caught: {}", snap.word));
            let text = cx.view.pointer.map_or_else(String::new, |p| {
                let say = |v: i32| system.len(Len::from_units(v), Precision::Tape);
                format!("x {}   y {}{caught}", say(p.x), say(p.y))
            });
            ui.add(Label::new(RichText::new(text).weak()).truncate());
        });
        part(ui, UNITS, height, |ui| {
            let (word, other) = match cx.system() {
                System::Imperial => ("feet and inches", Command::Metric),
                System::Metric => ("millimetres", Command::Imperial),
            };
            let units =
                ui.button(word).on_hover_text("Switches between feet-inches and millimetres.");
            if units.accessible_name(format!("Units: {word}")).clicked() {
                cx.command(other);
            }
        });
        part(ui, CAUTION, height, |ui| {
            let text = "Planning aid: your building department decides";
            let label = ui.add(
                Label::new(RichText::new(text).weak().size(SMALL))
                    .truncate()
                    .sense(egui::Sense::click()),
            );
            if label.on_hover_text("Cautions").clicked() {
                cx.command(Command::Cautions);
            }
        });
    });
}

fn part(ui: &mut Ui, width: f32, height: f32, add: impl FnOnce(&mut Ui)) {
    ui.allocate_ui_with_layout(vec2(width, height), Layout::left_to_right(Align::Center), |ui| {
        ui.set_min_size(vec2(width, height));
        add(ui);
    });
}

fn expects(ui: &mut Ui, cx: &Cx<'_>, notice: Option<&str>) {
    let status = cx.session.status();
    if let Some(why) = status.refused.as_deref().or(notice) {
        let text = RichText::new(why).color(ui.visuals().error_fg_color);
        ui.add(Label::new(text).truncate());
        return;
    }
    let text = status.expects.as_str();
    ui.add(Label::new(text).truncate());
}
