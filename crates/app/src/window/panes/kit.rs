//! The kit: every tool in one column, in the order of the work, and the options of the one in hand.

use editor::{Stage, ToolKind};
use egui::{Button, Label, RichText, ScrollArea, Ui, vec2};

use super::super::act::Cx;
use super::super::commands::{Command, row_of};
use super::super::theme::SMALL;
use super::options;

/// The options keep at least this height when the window is low.
const OPTIONS: f32 = 170.0;

/// Shows the pane.
pub fn show(ui: &mut Ui, cx: &mut Cx<'_>) {
    let most = (ui.available_height() - OPTIONS).max(OPTIONS);
    let tools = ScrollArea::vertical().id_salt("tools").max_height(most);
    tools.auto_shrink([false, true]).show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = 1.0;
        for stage in Stage::ALL {
            ui.add_space(5.0);
            ui.label(RichText::new(stage.word()).size(SMALL).weak());
            for tool in ToolKind::ALL.into_iter().filter(|t| t.stage() == stage) {
                tool_row(ui, cx, tool);
            }
        }
    });
    ui.add_space(4.0);
    ui.separator();
    ui.add_space(2.0);
    let tool = cx.session.tool().word();
    ScrollArea::vertical().id_salt(("options", tool)).auto_shrink(false).show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = 5.0;
        options::show(ui, cx);
        ui.add_space(12.0);
    });
}

fn tool_row(ui: &mut Ui, cx: &mut Cx<'_>, tool: ToolKind) {
    let Some(row) = row_of(Command::Tool(tool)) else { return };
    let key = row.shortcut.map_or_else(String::new, |s| ui.ctx().format_shortcut(&s));
    let chosen = cx.session.tool() == tool;
    let button = Button::selectable(chosen, tool.word())
        .shortcut_text(RichText::new(key).size(SMALL))
        .min_size(vec2(ui.available_width(), 24.0));
    let response = ui.add(button).on_hover_text(row.help);
    if response.accessible_name(tool.word()).clicked() {
        cx.command(Command::Tool(tool));
    }
}

/// A heading inside a pane.
pub fn heading(ui: &mut Ui, text: &str) {
    ui.add(Label::new(RichText::new(text).heading()).wrap());
}
