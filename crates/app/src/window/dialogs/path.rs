//! A field for the path of a plan, where the system has no file dialog.

use std::path::{Path, PathBuf};

use egui::{Key, Label, RichText, TextEdit, Ui};

use super::super::files::{Purpose, Then, with_ending};
use super::{Answer, foot, heading};

/// Asks for a path.
pub fn show(
    ui: &mut Ui,
    purpose: Purpose,
    then: &Then,
    text: &mut String,
    why: &str,
) -> Option<Answer> {
    heading(
        ui,
        match purpose {
            Purpose::Open => "Open a plan",
            Purpose::Save => "Save the plan",
        },
    );
    ui.add(Label::new(RichText::new(why).weak()).wrap());
    let edit = TextEdit::singleline(text).desired_width(f32::INFINITY);
    let field = ui.add(edit).accessible_name("Path of the plan");
    let entered = field.lost_focus() && ui.input(|i| i.key_pressed(Key::Enter));
    if ui.memory(|m| m.focused().is_none()) && !entered {
        field.request_focus();
    }
    let path = with_ending(PathBuf::from(text.trim()));
    let trouble = match text.trim().is_empty() {
        true => Some("Type the path of a file.".to_owned()),
        false => trouble(purpose, &path),
    };
    ui.add(
        Label::new(match &trouble {
            Some(trouble) => RichText::new(trouble).color(ui.visuals().error_fg_color),
            None => RichText::new(path.display().to_string()).weak(),
        })
        .wrap(),
    );
    let go = match purpose {
        Purpose::Open => "Open",
        Purpose::Save => "Save",
    };
    let words: &[&str] = if trouble.is_none() { &[go, "Cancel"] } else { &["Cancel"] };
    let pressed = foot(ui, words);
    if trouble.is_none() && (entered || pressed == Some(0)) {
        return Some(match purpose {
            Purpose::Open => Answer::Open(path),
            Purpose::Save => Answer::SaveTo(path, then.clone()),
        });
    }
    pressed.map(|_| Answer::Leave)
}

fn trouble(purpose: Purpose, path: &Path) -> Option<String> {
    match purpose {
        Purpose::Open if !path.exists() => {
            Some(format!("{}: there is no such file.", path.display()))
        }
        _ if path.is_dir() => Some(format!("{}: this is a folder.", path.display())),
        Purpose::Open => None,
        Purpose::Save => {
            let folder = path.parent().filter(|f| !f.as_os_str().is_empty());
            folder
                .filter(|f| !f.is_dir())
                .map(|f| format!("{}: there is no such folder.", f.display()))
        }
    }
}
