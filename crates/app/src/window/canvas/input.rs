//! The pointer, the wheel and the keyboard as gestures of the editor.

use editor::{EditorKey, Gesture, Mods};
use egui::{Event, EventFilter, Key, Modifiers, PointerButton, Pos2, Rect, Response, Ui, Vec2};
use geometry::Pt;
use measure::Len;

use super::super::act::{Act, Cx};
use super::super::commands::Command;
use super::{Canvas, figures};

/// How near counts as "on", in screen points.
const REACH: f32 = 7.0;

/// A press that moves no farther than this, in screen points, is a click.
const STILL: f32 = 4.0;

/// What the pointer is doing.
#[derive(Debug, Default)]
pub struct Pointer {
    pan: Option<PointerButton>,
    /// The main button went down on the plan and is not up yet.
    pressed: bool,
    /// The main button went down on a figure of the tape: released there it opens the field, moved it drags
    /// what lies under the figure.
    on_figure: Option<Pos2>,
    at: Option<Pos2>,
    mods: Mods,
    /// The canvas was reached by the keyboard, so its focus is shown.
    pub by_keyboard: bool,
}

impl Pointer {
    pub fn panning(&self) -> bool {
        self.pan.is_some()
    }

    /// Space is held: the next drag moves the picture.
    pub fn will_pan(&self, ui: &Ui) -> bool {
        !ui.ctx().text_edit_focused() && ui.input(|i| i.key_down(Key::Space))
    }
}

/// A pointer position as the editor takes it.
struct Spot {
    at: Pt,
    reach: Len,
    mods: Mods,
}

/// Feeds what happened since the last frame to the editor.
pub fn take(ui: &mut Ui, cx: &mut Cx<'_>, canvas: &mut Canvas, response: &Response) {
    let rect = response.rect;
    zoom_and_scroll(ui, cx, response);
    let events = ui.input(|i| i.events.clone());
    let keyboard = Keyboard::of(ui, canvas, cx, response);
    // A slow frame brings many events; the editor gets them in the order in which they were made.
    let mut moved = None;
    for event in &events {
        match event {
            Event::Key { .. } | Event::Text(_) => {
                if let Some(pos) = moved.take() {
                    step(cx, canvas, rect, pos);
                }
                if let Some(keyboard) = &keyboard {
                    keyboard.take(cx, event);
                }
            }
            Event::ModifiersChanged(m) => {
                canvas.pointer.mods = mods(*m);
                moved = moved.or(canvas.pointer.at);
            }
            Event::PointerMoved(pos) => {
                if let Some(from) = canvas.pointer.on_figure
                    && from.distance(*pos) > STILL
                {
                    canvas.pointer.on_figure = None;
                    canvas.pointer.pressed = true;
                    let Spot { at, reach, mods } = spot(cx, canvas, rect, from);
                    cx.session.feed(&Gesture::Press { at, reach, mods });
                }
                if canvas.pointer.panning() {
                    let by = canvas.pointer.at.map_or(Vec2::ZERO, |from| *pos - from);
                    cx.view.camera = cx.view.camera.panned(by.x, by.y);
                } else if canvas.pointer.on_figure.is_none()
                    && (response.contains_pointer() || canvas.pointer.pressed)
                {
                    moved = Some(*pos);
                }
                canvas.pointer.at = Some(*pos);
            }
            Event::PointerGone => {
                canvas.pointer.at = None;
                cx.view.pointer = None;
            }
            Event::PointerButton { pos, button, pressed, modifiers } => {
                canvas.pointer.mods = mods(*modifiers);
                canvas.pointer.at = Some(*pos);
                if let Some(pos) = moved.take() {
                    step(cx, canvas, rect, pos);
                }
                press(ui, cx, canvas, response, *pos, *button, *pressed);
            }
            Event::WindowFocused(false) => {
                canvas.pointer.pan = None;
                canvas.pointer.on_figure = None;
                if std::mem::take(&mut canvas.pointer.pressed) {
                    key(cx, EditorKey::Escape, Mods::default());
                }
            }
            _ => {}
        }
    }
    if let Some(pos) = moved {
        step(cx, canvas, rect, pos);
    }
    if response.double_clicked()
        && let Some(pos) = response.interact_pointer_pos()
        && on_plan(rect, pos)
    {
        let Spot { at, reach, mods } = spot(cx, canvas, rect, pos);
        cx.session.feed(&Gesture::DoubleClick { at, reach, mods });
    }
    if response.contains_pointer() || canvas.pointer.pressed {
        cx.view.pointer =
            canvas.pointer.at.filter(|p| on_plan(rect, *p)).map(|p| spot(cx, canvas, rect, p).at);
    } else {
        cx.view.pointer = None;
    }
}

