//! Help: keys, cautions, about.

use egui::{Grid, Label, RichText, ScrollArea, Ui};

use super::super::commands::{self, Menu};
use super::{Answer, foot, heading};

/// What the mouse and the plain keys do on the plan.
const GESTURES: &[(&str, &str)] = &[
    ("Click, drag", "Draws or places with the tool that is out; picks and moves with Select."),
    ("Shift + click", "Adds to the selection, or takes from it."),
    ("Drag on empty floor", "Selects everything inside the box."),
    ("Digits, then Enter", "Types the length of what is being drawn or moved."),
    ("Click a figure on a tape", "Types that distance; what is selected moves until it is true."),
    ("Arrow keys", "Nudge the selection; finer with Shift."),
    ("Ctrl while drawing", "Catches nothing: no faces, ends or directions."),
    ("Esc", "Leaves what was begun; nothing of it stays."),
    ("Middle drag, Space + drag", "Moves the picture."),
    (
        "Wheel, two fingers",
        "Moves the picture; with Ctrl it zooms about the pointer. Pinching zooms too.",
    ),
];

/// Every command with its key.
pub fn keys(ui: &mut Ui) -> Option<Answer> {
    heading(ui, "Keys and mouse");
    let height = (ui.ctx().content_rect().height() - 200.0).clamp(120.0, 620.0);
    // As high as the window lets it be: the list is long.
    ScrollArea::vertical().max_height(height).min_scrolled_height(height).show(ui, |ui| {
        ui.set_min_width(ui.available_width());
        section(
            ui,
            "On the plan",
            GESTURES.iter().map(|(k, t)| ((*k).to_owned(), (*t).to_owned())),
        );
        for menu in Menu::BAR.into_iter().chain([Menu::Kit]) {
            let ctx = ui.ctx().clone();
            let rows = commands::of_menu(menu).map(|row| {
                let key = row.shortcut.map_or_else(String::new, |s| ctx.format_shortcut(&s));
                (key, format!("{}: {}", row.text.trim_end_matches('…'), row.help))
            });
            section(ui, menu.word(), rows);
        }
    });
    foot(ui, &["Close"]).map(|_| Answer::Leave)
}

fn section(ui: &mut Ui, title: &str, rows: impl Iterator<Item = (String, String)>) {
    ui.add_space(4.0);
    ui.label(RichText::new(title).strong());
    Grid::new(title).num_columns(2).spacing([12.0, 3.0]).min_col_width(176.0).show(ui, |ui| {
        for (key, text) in rows {
            ui.label(RichText::new(key).weak());
            ui.add(Label::new(text).wrap());
            ui.end_row();
        }
    });
}

/// What the checks can't know, and who decides.
const CAUTIONS: &[&str] = &[
    "This is a planning aid. It checks a drawing against figures of the model code; it can't see your basement. Your building department decides, and it may have amended every figure.",
    "A finding marked “verify” rests on something that was assumed, or on a text that leaves the answer to the official. No finding is no permit.",
    "The way each figure was found is shown with it: seen in code text, seen second-hand, from memory, derived, or common practice.",
    "Beams, columns and anything that carries the house: a licensed engineer or builder.",
    "Gas piping and appliances, electrical service equipment and panels: licensed people only.",
    "Radon: measure first; a mitigation system is work for a certified person.",
    "Old floor tile, pipe covering and paint may hold asbestos or lead: have them tested before they are touched.",
    "Water in the basement is cured before it is finished over.",
    "Every sleeping room needs a way out that a person can open and a fire fighter can enter, and alarms. Do not sleep in a room that has none.",
];

pub fn cautions(ui: &mut Ui) -> Option<Answer> {
    heading(ui, "Cautions");
    let height = ui.ctx().content_rect().height() - 200.0;
    ScrollArea::vertical().max_height(height.max(120.0)).show(ui, |ui| {
        for text in CAUTIONS {
            ui.add(Label::new(*text).wrap());
        }
    });
    foot(ui, &["Close"]).map(|_| Answer::Leave)
}

pub fn about(ui: &mut Ui) -> Option<Answer> {
    heading(ui, "Cellarwright");
    ui.label(format!("Version {}", env!("CARGO_PKG_VERSION")));
    ui.add(Label::new("Basement plans drawn with a tape and checked while they are drawn. A planning aid: your building department decides.").wrap());
    ui.label(format!("Licence: {}.", env!("CARGO_PKG_LICENSE")));
    ui.add(Label::new("The lettering is DejaVu Sans, under its own free licence, which comes with the program.").wrap());
    foot(ui, &["Close"]).map(|_| Answer::Leave)
}
