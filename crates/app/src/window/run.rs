//! The one place where acts and commands are carried out and the document is written.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use editor::{Checked, EditorKey, Gesture, Mods, ToolKind};
use egui::{Context, Event, Key, Modifiers, ViewportCommand};
use geometry::{Bounds, Pt};
use measure::System;
use plan::{Edit, ElementId, Plan, SetAside};
use rules::Book;

use super::act::Act;
use super::app::{App, command};
use super::commands::{self, Command};
use super::dialogs::{self, Answer, Dialog};
use super::document::Document;
use super::files::{Pending, Purpose, Reply, Then, with_ending};
use super::sample;
use super::view::{FindingKey, View};
use crate::store;

/// A remedy shown on the plan before it is applied.
#[derive(Debug)]
pub struct Preview {
    pub finding: FindingKey,
    pub remedy: usize,
    /// The remedy in words.
    pub label: String,
    /// The plan with the remedy.
    pub checked: Checked,
}

impl App {
    /// Turns keys into commands. Keys that go on with a typed length stay with the plan.
    pub(super) fn shortcuts(&mut self, ctx: &Context, acts: &mut Vec<Act>) {
        if !self.dialogs.is_empty() || ctx.any_popup_open() {
            return;
        }
        let writing = ctx.text_edit_focused();
        let typing = self.document.session.entry().is_some_and(|e| !e.text.is_empty());
        ctx.input_mut(|input| {
            for (shortcut, wanted) in commands::shortcuts() {
                let plain = shortcut.modifiers == Modifiers::NONE;
                let own_key = matches!(shortcut.logical_key, Key::F1 | Key::F8);
                if (writing && !own_key && (plain || belongs_to_text(wanted)))
                    || (typing && plain && !own_key)
                {
                    continue;
                }
                // Copy, cut and paste come as events of their own.
                if matches!(wanted, Command::Copy | Command::Cut | Command::Paste) {
                    continue;
                }
                if input.consume_shortcut(&shortcut) {
                    command(acts, wanted);
                }
            }
            if !writing {
                input.events.retain(|event| match event {
                    Event::Copy => keep_none(acts, Act::Do(Command::Copy)),
                    Event::Cut => keep_none(acts, Act::Do(Command::Cut)),
                    Event::Paste(text) => keep_none(acts, Act::Paste(text.clone())),
                    _ => true,
                });
            }
        });
    }

    /// Carries acts out, in order.
    pub(super) fn run(&mut self, ctx: &Context, acts: Vec<Act>) {
        for act in acts {
            if !matches!(act, Act::Do(Command::Look(_)) | Act::Preview { .. }) {
                self.notice = None;
            }
            self.act(ctx, act);
        }
    }

    fn act(&mut self, ctx: &Context, act: Act) {
        match act {
            Act::Do(command) => self.command(ctx, command),
            Act::Edit { label, edit } => {
                if let Err(why) = self.document.session.apply(&label, &edit) {
                    self.notice = Some(why.to_string());
                }
            }
            Act::Select(ids) => {
                self.document.session.set_tool(ToolKind::Select);
                self.document.session.select(ids);
            }
            Act::ShowFinding(key) => self.show_finding(key),
            Act::PickFinding(key) => self.pick_finding(key),
            Act::LookAt(bounds) => self.view.look_at(bounds),
            Act::Preview { finding, remedy } => self.start_preview(finding, remedy),
            Act::EndPreview => self.preview = None,
            Act::Show(dialog) => self.dialogs.push(dialog),
            Act::Paste(text) => {
                if let Err(why) = self.document.session.paste(&text) {
                    self.notice = Some(why);
                }
            }
            Act::Notice(text) => self.notice = Some(text),
        }
    }

