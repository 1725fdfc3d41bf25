//! Short questions.

use std::path::Path;

use egui::{Label, RichText, TextEdit, Ui};

use super::super::files::Then;
use super::super::view::FindingKey;
use super::{Answer, foot, heading};

/// Unsaved work, before something that would lose it.
pub fn unsaved(ui: &mut Ui, name: &str, then: &Then) -> Option<Answer> {
    let doing = match then {
        Then::Quit => "Quit",
        Then::New => "Start a new plan",
        Then::Sample => "Open the sample plan",
        Then::Open | Then::OpenPath(_) => "Open another plan",
        Then::Stay => "Go on",
    };
    heading(ui, &format!("Save the changes to {name}?"));
    ui.add(Label::new(format!("{doing} without saving, and they are lost.")).wrap());
    match foot(ui, &["Save", "Don't save", "Cancel"])? {
        0 => Some(Answer::Save(then.clone())),
        1 => Some(Answer::DontSave(then.clone())),
        _ => Some(Answer::Leave),
    }
}

/// Something went wrong.
pub fn problem(ui: &mut Ui, title: &str, text: &str) -> Option<Answer> {
    heading(ui, title);
    egui::ScrollArea::vertical().max_height(320.0).show(ui, |ui| {
        ui.add(Label::new(text).wrap().selectable(true));
    });
    foot(ui, &["Close"]).map(|_| Answer::Leave)
}

/// The file is there already.
pub fn replace(ui: &mut Ui, path: &Path, then: &Then) -> Option<Answer> {
    heading(ui, "Replace the file?");
    let text =
        format!("{} is there already. Its present version is kept as a backup.", path.display());
    ui.add(Label::new(text).wrap());
    match foot(ui, &["Replace", "Cancel"])? {
        0 => Some(Answer::Replace(path.to_owned(), then.clone())),
        _ => Some(Answer::Leave),
    }
}

/// The reason for setting a finding aside.
pub fn set_aside(
    ui: &mut Ui,
    finding: &FindingKey,
    title: &str,
    reason: &mut String,
) -> Option<Answer> {
    heading(ui, "Set this finding aside");
    ui.add(Label::new(title).wrap());
    ui.label("Why? The reason stays in the plan, for you and for whoever reads it.");
    let edit = TextEdit::multiline(reason)
        .desired_rows(3)
        .desired_width(f32::INFINITY)
        .hint_text("For example: the inspector agreed on site, 3 May.");
    let field = ui.add(edit).accessible_name("Reason");
    if reason.is_empty() && ui.memory(|m| m.focused().is_none()) {
        field.request_focus();
    }
    let bound = plan::bounds::REASON;
    let length = reason.trim().chars().count();
    if length > bound.most as usize {
        let text = format!("The reason may have {} letters; this has {length}.", bound.most);
        ui.label(RichText::new(text).color(ui.visuals().error_fg_color));
    }
    let ready = (bound.least as usize..=bound.most as usize).contains(&length);
    let pressed = foot(ui, if ready { &["Set aside", "Cancel"] } else { &["Cancel"] })?;
    if ready && pressed == 0 {
        let reason = reason.trim().to_owned();
        return Some(Answer::SetAside { finding: finding.clone(), reason });
    }
    Some(Answer::Leave)
}
