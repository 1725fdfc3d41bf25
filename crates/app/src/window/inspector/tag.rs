//! Room tags and notes.

use egui::{TextEdit, Ui};
use plan::bounds;
use plan::element::{Note, RoomTag, RoomUse};

use super::super::form::Form;
use super::boxes;

pub fn room(ui: &mut Ui, form: &mut Form, tag: &mut RoomTag) {
    let uses = RoomUse::ALL.map(|u| (u, u.word()));
    form.choice(ui, "Use", &mut tag.room_use, &uses);
    form.text(ui, "Name", &mut tag.name, bounds::ROOM_NAME);
}

pub fn note(ui: &mut Ui, form: &mut Form, note: &mut Note) {
    let id = ui.make_persistent_id("note text");
    let mut text = ui.data(|d| d.get_temp::<String>(id)).unwrap_or_else(|| note.text.clone());
    let edit = TextEdit::multiline(&mut text)
        .desired_rows(4)
        .desired_width(f32::INFINITY)
        .char_limit(bounds::NOTE.most as usize);
    let field = ui.add(edit).accessible_name("Text of the note");
    if field.lost_focus() && text != note.text {
        text.clone_into(&mut note.text);
        form.touch("text");
    }
    // Asked before: within `data_mut` the context is locked.
    let writing = field.has_focus();
    ui.data_mut(|d| {
        if writing {
            d.insert_temp(id, text);
        } else {
            d.remove::<String>(id);
        }
    });
    boxes::place(ui, form, &mut note.at);
}