    fn command(&mut self, ctx: &Context, command: Command) {
        let findings = self.document.session.checked().findings;
        let open = findings.iter().filter(|f| f.set_aside.is_none()).count();
        if !command.enabled(&App::now(&self.document, open)) {
            return;
        }
        if !matches!(command, Command::Look(_) | Command::Toggle(_)) {
            self.preview = None;
        }
        let session = &mut self.document.session;
        match command {
            Command::New => self.ask_then(ctx, Then::New),
            Command::Open => self.ask_then(ctx, Then::Open),
            Command::OpenDemo => self.ask_then(ctx, Then::Sample),
            Command::Save => self.save(ctx, Then::Stay),
            Command::SaveAs => self.ask_file(ctx, Purpose::Save, Then::Stay),
            Command::Quit => self.ask_then(ctx, Then::Quit),
            Command::Undo => {
                session.undo();
            }
            Command::Redo => {
                session.redo();
            }
            Command::Cut => {
                if let Some(text) = session.copy_selected() {
                    ctx.copy_text(text);
                    session.delete_selected();
                }
            }
            Command::Copy => {
                if let Some(text) = session.copy_selected() {
                    ctx.copy_text(text);
                }
            }
            // The menu asks the system for the clipboard; what it holds comes as an event.
            Command::Paste => ctx.send_viewport_cmd(ViewportCommand::RequestPaste),
            Command::Duplicate => session.duplicate_selected(),
            Command::Delete => session.delete_selected(),
            Command::SelectAll => {
                session.set_tool(ToolKind::Select);
                session.select_all();
            }
            Command::NextElement => session.select_next(false),
            Command::PreviousElement => session.select_next(true),
            Command::FlipHinge => key(session, EditorKey::FlipHinge),
            Command::FlipSwing => key(session, EditorKey::FlipSwing),
            Command::Turn => key(session, EditorKey::Turn),
            Command::Fit => self.view.fit_wanted = true,
            Command::FitSelection => self.fit_selection(),
            Command::ZoomIn => self.zoom(1.25),
            Command::ZoomOut => self.zoom(0.8),
            Command::Toggle(toggle) => {
                self.view.flip(toggle);
                session.set_hidden(self.view.hidden());
            }
            Command::Look(look) => self.view.look = look,
            Command::Imperial => session.set_system(System::Imperial),
            Command::Metric => session.set_system(System::Metric),
            Command::Tool(tool) => session.set_tool(tool),
            Command::SiteFacts => {
                let site = session.plan().site.clone();
                self.dialogs.push(Dialog::Site(Box::new(site)));
            }
            Command::NextFinding => self.next_finding(),
            Command::Keys => self.dialogs.push(Dialog::Keys),
            Command::Cautions => self.dialogs.push(Dialog::Cautions),
            Command::About => self.dialogs.push(Dialog::About),
        }
    }

    fn zoom(&mut self, factor: f64) {
        let camera = self.view.camera;
        let about = match self.view.pointer {
            Some(p) => camera.screen_from_plan(p),
            None => drawing::P::new(camera.size.0 / 2.0, camera.size.1 / 2.0),
        };
        self.view.camera = camera.zoomed(about, factor);
    }

    fn fit_selection(&mut self) {
        let ids: Vec<ElementId> = self.document.session.selection().iter().copied().collect();
        let checked = self.document.session.checked();
        self.view.look_at(bounds_of(&checked, &ids));
    }

    /// Selects what a finding is about and brings its place into sight.
    fn show_finding(&mut self, key: FindingKey) {
        let checked = self.document.session.checked();
        let Some(finding) = checked.findings.iter().find(|f| key.is(f)) else { return };
        let mut points: Vec<Pt> = finding.places.iter().flat_map(place_points).collect();
        if points.is_empty() {
            let bounds = bounds_of(&checked, &finding.elements);
            points.extend([bounds.min, bounds.max]);
        }
        self.view.look_at(Bounds::of(points));
        self.pick_finding(key);
    }

    fn pick_finding(&mut self, key: FindingKey) {
        self.document.session.set_tool(ToolKind::Select);
        self.document.session.select(key.elements.iter().copied());
        self.view.picked = Some(key);
        self.view.reveal = true;
    }