fn mods(m: Modifiers) -> Mods {
    Mods { shift: m.shift, command: m.command, alt: m.alt }
}

/// Whether a position lies on the plan and not on a ruler.
fn on_plan(rect: Rect, pos: Pos2) -> bool {
    let inner = Rect::from_min_max(rect.min + Vec2::splat(depict::RULER), rect.max);
    inner.contains(pos)
}

fn spot(cx: &Cx<'_>, canvas: &Canvas, rect: Rect, pos: Pos2) -> Spot {
    let local = pos - rect.min;
    let camera = &cx.view.camera;
    Spot {
        at: camera.plan_from_screen(drawing::P::new(local.x, local.y)),
        reach: camera.len(REACH).max(Len::UNIT),
        mods: canvas.pointer.mods,
    }
}

fn step(cx: &mut Cx<'_>, canvas: &Canvas, rect: Rect, pos: Pos2) {
    let Spot { at, reach, mods } = spot(cx, canvas, rect, pos);
    cx.session.feed(&Gesture::Move { at, reach, mods });
}

fn press(
    ui: &Ui,
    cx: &mut Cx<'_>,
    canvas: &mut Canvas,
    response: &Response,
    pos: Pos2,
    button: PointerButton,
    pressed: bool,
) {
    let rect = response.rect;
    let over = on_plan(rect, pos) && response.contains_pointer();
    match (button, pressed) {
        (PointerButton::Middle, true) if over => canvas.pointer.pan = Some(button),
        (PointerButton::Primary, true) if over => {
            response.request_focus();
            canvas.pointer.by_keyboard = false;
            if canvas.pointer.will_pan(ui) {
                canvas.pointer.pan = Some(button);
                return;
            }
            if cx.preview.is_some() {
                cx.push(Act::EndPreview);
                return;
            }
            if !cx.session.busy() && figures::at(canvas, pos).is_some() {
                canvas.pointer.on_figure = Some(pos);
                return;
            }
            let looking = cx.session.tool() == editor::ToolKind::Select && !cx.session.busy();
            // A badge picks its finding; a second press reaches the element under the badge.
            if looking
                && let Some(key) = canvas.badge(pos)
                && cx.view.picked.as_ref() != Some(&key)
            {
                cx.push(Act::PickFinding(key));
                return;
            }
            canvas.pointer.pressed = true;
            let Spot { at, reach, mods } = spot(cx, canvas, rect, pos);
            cx.session.feed(&Gesture::Press { at, reach, mods });
        }
        // A right click picks first, so that the menu is about what is under the pointer.
        (PointerButton::Secondary, true) if over && !cx.session.busy() => {
            if let Some(id) = cx.session.hovered()
                && !cx.session.selection().contains(&id)
            {
                cx.session.select([id]);
            }
        }
        (_, false) if canvas.pointer.pan == Some(button) => canvas.pointer.pan = None,
        (PointerButton::Primary, false) if canvas.pointer.on_figure.is_some() => {
            if let Some(pos) = canvas.pointer.on_figure.take() {
                figures::open_at(cx, canvas, pos);
            }
        }
        (PointerButton::Primary, false) if canvas.pointer.pressed => {
            canvas.pointer.pressed = false;
            let Spot { at, reach, mods } = spot(cx, canvas, rect, pos);
            cx.session.feed(&Gesture::Release { at, reach, mods });
            cx.view.picked = None;
        }
        _ => {}
    }
}

