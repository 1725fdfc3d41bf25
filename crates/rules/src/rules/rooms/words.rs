//! What elements and rooms are called in a sentence.

use plan::ElementId;
use space::Room;

use crate::Sheet;

/// An element by its word and short name: `window N12`.
pub(crate) fn called(sheet: &Sheet<'_>, id: ElementId) -> String {
    match sheet.plan().get(id) {
        Some(element) => format!("{} {}", element.body.word(), element.name()),
        None => "what is not there any more".to_owned(),
    }
}

/// A room by its name, or by what it is used as where the tag has no name.
pub(crate) fn room_called(room: &Room) -> String {
    if room.name.trim().is_empty() {
        format!("the {} room", room.room_use.word())
    } else {
        room.name.clone()
    }
}

/// Several rooms of one use, or the only one by its name; and whether they are several.
pub(crate) fn rooms_called(rooms: &[&Room]) -> (String, bool) {
    match rooms {
        [one] => (room_called(one), false),
        many => {
            let word = many.first().map_or("room", |room| room.room_use.word());
            (format!("{} {word}s", many.len()), true)
        }
    }
}

/// The text with a capital first letter.
pub fn capital(text: &str) -> String {
    let mut chars = text.chars();
    match chars.next() {
        Some(first) => first.to_uppercase().chain(chars).collect(),
        None => String::new(),
    }
}

/// What a finding about a room is about: its tag, or its walls where it has none.
pub(crate) fn room_elements(room: &Room) -> Vec<ElementId> {
    match room.tag {
        Some(tag) => vec![tag],
        None => room.walls.clone(),
    }
}
