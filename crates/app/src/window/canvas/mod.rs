//! The plan: paints it, and turns the pointer and the keyboard into gestures.

mod figures;
mod input;
mod nodes;

use std::sync::Arc;

use depict::{Blade, Caught, Poche, Scene, WaysLayer};
use editor::{Dimension, DimensionId, Session, ToolKind};
use egui::{CursorIcon, Id, Pos2, Rect, Response, Role, Sense, Stroke, Ui, Vec2, WidgetInfo, pos2};
use space::Facts;

use super::act::Cx;
use super::commands::{Command, Now, row_of};
use super::paint;
use super::panes::menu;
use super::theme::SMALL;
use super::view::{FindingKey, MARGIN};
use crate::height_words;
use drawing::Tone;

/// What the canvas remembers from frame to frame.
#[derive(Debug, Default)]
pub struct Canvas {
    /// Its left top corner in the last frame.
    pub corner: Pos2,
    pointer: input::Pointer,
    /// The figure of a tape that is being typed over.
    figure: Option<figures::Typing>,
    /// Where the figures stood in the last frame.
    figures: Vec<(DimensionId, Rect)>,
    /// Where the badges of findings stood in the last frame.
    badges: Vec<(FindingKey, Pos2)>,
    /// The joined walls of the facts that were painted last.
    poche: Option<(Arc<Facts>, Arc<Poche>)>,
}

