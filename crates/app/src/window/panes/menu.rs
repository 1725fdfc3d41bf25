//! The menu bar, with the facts that the checks rest on at its right.

use egui::{Button, MenuBar, RichText, Ui};
use plan::House;
use rules::MODEL_CODE;

use super::super::act::{Act, Cx};
use super::super::commands::{self, Command, Menu, Now};
use super::super::view::View;
use measure::System;

/// Shows the bar.
pub fn show(ui: &mut Ui, cx: &mut Cx<'_>, now: &Now<'_>, name: &str) {
    MenuBar::new().ui(ui, |ui| {
        for menu in Menu::BAR {
            ui.menu_button(menu.word(), |ui| {
                ui.set_min_width(230.0);
                for row in commands::of_menu(menu) {
                    if row.gap {
                        ui.separator();
                    }
                    item(ui, cx, now, row);
                }
            });
        }
        ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
            facts(ui, cx);
            ui.add_space(8.0);
            let mark = if now.unsaved { " · not saved" } else { "" };
            let title = egui::Label::new(RichText::new(format!("{name}{mark}")).weak());
            ui.add(title.truncate());
        });
    });
}

/// One row of a menu.
pub fn item(ui: &mut Ui, cx: &mut Cx<'_>, now: &Now<'_>, row: &commands::Row) {
    let text = row.command.text(now);
    // A tick tells the state by its form; the rows without one keep its room.
    let ticked = match state(row.command, cx.view, cx.system()) {
        Some(true) => format!("✓ {text}"),
        Some(false) => format!("    {text}"),
        None => text,
    };
    let mut button = Button::new(ticked).wrap_mode(egui::TextWrapMode::Extend);
    if let Some(shortcut) = &row.shortcut {
        button = button.shortcut_text(ui.ctx().format_shortcut(shortcut));
    }
    let enabled = row.command.enabled(now);
    if ui.add_enabled(enabled, button).on_hover_text(row.help).clicked() {
        cx.command(row.command);
        ui.close();
    }
}

/// Whether a command that switches something is on; `None` for the others.
fn state(command: Command, view: &View, system: System) -> Option<bool> {
    match command {
        Command::Toggle(toggle) => Some(view.shows(toggle)),
        Command::Look(look) => Some(view.look == look),
        Command::Imperial => Some(system == System::Imperial),
        Command::Metric => Some(system == System::Metric),
        _ => None,
    }
}

/// What the checks rest on; a click opens the site facts.
fn facts(ui: &mut Ui, cx: &mut Cx<'_>) {
    let site = &cx.checked.facts.plan.site;
    let house = match site.house {
        House::New => "new house",
        House::Existing => "existing house",
    };
    let place = match rules::place_name(site).as_str() {
        MODEL_CODE => String::new(),
        place => format!(", {place}"),
    };
    let text = format!("{} code{place} · {house}", site.edition.year());
    let button =
        ui.button(text).on_hover_text("Site facts: edition, place, house, ceiling, floor.");
    if button.clicked() {
        cx.push(Act::Do(Command::SiteFacts));
    }
}
