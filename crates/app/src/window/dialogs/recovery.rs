//! Recovery copies found at the start.

use std::time::SystemTime;

use egui::{Label, RichText, Ui};

use super::{Answer, foot, heading};
use crate::store::Orphan;

/// Lists the copies; each can be opened or deleted.
pub fn show(ui: &mut Ui, orphans: &[Orphan]) -> Option<Answer> {
    heading(ui, "Work was left unsaved");
    let text = "The program ended before this work was saved. A copy was kept; open it to go on, and save it under a name.";
    ui.add(Label::new(text).wrap());
    let mut answer = None;
    egui::ScrollArea::vertical().max_height(260.0).show(ui, |ui| {
        for (i, orphan) in orphans.iter().enumerate() {
            ui.separator();
            let name = match &orphan.of {
                Some(path) => path.display().to_string(),
                None => "A plan without a file".to_owned(),
            };
            ui.add(Label::new(RichText::new(&name).strong()).wrap());
            let count = orphan.plan.elements().len();
            let elements =
                if count == 1 { "1 element".to_owned() } else { format!("{count} elements") };
            ui.label(RichText::new(format!("{elements}, {}", age(orphan.modified))).weak());
            ui.horizontal(|ui| {
                let open = ui.button("Open this copy");
                if open.accessible_name(format!("Open the copy of {name}")).clicked() {
                    answer = Some(Answer::Recover(i));
                }
                let delete = ui.button("Delete it");
                if delete.accessible_name(format!("Delete the copy of {name}")).clicked() {
                    answer = Some(Answer::Discard(i));
                }
            });
        }
    });
    answer.or_else(|| foot(ui, &["Not now"]).map(|_| Answer::Leave))
}

/// How long ago, in words.
fn age(modified: Option<SystemTime>) -> String {
    let Some(seconds) = modified.and_then(|m| m.elapsed().ok()).map(|d| d.as_secs()) else {
        return "time unknown".to_owned();
    };
    let (count, unit) = match seconds {
        0..60 => return "less than a minute ago".to_owned(),
        60..3_600 => (seconds / 60, "minute"),
        3_600..86_400 => (seconds / 3_600, "hour"),
        _ => (seconds / 86_400, "day"),
    };
    format!("{count} {unit}{} ago", if count == 1 { "" } else { "s" })
}