/// Shows the plan. `busy`: a dialog is up and has the keyboard.
pub fn show(ui: &mut Ui, cx: &mut Cx<'_>, canvas: &mut Canvas, now: &Now<'_>, busy: bool) {
    let rect = ui.available_rect_before_wrap();
    let id = Id::unique("plan");
    let response = ui.interact(rect, id, Sense::click_and_drag());
    ui.advance_cursor_after_rect(rect);
    response.widget_info(|| WidgetInfo::labeled(Role::Canvas, true, "Plan"));
    place_camera(cx, rect, ui.ctx().content_rect().size());
    canvas.corner = rect.min;
    if !busy {
        input::take(ui, cx, canvas, &response);
    }
    let system = cx.system();
    // The gesture may have changed the plan: what is painted is never behind the pointer.
    let checked = match cx.preview {
        Some(preview) => preview.checked.clone(),
        None => cx.session.checked(),
    };
    if cx.preview.is_none() && !Arc::ptr_eq(&checked.facts, &cx.checked.facts) {
        ui.ctx().request_repaint();
    }
    let dimensions = match cx.preview {
        Some(_) => Vec::new(),
        None => cx.session.dimensions(),
    };
    let entry = cx.session.entry().filter(|e| !e.text.is_empty() || cx.session.focus().is_some());
    let focus = cx.session.focus();
    let first = dimensions.iter().find(|d| d.editable).map(|d| d.id);
    let blades: Vec<Blade<'_>> = dimensions
        .iter()
        .map(|d| Blade {
            from: d.from,
            to: d.to,
            value: d.value,
            editable: d.editable,
            typed: entry
                .filter(|e| e.prompt != "x, y" && focus.or(first) == Some(d.id))
                .map(|e| e.text.as_str()),
        })
        .collect();
    let response = match badge_at(ui, canvas).filter(|_| response.hovered() && !cx.session.busy()) {
        Some(key) => {
            cx.view.lit = Some(key.clone());
            let finding = checked.findings.iter().find(|f| key.is(f));
            let title = finding.map_or_else(String::new, |f| f.title.say(system));
            response.on_hover_text_at_pointer(title)
        }
        None => response,
    };
    let shown = cx.view.shown_finding(&checked.findings);
    let lit: Vec<usize> = shown
        .and_then(|f| checked.findings.iter().position(|g| std::ptr::eq(f, &**g)))
        .into_iter()
        .collect();
    let palette = cx.view.look.palette();
    let poche = poche(canvas, &checked.facts);
    let mut scene = Scene::new(&checked.facts);
    scene.findings = &checked.findings;
    scene.keep_clears = &checked.keep_clears;
    scene.selection = cx.session.selection();
    // The pointer may have left the plan for a pane.
    scene.hovered = cx.session.hovered().filter(|_| cx.view.pointer.is_some());
    scene.lit = &lit;
    scene.show = cx.view.show();
    let lit_way = cx.view.lit_way.or(cx.view.picked_way).filter(|_| cx.view.shows_ways());
    let walk = lit_way.and_then(|target| {
        let ways = checked.ways();
        let way = ways.ways.iter().find(|way| way.target == target)?;
        ways.walk(&checked.facts, way)
    });
    if cx.view.shows_ways() {
        let (ways, walk) = (checked.ways(), walk.as_ref());
        scene.ways = Some(WaysLayer { ways, lit: lit_way, walk });
    }
    let committed = Arc::clone(cx.session.plan());
    let dragged = cx.session.busy() && cx.session.tool() == ToolKind::Select;
    if (dragged || cx.view.shows_moving) && cx.session.marquee().is_none() {
        scene.moving = &cx.moving.found;
        scene.moved_from = Some(&committed);
    }
    let heights = match cx.view.shows_headroom() {
        true => height_words::of(&checked.facts),
        false => Vec::new(),
    };
    scene.heights = &heights;
    scene.blades = &blades;
    scene.marquee = cx.session.marquee();
    scene.system = system;
    scene.hatched = palette.hatches();
    scene.poche = Some(&poche);
    let caught = cx.session.status().caught.as_ref();
    let angle =
        drawn_line(cx.session, &dimensions).and_then(|line| Some((line.to, degrees(line)?)));
    let words = match (caught, &angle) {
        (Some(caught), Some((_, angle))) => format!("{} · {angle}", caught.word),
        (Some(caught), None) => caught.word.to_owned(),
        (None, angle) => angle.as_ref().map(|(_, angle)| angle.clone()).unwrap_or_default(),
    };
    let at = caught.map(|c| c.at).or(angle.map(|(at, _)| at));
    scene.caught =
        at.map(|at| Caught { word: &words, at, guide: caught.and_then(|caught| caught.guide) });
    let picture = depict::picture(&cx.view.camera, &scene);
    let painter = ui.painter_at(rect);
    paint::marks(&painter, &picture.marks, palette, rect.min);
    paint::marks(&painter, &picture.rulers, palette, rect.min);
    if let Some(preview) = cx.preview {
        let text = format!("Shown, not done: {}", preview.label);
        let corner = rect.min + egui::vec2(depict::RULER + 14.0, depict::RULER + 10.0);
        plate(ui, cx, rect, corner, &text);
    }
    if blades.iter().all(|b| b.typed.is_none())
        && let Some(entry) = entry
    {
        at_pointer(ui, cx, rect, &format!("{}: {}", entry.prompt, entry.text));
    }
    canvas.figures = picture
        .figures
        .iter()
        .filter(|f| dimensions[f.blade].editable)
        .map(|f| {
            let at = |p: drawing::P| pos2(p.x, p.y) + rect.min.to_vec2();
            (dimensions[f.blade].id, Rect::from_min_max(at(f.min), at(f.max)))
        })
        .collect();
    canvas.badges = picture
        .badges
        .iter()
        .map(|(i, p)| (FindingKey::of(&checked.findings[*i]), pos2(p.x, p.y) + rect.min.to_vec2()))
        .collect();
    if response.has_focus() && canvas.pointer.by_keyboard {
        let line = Stroke::new(2.0, ui.visuals().selection.stroke.color);
        painter.rect_stroke(rect.shrink(1.0), 0.0, line, egui::StrokeKind::Inside);
    }
    cursor(ui, cx, canvas, &response);
    nodes::show(ui, cx, &checked, rect, id);
    figures::show(ui, cx, canvas, &dimensions, busy);
    if !busy {
        context_menu(&response, cx, now);
    }
}

/// The finding whose badge is under the pointer.
fn badge_at(ui: &Ui, canvas: &Canvas) -> Option<FindingKey> {
    let at = ui.ctx().pointer_hover_pos()?;
    canvas.badge(at)
}

impl Canvas {
    /// The finding whose badge stands at a position.
    fn badge(&self, at: Pos2) -> Option<FindingKey> {
        const REACH: f32 = 10.0;
        let near = self.badges.iter().rev().find(|(_, p)| p.distance(at) <= REACH);
        near.map(|(key, _)| key.clone())
    }
}

/// The line that is being drawn, from its start to the pointer.
fn drawn_line<'a>(session: &Session, dimensions: &'a [Dimension]) -> Option<&'a Dimension> {
    let drawing = session.busy() && session.tool() != ToolKind::Select;
    dimensions.iter().find(|d| {
        drawing && matches!(d.id, DimensionId::Length | DimensionId::Distance) && d.from != d.to
    })
}

/// The direction of a line, counter-clockwise from east: `35.2°`.
fn degrees(line: &Dimension) -> Option<String> {
    let tenths = editor::heading(line.to - line.from)?;
    Some(match tenths % 10 {
        0 => format!("{}°", tenths / 10),
        tenth => format!("{}.{tenth}°", tenths / 10),
    })
}

