//! The document and its file: opening, saving, and what is asked before unsaved work would be lost.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use egui::{Context, ViewportCommand};
use plan::Plan;

use super::app::App;
use super::dialogs::Dialog;
use super::document::Document;
use super::files::{Pending, Purpose, Reply, Then, with_ending};
use super::sample;
use crate::store;

impl App {
    /// Asks about unsaved work, then goes on.
    pub(super) fn ask_then(&mut self, ctx: &Context, then: Then) {
        if self.document.unsaved() {
            let name = self.document.name();
            self.dialogs.push(Dialog::Unsaved { name, then });
        } else {
            self.go_on(ctx, then);
        }
    }

    pub(super) fn go_on(&mut self, ctx: &Context, then: Then) {
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

    pub(super) fn replace_document(&mut self, mut document: Document) {
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

    pub(super) fn problem(&mut self, title: &'static str, text: String) {
        self.dialogs.push(Dialog::Problem { title, text });
    }

    pub(super) fn save(&mut self, ctx: &Context, then: Then) {
        match self.document.file.clone() {
            Some(file) => self.write(ctx, file.path, file.stamp, then),
            None => self.ask_file(ctx, Purpose::Save, then),
        }
    }

    pub(super) fn save_to(&mut self, ctx: &Context, path: PathBuf, then: Then) {
        let path = with_ending(path);
        let own = self.document.path().is_some_and(|p| p == path);
        if path.exists() && !own {
            self.dialogs.push(Dialog::Replace { path, then });
        } else {
            self.write(ctx, path, None, then);
        }
    }

    pub(super) fn write(
        &mut self,
        ctx: &Context,
        path: PathBuf,
        stamp: Option<store::Stamp>,
        then: Then,
    ) {
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

    pub(super) fn ask_file(&mut self, ctx: &Context, purpose: Purpose, then: Then) {
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

    pub(super) fn ask_path(&mut self, purpose: Purpose, then: Then, why: &'static str) {
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
