//! Where acts and commands are carried out: the one place that changes the session, the view and the
//! dialogs. Files are written in `saving.rs`, findings are looked at in `looking.rs`.

use editor::{EditorKey, Gesture, Mods, ToolKind};
use egui::{Context, Event, Key, Modifiers, ViewportCommand};
use measure::System;
use plan::{Body, Edit, SetAside};

use super::act::Act;
use super::app::{App, command};
use super::commands::{self, Command};
use super::dialogs::{self, Answer, Carrying, Compare, Dialog, RuleBook, SiteForm};
use super::document::Document;
use super::files::{Purpose, Then};

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
            Act::Show(mut dialog) => {
                // What was written before the dialog was left is there again.
                if let Dialog::SetAside { finding, reason, .. } = &mut dialog
                    && let Some((_, unsaid)) = self.unsaid.take_if(|(of, _)| of == finding)
                {
                    *reason = unsaid;
                }
                self.dialogs.push(dialog);
            }
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
                self.dialogs.push(Dialog::Site(Box::new(SiteForm::of(site))));
            }
            Command::TitleBlock => {
                let site = session.plan().site.clone();
                self.dialogs.push(Dialog::TitleBlock(Box::new(site)));
            }
            Command::Compare => {
                let tag = session.selection().iter().next().copied();
                if let Some(compare) = tag.and_then(|tag| Compare::of(session.plan(), tag)) {
                    self.dialogs.push(Dialog::Compare(Box::new(compare)));
                }
            }
            Command::NextFinding => self.next_finding(),
            Command::Carry => {
                let facts = session.checked().facts;
                self.dialogs.push(Dialog::Carry(Box::new(Carrying::of(&facts))));
            }
            Command::Sheets => self.view.listed = super::view::Listed::Sheets,
            Command::ExportSheets => self.export_sheets(),
            Command::Rules => {
                let picked = self.view.picked.as_ref().map(|key| key.rule);
                self.dialogs.push(Dialog::Rules(Box::new(RuleBook::at(picked))));
            }
            Command::Keys => self.dialogs.push(Dialog::Keys),
            Command::Cautions => self.dialogs.push(Dialog::Cautions),
            Command::About => self.dialogs.push(Dialog::About),
        }
    }

    pub(super) fn dialogs(&mut self, ctx: &Context) {
        let system = self.document.session.system();
        let Some(dialog) = self.dialogs.last_mut() else { return };
        if let Some(answer) = dialogs::show(ctx, dialog, system, self.view.look) {
            self.answer(ctx, answer);
        }
    }

    fn answer(&mut self, ctx: &Context, answer: Answer) {
        // A list of recovery copies stays up until it is empty or left.
        let Some(dialog) = self.dialogs.pop() else { return };
        match (answer, dialog) {
            (Answer::Leave, Dialog::SetAside { finding, reason, .. }) if !reason.is_empty() => {
                self.unsaid = Some((finding, reason));
            }
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
            (Answer::Use(element), _) => {
                let word = match &element.body {
                    Body::RoomTag(tag) => tag.room_use.word(),
                    _ => "other",
                };
                let label = format!("Make {} a room of use {word}", element.name());
                self.act(ctx, Act::Edit { label, edit: Edit::Replace(*element) });
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