fn place_camera(cx: &mut Cx<'_>, rect: Rect, window: Vec2) {
    let size = (rect.width().max(1.0), rect.height().max(1.0));
    // Nobody has moved the picture since it was fitted: a window that grows has it fitted again. A pane that
    // changes its width does not, for the plan would jump under the pointer.
    let fitted = cx.view.fitted.filter(|(camera, _)| *camera == cx.view.camera);
    if fitted.is_some_and(|(_, was)| was != window) {
        cx.view.fit_wanted = true;
    }
    let camera = &mut cx.view.camera;
    // The middle of the picture stays when the window or a pane changes its size.
    let shift = ((camera.size.0 - size.0) / 2.0, (camera.size.1 - size.1) / 2.0);
    if camera.size != size {
        *camera = camera.panned(-shift.0, -shift.1);
        camera.size = size;
        cx.view.fitted = fitted.map(|(_, was)| (*camera, was));
    }
    if cx.view.fit_wanted {
        cx.view.fit_wanted = false;
        let extent = depict::extent(&cx.checked.facts);
        cx.view.camera = depict::View::fit(extent, size, MARGIN);
        cx.view.fitted = Some((cx.view.camera, window));
    }
}

fn poche(canvas: &mut Canvas, facts: &Arc<Facts>) -> Arc<Poche> {
    if let Some((held, poche)) = &canvas.poche
        && Arc::ptr_eq(held, facts)
    {
        return Arc::clone(poche);
    }
    let poche = Arc::new(Poche::of(facts));
    canvas.poche = Some((Arc::clone(facts), Arc::clone(&poche)));
    poche
}

/// A few words beside the pointer.
fn at_pointer(ui: &Ui, cx: &Cx<'_>, rect: Rect, text: &str) {
    if let Some(at) = ui.ctx().pointer_latest_pos() {
        plate(ui, cx, rect, at + egui::vec2(18.0, -30.0), text);
    }
}

/// A line of text on a plate.
fn plate(ui: &Ui, cx: &Cx<'_>, rect: Rect, corner: Pos2, text: &str) {
    let look = cx.view.look;
    let ink = look.colour(Tone::Ink);
    let painter = ui.painter_at(rect);
    let font = egui::FontId::proportional(SMALL + 1.0);
    let galley = painter.layout_no_wrap(text.to_owned(), font, ink);
    let plate = Rect::from_min_size(corner, galley.size()).expand2(egui::vec2(7.0, 4.0));
    let edge = Stroke::new(1.5, look.colour(Tone::Select));
    painter.rect(plate, 3.0, look.colour(Tone::Paper), edge, egui::StrokeKind::Middle);
    painter.galley(corner, galley, ink);
}

fn cursor(ui: &Ui, cx: &Cx<'_>, canvas: &Canvas, response: &Response) {
    if !response.contains_pointer() && !canvas.pointer.panning() {
        return;
    }
    let on_figure = ui
        .ctx()
        .pointer_hover_pos()
        .is_some_and(|p| canvas.figures.iter().any(|(_, r)| r.contains(p)));
    let icon = if canvas.pointer.panning() {
        CursorIcon::Grabbing
    } else if canvas.pointer.will_pan(ui) {
        CursorIcon::Grab
    } else if on_figure && !cx.session.busy() {
        CursorIcon::Text
    } else if cx.session.tool() == ToolKind::Select && badge_at(ui, canvas).is_some() {
        CursorIcon::PointingHand
    } else {
        match (cx.session.tool(), cx.session.hovered()) {
            (ToolKind::Select, _) if cx.session.busy() => CursorIcon::Grabbing,
            (ToolKind::Select, Some(id)) if cx.session.selection().contains(&id) => {
                CursorIcon::Move
            }
            (ToolKind::Select, Some(_)) => CursorIcon::PointingHand,
            (ToolKind::Select, None) => CursorIcon::Default,
            _ => CursorIcon::Crosshair,
        }
    };
    ui.ctx().set_cursor_icon(icon);
}

/// What can be done to the selection, at the pointer.
fn context_menu(response: &Response, cx: &mut Cx<'_>, now: &Now<'_>) {
    const OFFERED: [Command; 8] = [
        Command::Cut,
        Command::Copy,
        Command::Duplicate,
        Command::Delete,
        Command::FlipHinge,
        Command::FlipSwing,
        Command::Turn,
        Command::FitSelection,
    ];
    response.context_menu(|ui| {
        ui.set_min_width(220.0);
        for row in OFFERED.into_iter().filter_map(row_of) {
            menu::item(ui, cx, now, row);
        }
    });
}
