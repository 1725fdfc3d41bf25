//! The application: what is open, what is shown, and one frame of it.

use std::path::PathBuf;
use std::time::{Duration, Instant};

use egui::{CentralPanel, Context, Event, Frame, Margin, Panel, Ui, ViewportCommand};

use super::act::{Act, Cx};
use super::autosave::Autosave;
use super::canvas::{self, Canvas};
use super::commands::Now;
use super::dialogs::Dialog;
use super::document::Document;
use super::files::Pending;
use super::looking::Preview;
use super::moving::{Moving, Smallest};
use super::remedies::Remedies;
use super::sheeting::Sheeting;
use super::timing::Timing;
use super::view::{FindingKey, Listed, View};
use super::{inspector, panes, theme, told};

/// What the window starts with.
#[derive(Clone, Debug, Default)]
pub struct Start {
    /// The plan to open; a sample plan when none is given.
    pub plan: Option<PathBuf>,
    /// Close after the first frame.
    pub quit_after_first_frame: bool,
    /// Print how long frames took at the end.
    pub timing: bool,
    /// Write what is on the screen into this file whenever that changes.
    pub tell: Option<PathBuf>,
    /// Keep a recovery copy, and offer the ones that were left.
    pub autosave: bool,
}

/// The window's application.
#[derive(Debug)]
pub struct App {
    pub(super) document: Document,
    pub(super) view: View,
    pub(super) canvas: Canvas,
    /// The dialog that is up, and those that wait behind it.
    pub(super) dialogs: Vec<Dialog>,
    /// The reason that was written for a finding before its dialog was left.
    pub(super) unsaid: Option<(FindingKey, String)>,
    pub(super) pending: Option<Pending>,
    pub(super) preview: Option<Preview>,
    pub(super) remedies: Remedies,
    moving: Moving,
    smallest: Smallest,
    sheeting: Sheeting,
    pub(super) autosave: Autosave,
    /// What the last command has to say.
    pub(super) notice: Option<String>,
    /// The window may close without asking.
    pub(super) closing: bool,
    /// The title that the window has.
    title: String,
    applied: Option<theme::Look>,
    start: Start,
    timing: Timing,
    frames: u64,
    /// Events that wait for the next frame: see [`one_at_a_time`].
    held: Vec<Event>,
}

impl App {
    /// Sets the look up and opens the plan.
    pub fn new(ctx: &Context, start: Start) -> App {
        theme::install(ctx);
        if let Some(file) = &start.tell {
            ctx.add_plugin(told::Told::new(file.clone()));
        }
        let mut app = App {
            document: Document::empty(),
            view: View::default(),
            canvas: Canvas::default(),
            dialogs: Vec::new(),
            unsaid: None,
            pending: None,
            preview: None,
            remedies: Remedies::default(),
            moving: Moving::default(),
            smallest: Smallest::default(),
            sheeting: Sheeting::default(),
            autosave: if start.autosave { Autosave::start() } else { Autosave::none() },
            notice: None,
            closing: false,
            title: String::new(),
            applied: None,
            timing: Timing::default(),
            frames: 0,
            held: Vec::new(),
            start,
        };
        app.begin();
        app.apply_look(ctx);
        app
    }

    fn begin(&mut self) {
        match self.start.plan.clone() {
            Some(path) => self.open(path),
            None => self.open_sample(),
        }
        if self.start.autosave {
            if !self.autosave.keeps() {
                let text = "No recovery copy can be kept on this system: save often.";
                self.notice = Some(text.to_owned());
            }
            let orphans = Autosave::orphans();
            if !orphans.is_empty() {
                self.dialogs.push(Dialog::Recovery(orphans));
            }
        }
    }

    /// The open plan.
    pub fn session(&self) -> &editor::Session {
        &self.document.session
    }

    fn apply_look(&mut self, ctx: &Context) {
        if self.applied != Some(self.view.look) {
            theme::apply(ctx, self.view.look);
            self.applied = Some(self.view.look);
        }
    }