    fn next_finding(&mut self) {
        let checked = self.document.session.checked();
        let open: Vec<FindingKey> =
            checked.findings.iter().filter(|f| f.set_aside.is_none()).map(FindingKey::of).collect();
        let now = self.view.picked.as_ref().and_then(|k| open.iter().position(|o| o == k));
        let next = now.map_or(0, |i| (i + 1) % open.len().max(1));
        if let Some(key) = open.get(next) {
            self.show_finding(key.clone());
        }
    }

    fn start_preview(&mut self, finding: FindingKey, remedy: usize) {
        let system = self.document.session.system();
        let wanted = self.remedies.of(&finding).remedies.get(remedy);
        let Some((edit, label)) = wanted.map(|r| (r.edit.clone(), r.label.say(system))) else {
            return;
        };
        match self.document.session.plan().with(&edit) {
            Ok(plan) => {
                let checked = check(Arc::new(plan));
                self.preview = Some(Preview { finding, remedy, label, checked });
            }
            Err(why) => self.notice = Some(why.to_string()),
        }
    }

    // --- dialogs ---

    pub(super) fn dialogs(&mut self, ctx: &Context) {
        let system = self.document.session.system();
        let Some(dialog) = self.dialogs.last_mut() else { return };
        if let Some(answer) = dialogs::show(ctx, dialog, system) {
            self.answer(ctx, answer);
        }
    }

    fn answer(&mut self, ctx: &Context, answer: Answer) {
        // A list of recovery copies stays up until it is empty or left.
        let Some(dialog) = self.dialogs.pop() else { return };
        match (answer, dialog) {
            (Answer::Leave, _) => {}
            (Answer::Save(then), _) => self.save(ctx, then),
            (Answer::DontSave(then), _) => self.go_on(ctx, then),
            (Answer::Open(path), _) => {
                self.pending = None;
                self.open(path);
            }
            (Answer::SaveTo(path, then), _) => {
                self.pending = None;
                self.save_to(ctx, path, then);
            }
            (Answer::Replace(path, then), _) => self.write(ctx, path, None, then),
            (Answer::Site(site), _) => {
                self.act(
                    ctx,
                    Act::Edit { label: "Change site facts".to_owned(), edit: Edit::Site(site) },
                );
            }
            (Answer::SetAside { finding, reason }, _) => {
                let edit = Edit::SetAside(SetAside {
                    rule: finding.rule.to_owned(),
                    elements: finding.elements,
                    reason,
                });
                self.act(ctx, Act::Edit { label: "Set a finding aside".to_owned(), edit });
            }
            (Answer::Recover(i), Dialog::Recovery(mut orphans)) => {
                if i < orphans.len() {
                    let orphan = orphans.remove(i);
                    self.replace_document(Document::recovered(orphan.plan.clone()));
                    // The copy of this window takes its place.
                    if self.autosave.copy_now(&self.document)
                        && let Err(why) = orphan.discard()
                    {
                        log::warn!("{}: {why}", orphan.copy.display());
                    }
                }
            }
            (Answer::Discard(i), Dialog::Recovery(mut orphans)) => {
                if i < orphans.len()
                    && let Err(why) = orphans.remove(i).discard()
                {
                    self.notice = Some(format!("The copy could not be deleted: {why}."));
                }
                if !orphans.is_empty() {
                    self.dialogs.push(Dialog::Recovery(orphans));
                }
            }
            (Answer::Recover(_) | Answer::Discard(_), _) => {}
        }
    }

    // --- files ---

    /// Asks about unsaved work, then goes on.
    pub(super) fn ask_then(&mut self, ctx: &Context, then: Then) {
        if self.document.unsaved() {
            let name = self.document.name();
            self.dialogs.push(Dialog::Unsaved { name, then });
        } else {
            self.go_on(ctx, then);
        }
    }

    fn go_on(&mut self, ctx: &Context, then: Then) {
        match then {
            Then::Stay => {}
            Then::New => self.replace_document(Document::empty()),
            Then::Sample => self.open_sample(),
            Then::Open => self.ask_file(ctx, Purpose::Open, Then::Stay),
            Then::OpenPath(path) => self.open(path),
            Then::Quit => {
                self.autosave.clear(&self.document);
                self.closing = true;
                ctx.send_viewport_cmd(ViewportCommand::Close);
            }
        }
    }

