//! Nothing is selected: the rooms of the plan.

use egui::{Button, Label, RichText, Ui, vec2};
use geometry::Bounds;
use measure::Precision;
use plan::element::RoomUse;
use rules::capital;

use super::super::act::{Act, Cx};
use super::heading;

/// Lists the rooms; a click shows one and selects its tag.
pub fn show(ui: &mut Ui, cx: &mut Cx<'_>) {
    heading(ui, "Rooms");
    let facts = std::sync::Arc::clone(&cx.checked.facts);
    if facts.rooms.is_empty() {
        let text =
            "No walls enclose a room yet. Select an element to see and change its values here.";
        ui.add(Label::new(RichText::new(text).weak()).wrap());
        return;
    }
    let system = cx.system();
    for room in &facts.rooms {
        let name = match (room.name.trim(), room.room_use) {
            ("", RoomUse::Unfinished) if room.tag.is_none() => "Room without a use".to_owned(),
            ("", room_use) => capital(room_use.word()),
            (name, _) => name.to_owned(),
        };
        let size = format!(
            "{}, {} high",
            system.area(room.area),
            system.len(room.lowest, Precision::Floor)
        );
        let text = RichText::new(&name);
        let button = Button::selectable(false, text)
            .right_text(RichText::new(size).weak().small())
            .min_size(vec2(ui.available_width(), 24.0));
        let response = ui.add(button).on_hover_text("Shows the room and selects its tag.");
        if response.clicked() {
            cx.push(Act::LookAt(Bounds::of(room.shape.outer.iter().copied())));
            cx.push(Act::Select(room.tag.into_iter().collect()));
        }
    }
    ui.add_space(4.0);
    let text = "Select an element to see and change its values here.";
    ui.add(Label::new(RichText::new(text).weak()).wrap());
}
