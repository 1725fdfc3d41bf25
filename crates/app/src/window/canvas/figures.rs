//! Figures of the tape that are typed over.

use editor::{Dimension, DimensionId};
use egui::{
    Align2, Area, FontSelection, Frame, Id, Key, Label, Order, Pos2, RichText, TextEdit, Ui, vec2,
};
use measure::{Precision, read_len};

use super::super::act::Cx;
use super::super::form::{bare_unit, select_all, unit_word};
use super::super::theme::{BODY, SMALL, bold};
use super::Canvas;

/// A figure that is being typed over.
#[derive(Debug)]
pub struct Typing {
    id: DimensionId,
    text: String,
    refused: Option<String>,
    /// The field has had the keyboard.
    begun: bool,
}

fn field_id() -> Id {
    Id::unique("figure")
}

/// The figure at a position.
pub fn at(canvas: &Canvas, pos: Pos2) -> Option<DimensionId> {
    canvas.figures.iter().find(|(_, rect)| rect.contains(pos)).map(|(id, _)| *id)
}

/// Opens a field on the figure at a position, if one stands there.
pub fn open_at(cx: &mut Cx<'_>, canvas: &mut Canvas, pos: Pos2) {
    let Some(id) = at(canvas, pos) else { return };
    let value = cx.session.dimensions().into_iter().find(|d| d.id == id).map(|d| d.value);
    let text = value.map_or_else(String::new, |v| cx.system().len(v, Precision::Fine));
    canvas.figure = Some(Typing { id, text, refused: None, begun: false });
}

/// Shows the field. Enter makes the distance true, Esc leaves it.
pub fn show(
    ui: &mut Ui,
    cx: &mut Cx<'_>,
    canvas: &mut Canvas,
    dimensions: &[Dimension],
    busy: bool,
) {
    let Some(typing) = &mut canvas.figure else { return };
    let rect = canvas.figures.iter().find(|(id, _)| *id == typing.id).map(|(_, r)| *r);
    let there = dimensions.iter().any(|d| d.id == typing.id && d.editable);
    let (Some(rect), true, false) = (rect, there, busy) else {
        canvas.figure = None;
        return;
    };
    let system = cx.system();
    let mut done = false;
    Area::new(Id::unique("figure area"))
        .order(Order::Foreground)
        .fixed_pos(rect.center())
        .pivot(Align2::CENTER_CENTER)
        .show(ui.ctx(), |ui| {
            Frame::popup(ui.style()).inner_margin(4.0).show(ui, |ui| {
                ui.spacing_mut().item_spacing = vec2(4.0, 2.0);
                ui.set_max_width(230.0);
                ui.horizontal(|ui| {
                    let edit = TextEdit::singleline(&mut typing.text)
                        .id(field_id())
                        .font(FontSelection::FontId(bold(BODY)))
                        .desired_width(104.0);
                    let field = ui.add(edit).accessible_name(format!("Tape: {}", typing.id.word()));
                    ui.weak(unit_word(system));
                    if !typing.begun {
                        typing.begun = true;
                        field.request_focus();
                        select_all(ui, field_id(), typing.text.chars().count());
                    } else if field.lost_focus() {
                        let (enter, escape) =
                            ui.input(|i| (i.key_pressed(Key::Enter), i.key_pressed(Key::Escape)));
                        if enter {
                            match commit(cx, typing) {
                                Ok(()) => done = true,
                                Err(why) => {
                                    typing.refused = Some(why);
                                    field.request_focus();
                                }
                            }
                        } else {
                            done = escape || typing.refused.is_none();
                            done |= !ui.memory(|m| m.has_focus(field_id()));
                        }
                    } else if field.changed() {
                        typing.refused = None;
                    }
                });
                let say = match &typing.refused {
                    Some(why) => RichText::new(why).color(ui.visuals().error_fg_color).size(SMALL),
                    None => {
                        RichText::new(format!("{}: Enter sets it, Esc leaves it", typing.id.word()))
                            .weak()
                            .size(SMALL)
                    }
                };
                ui.add(Label::new(say).wrap());
            });
        });
    if done {
        canvas.figure = None;
        ui.memory_mut(|m| m.request_focus(Id::unique("plan")));
        ui.ctx().request_repaint();
    }
}

fn commit(cx: &mut Cx<'_>, typing: &Typing) -> Result<(), String> {
    let text = typing.text.trim();
    let value = read_len(text, bare_unit(cx.system())).map_err(|e| e.to_string())?;
    cx.session.type_dimension(typing.id, value)?;
    if let Some(why) = cx.session.status().refused.clone() {
        return Err(why);
    }
    Ok(())
}
