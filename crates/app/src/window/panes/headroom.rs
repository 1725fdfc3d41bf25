//! The headroom: the lowest spot of each room, and how much of its floor reaches the heights that the code names.

use depict::RoomHeights;
use drawing::Tone;
use egui::{
    Align, CornerRadius, Frame, Label, Layout, Margin, RichText, Role, Sense, Stroke, Ui,
    UiBuilder, WidgetInfo,
};
use geometry::Bounds;
use measure::Precision;
use space::Facts;

use super::super::act::{Act, Cx};
use super::super::theme::{SMALL, mix};
use crate::height_words;

/// Lists the rooms, the lowest first; a click shows the lowest spot.
pub fn show(ui: &mut Ui, cx: &mut Cx<'_>) {
    let checked = cx.checked.clone();
    let facts = &checked.facts;
    let mut rooms = height_words::of(facts);
    if rooms.is_empty() {
        ui.add(Label::new(RichText::new("No room is closed off yet.").weak()).wrap());
        return;
    }
    let text = "Clear height from the finished floor. Hatched: red below what is asked for under beams and ducts, brown below the ceiling height, green where something hangs lower than the ceiling.";
    ui.add(Label::new(RichText::new(text).weak()).wrap());
    rooms.sort_by_key(|room| room.regions.first().map(|region| region.clear));
    for room in &rooms {
        ui.add_space(2.0);
        row(ui, cx, facts, room);
    }
}

fn row(ui: &mut Ui, cx: &mut Cx<'_>, facts: &Facts, room: &RoomHeights) {
    let system = cx.system();
    let look = cx.view.look;
    let of = facts.room(room.room);
    let clear = room.regions.first().map_or(of.lowest, |region| region.clear);
    let tone = match room.short_of(clear) {
        0 => Tone::Ink,
        1 if room.named.len() > 1 => Tone::Verify,
        _ => Tone::Stop,
    };
    let ink = look.colour(tone);
    let figure = system.inches(clear, Precision::Floor);
    let title = format!("{}, {}", of.name, system.area(of.area));
    let builder = UiBuilder::new().id_salt(("headroom", room.room)).sense(Sense::click());
    let response = ui
        .scope_builder(builder, |ui| {
            let hovered = ui.response().contains_pointer();
            let paper = ui.visuals().panel_fill;
            let fill = if hovered { mix(paper, ink, 0.06) } else { paper };
            let margin = Margin { left: 8, right: 8, top: 3, bottom: 4 };
            let frame = Frame::new().fill(fill).stroke(Stroke::new(1.0, fill));
            frame.corner_radius(CornerRadius::same(5)).inner_margin(margin).show(ui, |ui| {
                ui.set_width(ui.available_width());
                ui.spacing_mut().item_spacing.y = 1.0;
                ui.spacing_mut().interact_size.y = 0.0;
                ui.with_layout(Layout::right_to_left(Align::TOP), |ui| {
                    ui.label(RichText::new(&figure).strong().color(ink));
                    ui.with_layout(Layout::left_to_right(Align::TOP), |ui| {
                        ui.add(Label::new(&title).wrap());
                    });
                });
                let lowest = format!("Lowest: {}", height_words::lowest(&facts.plan, room, system));
                ui.add(Label::new(RichText::new(lowest).weak().size(SMALL)).wrap());
                for named in &room.named {
                    let (area, tenths) = height_words::share(facts, room, named.height);
                    let height = system.inches(named.height, Precision::Tape);
                    let text = format!(
                        "{} ({}) at {height} or more, {}",
                        height_words::percent(tenths),
                        system.area(area),
                        named.of
                    );
                    let label = Label::new(RichText::new(text).size(SMALL)).wrap();
                    ui.add(label).on_hover_text(named.citation.marked());
                }
                if room.named.is_empty() {
                    let text = "No height is asked for here.";
                    ui.add(Label::new(RichText::new(text).size(SMALL)).wrap());
                }
            });
        })
        .response;
    response
        .widget_info(|| WidgetInfo::labeled(Role::ListItem, true, format!("{title}: {figure}")));
    if response.clicked() {
        let middle = room.regions.first().and_then(space::HeightRegion::middle);
        cx.push(Act::LookAt(Bounds::of(middle.into_iter().chain([of.label_at]))));
        let under = room.regions.first().map_or_else(Vec::new, |region| region.under.clone());
        cx.push(Act::Select(if under.is_empty() { of.tag.into_iter().collect() } else { under }));
    }
}