    /// The facts that commands are enabled by.
    pub(super) fn now<'a>(document: &'a Document, findings: usize) -> Now<'a> {
        let session = &document.session;
        let plan = session.plan();
        let opening = session.tool() == editor::ToolKind::Door
            || session.selection().iter().any(|id| {
                let body = plan.get(*id).map(|e| &e.body);
                matches!(body, Some(plan::Body::Opening(o)) if o.door().is_some())
            });
        Now {
            undo: session.can_undo(),
            redo: session.can_redo(),
            selected: session.selection().len(),
            elements: plan.elements().len(),
            findings,
            unsaved: document.unsaved(),
            opening,
            room_tag: session.selection().len() == 1
                && session.selection().iter().any(|id| {
                    matches!(plan.get(*id).map(|e| &e.body), Some(plan::Body::RoomTag(_)))
                }),
        }
    }

    fn frame(&mut self, ui: &mut Ui) {
        let mut acts = Vec::new();
        self.shortcuts(ui.ctx(), &mut acts);
        let checked = self.document.session.checked();
        let open = checked.findings.iter().filter(|f| f.set_aside.is_none()).count();
        let name = self.document.name();
        let now = App::now(&self.document, open);
        let (undo, redo) = (now.undo.map(str::to_owned), now.redo.map(str::to_owned));
        let now = Now { undo: undo.as_deref(), redo: redo.as_deref(), ..now };
        self.look_for_room(ui.ctx());
        if self.view.listed == Listed::Sheets {
            self.view.wanted.system = self.document.session.system();
            self.sheeting.tend(ui.ctx(), &checked, &self.view.wanted);
        }
        let set = self.sheeting.set();
        let mut cx = Cx {
            session: &mut self.document.session,
            checked: &checked,
            view: &mut self.view,
            acts: &mut acts,
            preview: self.preview.as_ref(),
            moving: self.moving.known(),
        };
        let fill = ui.visuals().panel_fill;
        let pane = |x: i8, y: i8| Frame::new().fill(fill).inner_margin(Margin::symmetric(x, y));
        Panel::top("menu").frame(pane(8, 3)).show(ui, |ui| {
            panes::menu::show(ui, &mut cx, &now, &name);
        });
        Panel::bottom("status").frame(pane(10, 3)).show(ui, |ui| {
            panes::status::show(ui, &mut cx, self.notice.as_deref());
        });
        Panel::left("kit").frame(pane(10, 0)).default_size(224.0).size_range(196.0..=320.0).show(
            ui,
            |ui| {
                ui.take_available_space();
                panes::kit::show(ui, &mut cx);
            },
        );
        let mut wanted = Vec::new();
        let right = Panel::right("findings").frame(pane(10, 6));
        right.default_size(336.0).size_range(280.0..=460.0).show(ui, |ui| {
            ui.take_available_space();
            wanted = right_pane(ui, &mut cx, &self.remedies, set.as_ref());
        });
        CentralPanel::no_frame().show(ui, |ui| {
            let busy = !self.dialogs.is_empty();
            canvas::show(ui, &mut cx, &mut self.canvas, &now, busy);
        });
        self.try_remedies(ui.ctx(), &checked, &wanted);
        self.dialogs(ui.ctx());
        self.run(ui.ctx(), acts);
        self.apply_look(ui.ctx());
    }

    /// Asks where the sheets of the plan as it is now are to be written.
    pub(super) fn export_sheets(&mut self) {
        let checked = self.document.session.checked();
        self.view.wanted.system = self.document.session.system();
        let set = Sheeting::fresh(&checked, &self.view.wanted);
        let site = checked.facts.plan.site.clone();
        let export = super::dialogs::Export::of(set, site, self.document.path());
        self.dialogs.push(Dialog::Export(Box::new(export)));
    }

    /// Looks where the selected element may go, and lets a drag stick to its limits.
    fn look_for_room(&mut self, ctx: &Context) {
        let session = &mut self.document.session;
        let mut selected = session.selection().iter().copied();
        let one = match (selected.next(), selected.next(), session.tool()) {
            (Some(id), None, editor::ToolKind::Select) => Some(id),
            _ => None,
        };
        let plan = std::sync::Arc::clone(session.plan());
        self.moving.tend(ctx, &plan, one);
        let known = self.moving.known();
        let stops = known.found.iter().flat_map(|found| {
            let [low, high] = found.breaks();
            let course = found.course;
            [low, high].into_iter().flatten().map(move |ends| editor::Stop { course, at: ends.at })
        });
        session.set_stops(stops.collect());
    }

    /// Makes remedies while nothing moves.
    fn try_remedies(&mut self, ctx: &Context, checked: &editor::Checked, wanted: &[FindingKey]) {
        if self.document.session.busy() || self.preview.is_some() {
            return;
        }
        if self.remedies.work(&checked.facts, wanted, &checked.findings) {
            ctx.request_repaint();
        }
        let picked = self.view.picked.as_ref();
        let picked =
            picked.and_then(|key| checked.findings.iter().map(|f| &**f).find(|f| key.is(f)));
        if let Some((key, remedy)) = self.smallest.tend(ctx, &checked.facts, picked)
            && self.remedies.add(&key, remedy)
        {
            ctx.request_repaint();
        }
    }

    fn set_title(&mut self, ctx: &Context) {
        let mark = if self.document.unsaved() { "• " } else { "" };
        let title = format!("{mark}{} – Cellarwright", self.document.name());
        if title != self.title {
            self.title.clone_from(&title);
            ctx.send_viewport_cmd(ViewportCommand::Title(title));
        }
    }
}

