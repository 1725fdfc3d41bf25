//! Room to move: how far the element may go to each side, and what breaks there.

use egui::{Button, Label, RichText, Ui};
use measure::{Len, Precision};
use plan::Element;
use rules::room_to_move::RoomToMove;

use super::super::act::Cx;
use super::super::theme::SMALL;
use crate::move_words;

/// One row for each side; a click moves the element to its limit.
pub fn show(ui: &mut Ui, cx: &mut Cx<'_>, element: &Element) {
    let known = cx.moving.clone();
    if known.found.is_empty() {
        return;
    }
    ui.add_space(6.0);
    let title = if known.done { "Room to move" } else { "Room to move, still looking" };
    let header = egui::CollapsingHeader::new(RichText::new(title).strong())
        .id_salt("room to move")
        .default_open(true);
    let shown = header.show(ui, |ui| {
        for found in known.found.iter() {
            for low in [true, false] {
                side(ui, cx, element, found, low);
            }
        }
        let text = "Until a correction, a question or a way under 20 in comes that is not there now. A drag sticks to these limits; Ctrl lets it pass.";
        ui.add(Label::new(RichText::new(text).weak().size(SMALL)).wrap());
    });
    cx.view.shows_moving =
        shown.body_returned.is_some() && shown.body_response.is_some_and(|r| r.contains_pointer());
}

fn side(ui: &mut Ui, cx: &mut Cx<'_>, element: &Element, found: &RoomToMove, low: bool) {
    let plan = std::sync::Arc::clone(cx.session.plan());
    let system = cx.system();
    let towards = move_words::direction(&plan, found.course, !low);
    let (from, to) = found.safe();
    let by = if low { from } else { to };
    let [below, above] = found.breaks();
    let ends = if low { below } else { above };
    let far = system.inches(by.abs(), Precision::Floor);
    ui.horizontal_wrapped(|ui| {
        ui.label(format!("{}:", rules::capital(towards)));
        let Some(ends) = ends else {
            let text = if by == Len::ZERO {
                "no room looked at".to_owned()
            } else {
                format!("{far} and more")
            };
            ui.label(RichText::new(text).weak());
            return;
        };
        ui.label(RichText::new(&far).strong());
        let button = Button::new("Move to limit").small();
        let name = format!("Move to limit, {towards}");
        let response = ui.add_enabled(by != Len::ZERO, button);
        if response.accessible_name(name).clicked()
            && let Ok(edit) = found.course.edit(&plan, by)
        {
            cx.edit(format!("Move {} by {far} to its limit", element.name()), edit);
        }
        let text = format!("then: {}", ends.fault.title);
        ui.add(Label::new(RichText::new(text).size(SMALL)).wrap());
    });
}