    /// The window is about to close: asks about unsaved work first.
    pub(super) fn close_requested(&mut self, ctx: &Context) {
        if self.closing {
            return;
        }
        if !self.document.unsaved() {
            self.autosave.clear(&self.document);
            self.closing = true;
            return;
        }
        ctx.send_viewport_cmd(ViewportCommand::CancelClose);
        let asked = self.dialogs.iter().any(|d| matches!(d, Dialog::Unsaved { .. }));
        if !asked {
            self.ask_then(ctx, Then::Quit);
        }
    }

    fn replace_document(&mut self, mut document: Document) {
        document.session.set_system(self.document.session.system());
        document.session.set_hidden(self.view.hidden());
        self.document = document;
        self.preview = None;
        self.notice = None;
        self.view.picked = None;
        self.view.lit = None;
        self.view.fit_wanted = true;
        self.canvas = Default::default();
        if !self.document.unsaved() {
            self.autosave.clear(&self.document);
        }
    }

    pub(super) fn open_sample(&mut self) {
        match sample::first() {
            Ok(plan) => self.replace_document(Document::sample(plan)),
            Err(why) => self.problem("The sample plan could not be opened", why),
        }
    }

    pub(super) fn open(&mut self, path: PathBuf) {
        match store::open(&path) {
            Ok(opened) => {
                self.replace_document(Document::opened(opened.plan, path, opened.stamp));
            }
            Err(why) => self.problem("The plan could not be opened", why.to_string()),
        }
    }

    fn problem(&mut self, title: &'static str, text: String) {
        self.dialogs.push(Dialog::Problem { title, text });
    }

    fn save(&mut self, ctx: &Context, then: Then) {
        match self.document.file.clone() {
            Some(file) => self.write(ctx, file.path, file.stamp, then),
            None => self.ask_file(ctx, Purpose::Save, then),
        }
    }

    fn save_to(&mut self, ctx: &Context, path: PathBuf, then: Then) {
        let path = with_ending(path);
        let own = self.document.path().is_some_and(|p| p == path);
        if path.exists() && !own {
            self.dialogs.push(Dialog::Replace { path, then });
        } else {
            self.write(ctx, path, None, then);
        }
    }

    fn write(&mut self, ctx: &Context, path: PathBuf, stamp: Option<store::Stamp>, then: Then) {
        let plan: Arc<Plan> = Arc::clone(self.document.session.plan());
        let written = match stamp {
            Some(stamp) => store::save_unchanged(&path, &plan, stamp),
            None => store::save(&path, &plan),
        };
        match written {
            Ok(stamp) => {
                self.document.now_saved(plan, path, stamp);
                self.autosave.clear(&self.document);
                self.go_on(ctx, then);
            }
            Err(why) => self.problem("The plan could not be saved", why.to_string()),
        }
    }

    fn ask_file(&mut self, ctx: &Context, purpose: Purpose, then: Then) {
        if self.pending.is_none() {
            let near = self.document.path().map(ToOwned::to_owned);
            self.pending = Some(Pending::start(ctx, purpose, then, near.as_deref()));
        }
    }

    /// Looks whether the system's file dialog has an answer, and takes dropped files.
    pub(super) fn poll_files(&mut self, ctx: &Context) {
        let dropped = ctx.input(|i| i.raw.dropped_files.first().map(|f| f.path().to_owned()));
        if let Some(path) = dropped {
            self.ask_then(ctx, Then::OpenPath(path));
        }
        let Some(pending) = &mut self.pending else { return };
        let (purpose, then) = (pending.purpose, pending.then.clone());
        match pending.poll() {
            Reply::Waiting => {
                ctx.request_repaint_after(pending.slow_in());
                return;
            }
            Reply::Slow => {
                if !std::mem::replace(&mut pending.offered, true) {
                    self.ask_path(purpose, then, "No file dialog in sight? Type the path here.");
                }
                return;
            }
            Reply::Chosen(path) => {
                self.dialogs.retain(|d| !matches!(d, Dialog::Path { .. }));
                match purpose {
                    Purpose::Open => self.open(path),
                    Purpose::Save => self.save_to(ctx, path, then),
                }
            }
            Reply::Cancelled => {}
            Reply::Missing => {
                self.ask_path(purpose, then, "This system offers no file dialog; type the path.");
            }
        }
        self.pending = None;
    }