/// Findings above, inspector below; each with a scroll area of its own.
fn right_pane(
    ui: &mut Ui,
    cx: &mut Cx<'_>,
    remedies: &Remedies,
    set: Option<&std::sync::Arc<sheets::Set>>,
) -> Vec<FindingKey> {
    let mut wanted = Vec::new();
    let height = ui.available_height();
    let inspector = Panel::bottom("inspector")
        .frame(Frame::new().inner_margin(Margin { top: 6, ..Margin::ZERO }))
        .default_size(height * 0.44)
        .size_range(120.0..=(height - 140.0).max(130.0));
    inspector.resizable(true).show(ui, |ui| {
        ui.take_available_space();
        egui::ScrollArea::vertical().id_salt("inspector").auto_shrink(false).show(ui, |ui| {
            inspector::show(ui, cx);
            ui.add_space(8.0);
        });
    });
    let open = cx.checked.findings.iter().filter(|f| f.set_aside.is_none()).count();
    ui.horizontal(|ui| {
        for (listed, word) in [
            (Listed::Findings, format!("Findings ({open})")),
            (Listed::Ways, "Ways in".to_owned()),
            (Listed::Headroom, "Headroom".to_owned()),
            (Listed::Sheets, "Sheets".to_owned()),
        ] {
            let chosen = cx.view.listed == listed;
            let text = egui::RichText::new(word).font(theme::bold(theme::BODY + 1.0));
            if ui.add(egui::Button::selectable(chosen, text)).clicked() {
                cx.view.listed = listed;
            }
        }
    });
    let listed = cx.view.listed;
    egui::ScrollArea::vertical().id_salt(("list", listed)).auto_shrink(false).show(ui, |ui| {
        match listed {
            Listed::Findings => wanted = panes::findings::show(ui, cx, remedies),
            Listed::Ways => panes::ways::show(ui, cx),
            Listed::Headroom => panes::headroom::show(ui, cx),
            Listed::Sheets => panes::sheets::show(ui, cx, set),
        }
        ui.add_space(8.0);
    });
    wanted
}

impl eframe::App for App {
    fn logic(&mut self, ctx: &Context, _frame: &mut eframe::Frame) {
        if ctx.input(|i| i.viewport().close_requested()) {
            self.close_requested(ctx);
        }
        self.poll_files(ctx);
        if let Some(wait) = self.autosave.tend(&self.document) {
            ctx.request_repaint_after(wait + Duration::from_millis(20));
        }
        self.set_title(ctx);
    }

    fn ui(&mut self, ui: &mut Ui, _frame: &mut eframe::Frame) {
        let began = Instant::now();
        self.frame(ui);
        self.frames += 1;
        if self.start.tell.is_some() {
            told::place(ui.ctx(), self.canvas.corner, &self.view.camera);
        }
        if self.start.timing {
            self.timing.add(began.elapsed());
        }
        if self.start.quit_after_first_frame && self.frames == 1 {
            self.closing = true;
            ui.send_viewport_cmd(ViewportCommand::Close);
        }
    }

    fn raw_input_hook(&mut self, ctx: &Context, raw_input: &mut egui::RawInput) {
        self.held.append(&mut raw_input.events);
        let rest = one_at_a_time(&mut self.held);
        raw_input.events = std::mem::replace(&mut self.held, rest);
        if !self.held.is_empty() {
            ctx.request_repaint();
        }
    }

    fn clear_color(&self, visuals: &egui::Visuals) -> [f32; 4] {
        visuals.panel_fill.to_normalized_gamma_f32()
    }
}

/// Splits events so that no frame gets two presses: what the first one does is done before the second one
/// is looked at, however fast they come. Gives the events that must wait.
fn one_at_a_time(events: &mut Vec<Event>) -> Vec<Event> {
    let presses = |e: &Event| {
        matches!(
            e,
            Event::Key { pressed: true, .. }
                | Event::PointerButton { .. }
                | Event::Copy
                | Event::Cut
                | Event::Paste(_)
        )
    };
    let second = events.iter().enumerate().filter(|(_, e)| presses(e)).nth(1);
    let cut = second.map_or(events.len(), |(i, _)| i);
    events.split_off(cut)
}

impl Drop for App {
    fn drop(&mut self) {
        if self.start.timing {
            eprint!("{}", self.timing.report());
        }
    }
}

/// Pushes an act for a command.
pub(super) fn command(acts: &mut Vec<Act>, command: super::commands::Command) {
    acts.push(Act::Do(command));
}

#[cfg(test)]
mod tests {
    use egui::{Key, Modifiers};

    use super::*;

    #[test]
    fn two_presses_never_meet_in_one_frame() {
        let key = |key| Event::Key {
            key,
            physical_key: None,
            pressed: true,
            repeat: false,
            modifiers: Modifiers::NONE,
        };
        let text = Event::Text("4".into());
        let mut events = vec![key(Key::Num4), text.clone(), key(Key::Enter), key(Key::W)];
        let mut rest = one_at_a_time(&mut events);
        assert_eq!(events, [key(Key::Num4), text]);
        let last = one_at_a_time(&mut rest);
        assert_eq!(rest, [key(Key::Enter)]);
        assert_eq!(last, [key(Key::W)]);
    }
}