fn zoom_and_scroll(ui: &Ui, cx: &mut Cx<'_>, response: &Response) {
    if !response.contains_pointer() {
        return;
    }
    let (zoom, scroll, at) =
        ui.input(|i| (i.zoom_delta(), i.translation_delta(), i.pointer.hover_pos()));
    let camera = &mut cx.view.camera;
    if zoom != 1.0
        && let Some(at) = at
    {
        let local = at - response.rect.min;
        *camera = camera.zoomed(drawing::P::new(local.x, local.y), f64::from(zoom));
    } else if scroll != Vec2::ZERO {
        *camera = camera.panned(scroll.x, scroll.y);
    }
}

fn key(cx: &mut Cx<'_>, key: EditorKey, mods: Mods) {
    cx.session.feed(&Gesture::Key { key, mods });
}

/// The keyboard while it is the plan's.
struct Keyboard {
    /// Tab steps through the figures that can be typed into; without any it leaves the plan.
    tab: bool,
}

impl Keyboard {
    /// Keys go to the plan when nothing else has the keyboard.
    fn of(ui: &Ui, canvas: &mut Canvas, cx: &Cx<'_>, response: &Response) -> Option<Keyboard> {
        let focused = ui.memory(|m| m.focused());
        let typing = canvas.figure.is_some();
        if typing || ui.ctx().any_popup_open() || focused.is_some_and(|id| id != response.id) {
            return None;
        }
        if response.gained_focus() {
            canvas.pointer.by_keyboard = ui.input(|i| i.key_pressed(Key::Tab));
        }
        let figures = !canvas.figures.is_empty() || cx.session.entry().is_some();
        if focused.is_some() {
            ui.memory_mut(|m| {
                m.set_focus_lock_filter(
                    response.id,
                    EventFilter {
                        tab: figures,
                        horizontal_arrows: true,
                        vertical_arrows: true,
                        escape: true,
                    },
                );
            });
        }
        Some(Keyboard { tab: figures && focused.is_some() })
    }

    fn take(&self, cx: &mut Cx<'_>, event: &Event) {
        match event {
            Event::Key { key: pressed, pressed: true, modifiers, .. } => {
                let editor_key = match pressed {
                    Key::Enter => EditorKey::Enter,
                    Key::Escape => return escape(cx),
                    Key::Tab if self.tab => EditorKey::Tab,
                    Key::Backspace if cx.session.entry().is_some() => EditorKey::Backspace,
                    Key::Backspace => return cx.command(Command::Delete),
                    Key::ArrowLeft => EditorKey::Left,
                    Key::ArrowRight => EditorKey::Right,
                    Key::ArrowUp => EditorKey::Up,
                    Key::ArrowDown => EditorKey::Down,
                    _ => return,
                };
                key(cx, editor_key, mods(*modifiers));
            }
            Event::Text(text) => {
                for c in text.chars() {
                    let goes_on = cx.session.entry().is_some_and(|e| !e.text.is_empty());
                    if goes_on || begins_length(c) {
                        cx.session.feed(&Gesture::Char(c));
                    }
                }
            }
            _ => {}
        }
    }
}

/// Esc drops what is running, then the selection, then the tool.
fn escape(cx: &mut Cx<'_>) {
    if cx.preview.is_some() {
        cx.push(Act::EndPreview);
        return;
    }
    let idle = !cx.session.busy() && cx.session.entry().is_none();
    if idle && cx.session.tool() != editor::ToolKind::Select {
        cx.session.set_tool(editor::ToolKind::Select);
        return;
    }
    key(cx, EditorKey::Escape, Mods::default());
    cx.view.picked = None;
}

/// A typed length begins with a digit, a sign, a point or a fraction. Letters are keys of commands until
/// then.
fn begins_length(c: char) -> bool {
    c.is_numeric() || matches!(c, '.' | ',')
}