    fn ask_path(&mut self, purpose: Purpose, then: Then, why: &'static str) {
        let near = self.document.path().map(Path::to_owned);
        let folder = || std::env::current_dir().unwrap_or_default();
        let path = near.unwrap_or_else(|| match purpose {
            Purpose::Save => folder().join("plan.ron"),
            Purpose::Open => folder().join(""),
        });
        let text = path.display().to_string();
        self.dialogs.push(Dialog::Path { purpose, then, text, why });
    }
}

fn key(session: &mut editor::Session, key: EditorKey) {
    session.feed(&Gesture::Key { key, mods: Mods::default() });
}

/// In a text field these keep their usual meaning for the text.
fn belongs_to_text(command: Command) -> bool {
    matches!(
        command,
        Command::Undo
            | Command::Redo
            | Command::Cut
            | Command::Copy
            | Command::Paste
            | Command::SelectAll
            | Command::FitSelection
    )
}

fn keep_none(acts: &mut Vec<Act>, act: Act) -> bool {
    acts.push(act);
    false
}

/// Facts and findings of a plan.
fn check(plan: Arc<Plan>) -> Checked {
    let facts = Arc::new(space::derive(&plan));
    let book = Book::model(plan.site.edition);
    Checked {
        findings: Arc::new(rules::check(&facts, &book)),
        keep_clears: Arc::new(rules::keep_clears(&facts, &book)),
        facts,
    }
}

fn place_points(place: &rules::Place) -> Vec<Pt> {
    match place {
        rules::Place::Point(p) => vec![*p],
        rules::Place::Span(a, b) => vec![*a, *b],
        rules::Place::Area(ring) => ring.clone(),
        rules::Place::Breach { keep_clear, .. } => keep_clear.clone(),
    }
}

/// The box around elements, as far as they take up space.
pub(super) fn bounds_of(checked: &Checked, ids: &[ElementId]) -> Bounds {
    let facts = &checked.facts;
    let mut points: Vec<Pt> = Vec::new();
    for id in ids {
        let solids = facts.solids.iter().filter(|s| s.element == *id);
        points.extend(solids.flat_map(|s| s.ring.iter().copied()));
        if let Some(opening) = facts.opening(*id) {
            points.extend(opening.quad);
        }
        let overheads = facts.overheads.iter().filter(|o| o.id == *id);
        points.extend(overheads.flat_map(|o| o.ring.iter().copied()));
        if let Some(element) = facts.plan.get(*id) {
            points.extend(element.body.points());
        }
    }
    Bounds::of(points)
}

impl View {
    /// Brings a box into sight: moves the picture as little as needed, and makes it smaller where it must.
    pub(super) fn look_at(&mut self, bounds: Bounds) {
        if bounds.is_empty() {
            return;
        }
        let camera = self.camera;
        let fitted = depict::View::fit(bounds, camera.size, 120.0);
        // Never nearer than a comfortable reading of the whole neighbourhood, never farther than needed.
        let most = 6.0 / f64::from(measure::Len::PER_INCH);
        let scale = fitted.scale.min(camera.scale.max(most / 2.0)).min(most);
        let middle =
            fitted.plan_from_screen(drawing::P::new(camera.size.0 / 2.0, camera.size.1 / 2.0));
        self.camera = depict::View {
            scale,
            origin: (
                f64::from(middle.x) - f64::from(camera.size.0) / 2.0 / scale,
                f64::from(middle.y) + f64::from(camera.size.1) / 2.0 / scale,
            ),
            size: camera.size,
        };
    }
}
