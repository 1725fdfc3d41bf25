//! One sheet, large.

use std::sync::Arc;

use egui::{RichText, ScrollArea, Sense, Ui, vec2};
use sheets::Set;

use super::super::paint;
use super::Answer;

/// The sheet that is looked at.
#[derive(Clone, Debug)]
pub struct SheetPage {
    pub set: Arc<Set>,
    pub at: usize,
    /// Screen points for a point of the sheet; `None` fits the sheet into the window.
    pub zoom: Option<f32>,
}

pub fn show(ui: &mut Ui, page: &mut SheetPage) -> Option<Answer> {
    let set = Arc::clone(&page.set);
    let last = set.sheets.len().saturating_sub(1);
    let sheet = set.sheets.get(page.at.min(last))?;
    let mut answer = None;
    ui.horizontal(|ui| {
        if ui.add_enabled(page.at > 0, egui::Button::new("Previous")).clicked() {
            page.at -= 1;
        }
        if ui.add_enabled(page.at < last, egui::Button::new("Next")).clicked() {
            page.at += 1;
        }
        for (word, zoom) in
            [("Whole sheet", None), ("Actual size", Some(1.0)), ("Twice", Some(2.0))]
        {
            if ui.add(egui::Button::selectable(page.zoom == zoom, word)).clicked() {
                page.zoom = zoom;
            }
        }
        ui.label(RichText::new(format!("{}  {}", sheet.number, sheet.title)).strong());
        ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
            if ui.button("Close").clicked() {
                answer = Some(Answer::Leave);
            }
        });
    });
    let room = vec2(ui.available_width(), ui.ctx().content_rect().height() - 130.0);
    let fit = (room.x / sheet.size.0).min(room.y / sheet.size.1);
    let scale = page.zoom.unwrap_or(fit);
    ScrollArea::both().max_height(room.y).min_scrolled_height(room.y).auto_shrink(false).show(
        ui,
        |ui| {
            let size = vec2(sheet.size.0 * scale, sheet.size.1 * scale);
            let (rect, _) = ui.allocate_exact_size(size.max(vec2(room.x, size.y)), Sense::hover());
            let sheet_rect = egui::Rect::from_center_size(rect.center(), size);
            paint::sheet(ui.painter(), sheet, sheet_rect);
        },
    );
    answer
}
