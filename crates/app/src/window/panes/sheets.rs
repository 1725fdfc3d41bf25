//! The permit set: its sheets, a small picture of the picked one, and what a permit desk will find.

use std::sync::Arc;

use drawing::Tone;
use egui::{Button, CollapsingHeader, ComboBox, Label, RichText, Sense, Ui, WidgetInfo, vec2};
use sheets::{Answer, Paper, Set, Sheet};

use super::super::act::{Act, Cx};
use super::super::commands::Command;
use super::super::dialogs::{Dialog, SheetPage};
use super::super::paint;
use super::super::theme::SMALL;

/// Shows the pane.
pub fn show(ui: &mut Ui, cx: &mut Cx<'_>, set: Option<&Arc<Set>>) {
    choices(ui, cx);
    together(ui, cx, set);
    let Some(set) = set else {
        ui.label("Drawing the sheets…");
        return;
    };
    let picked = cx.view.sheet.min(set.sheets.len().saturating_sub(1));
    if let Some(sheet) = set.sheets.get(picked)
        && small(ui, sheet).clicked()
    {
        let page = SheetPage { set: Arc::clone(set), at: picked, zoom: None };
        cx.push(Act::Show(Dialog::Sheet(Box::new(page))));
    }
    ui.horizontal(|ui| {
        let help = "Writes the sheets as PDF, SVG or pictures.";
        if ui.button("Export…").on_hover_text(help).clicked() {
            cx.command(Command::ExportSheets);
        }
        let help = "Address, owner, author, date and north, for the title block.";
        if ui.button("Title block…").on_hover_text(help).clicked() {
            cx.command(Command::TitleBlock);
        }
    });
    for (i, sheet) in set.sheets.iter().enumerate() {
        let scale = sheet.scale.map_or(String::new(), |s| format!(", {s}"));
        let text = format!("{}  {}{scale}", sheet.number, sheet.title);
        if ui.add(Button::selectable(i == picked, text).truncate()).clicked() {
            cx.view.sheet = i;
        }
    }
    for out in &set.left_out {
        let text = format!("No sheet \"{}\": {}.", out.title, out.why);
        ui.add(Label::new(RichText::new(text).weak().size(SMALL)).wrap());
    }
    ui.separator();
    desk(ui, cx, set);
}

fn choices(ui: &mut Ui, cx: &mut Cx<'_>) {
    ui.horizontal(|ui| {
        ui.label("Paper");
        let paper = ComboBox::from_id_salt("paper").selected_text(cx.view.wanted.paper.name());
        let shown = paper.width(ui.available_width() - 8.0).show_ui(ui, |ui| {
            for paper in Paper::ALL {
                ui.selectable_value(&mut cx.view.wanted.paper, paper, paper.name());
            }
        });
        named(&shown.response, "Paper", cx.view.wanted.paper.name());
    });
    ui.horizontal(|ui| {
        ui.label("List");
        let all = "whatever any desk asks";
        let chosen = cx.view.wanted.list.as_deref().and_then(sheets::department);
        let text = chosen.map_or(all, |d| &d.name);
        let list = ComboBox::from_id_salt("list").selected_text(text).truncate().height(420.0);
        let shown = list.width(ui.available_width() - 8.0).show_ui(ui, |ui| {
            let value = &mut cx.view.wanted.list;
            ui.selectable_value(value, None, all);
            for d in sheets::departments() {
                let code = Some(d.code.clone());
                ui.selectable_value(value, code, &d.name).on_hover_text(&d.publisher);
            }
        });
        named(&shown.response, "List", text);
    });
}

/// What is drawn together.
fn together(ui: &mut Ui, cx: &mut Cx<'_>, set: Option<&Arc<Set>>) {
    let wanted = &mut cx.view.wanted;
    CollapsingHeader::new("Together or apart").show_unindented(ui, |ui| {
        ui.checkbox(&mut wanted.join.plans, "Existing and proposed plan on one sheet");
        ui.checkbox(&mut wanted.join.trades, "Electrical, mechanical, plumbing in one plan");
        ui.checkbox(&mut wanted.one_sheet, "Everything on one sheet");
    });
    if wanted.one_sheet && set.is_some_and(|s| s.crowded) {
        ui.add(Label::new(RichText::new(sheets::CROWDED).weak()).wrap());
    }
}

fn named(response: &egui::Response, word: &str, value: &str) {
    let text = format!("{word}: {value}");
    response.widget_info(|| WidgetInfo::labeled(egui::Role::ComboBox, true, &text));
}

/// The picked sheet as wide as the pane.
fn small(ui: &mut Ui, sheet: &Sheet) -> egui::Response {
    let width = ui.available_width();
    let scale = width / sheet.size.0;
    let (rect, response) =
        ui.allocate_exact_size(vec2(width, sheet.size.1 * scale), Sense::click());
    if ui.is_rect_visible(rect) {
        paint::sheet(&ui.painter_at(rect), sheet, rect);
    }
    let name = format!("Sheet {}, {}", sheet.number, sheet.title);
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
    response.on_hover_cursor(egui::CursorIcon::ZoomIn).on_hover_text("Click to look at it large.")
}

/// What a desk asks, what is missing first.
fn desk(ui: &mut Ui, cx: &mut Cx<'_>, set: &Set) {
    let desk = &set.desk;
    let gaps = desk.gaps();
    let head = match gaps {
        0 => "Nothing is left to do on the drawing".to_owned(),
        1 => "1 thing is left to do".to_owned(),
        n => format!("{n} things are left to do"),
    };
    ui.label(RichText::new(head).strong());
    if let Some(d) = desk.department {
        let sets = d.sets.map_or(String::new(), |n| format!(" {n} identical sets."));
        let text = format!("{}: {}.{sets} Lists change: ask the department.", d.publisher, d.title);
        ui.add(Label::new(RichText::new(text).weak().size(SMALL)).wrap());
        for note in &d.notes {
            ui.add(Label::new(RichText::new(note).weak().size(SMALL)).wrap());
        }
    }
    let mut order: Vec<_> = desk.answers.iter().collect();
    order.sort_by_key(|a| rank(&a.answer));
    for answered in order {
        let tone = match answered.answer {
            Answer::Missing { .. } | Answer::Open { .. } => Tone::Verify,
            Answer::Shown(_) | Answer::Held => Tone::Advice,
            _ => Tone::SoftInk,
        };
        ui.add_space(3.0);
        ui.add(Label::new(answered.words).wrap());
        let text = RichText::new(answered.answer.say()).size(SMALL);
        let text = text.color(cx.view.look.colour(tone));
        let label = ui.add(Label::new(text).wrap().sense(Sense::click()));
        if let Answer::Shown(number) = &answered.answer
            && label.on_hover_text("Click to see the sheet.").clicked()
            && let Some(i) = set.sheets.iter().position(|s| s.number == *number)
        {
            cx.view.sheet = i;
        }
    }
}

fn rank(answer: &Answer) -> u8 {
    match answer {
        Answer::Missing { .. } => 0,
        Answer::Open { .. } => 1,
        Answer::Elsewhere(_) => 2,
        Answer::Shown(_) => 3,
        Answer::Held => 4,
        Answer::NothingSuch(_) => 5,
        Answer::Reminder => 6,
    }
}
