//! Dialogs: what must be asked before going on. One is up at a time.

mod amendments;
mod ask;
mod carrying;
mod compare;
mod export;
mod help;
mod path;
mod recovery;
mod rule_book;
mod sheet;
mod site;
mod title_block;

use std::path::PathBuf;

use egui::{Context, Frame, Id, Key, Margin, Modal, RichText, Ui};
use measure::System;
use plan::{Element, Site};

use super::files::{Purpose, Then};
use super::theme::Look;
use super::view::FindingKey;
use crate::store::Orphan;

pub use carrying::Carrying;
pub use compare::Compare;
pub use export::Export;
pub use rule_book::RuleBook;
pub use sheet::SheetPage;
pub use site::SiteForm;

/// A dialog and what has been entered in it.
#[derive(Debug)]
pub enum Dialog {
    /// Unsaved work, before something that would lose it.
    Unsaved {
        name: String,
        then: Then,
    },
    /// Something went wrong.
    Problem {
        title: &'static str,
        text: String,
    },
    /// Recovery copies found at the start.
    Recovery(Vec<Orphan>),
    Site(Box<SiteForm>),
    TitleBlock(Box<Site>),
    Compare(Box<Compare>),
    Rules(Box<RuleBook>),
    Carry(Box<Carrying>),
    Sheet(Box<SheetPage>),
    Export(Box<Export>),
    SetAside {
        finding: FindingKey,
        title: String,
        reason: String,
    },
    /// A field for the path, where the system's file dialog can't be used.
    Path {
        purpose: Purpose,
        then: Then,
        text: String,
        why: &'static str,
    },
    /// The file is there already.
    Replace {
        path: PathBuf,
        then: Then,
    },
    Keys,
    Cautions,
    About,
}

/// What was answered.
#[derive(Debug)]
pub enum Answer {
    /// The dialog goes and nothing else happens.
    Leave,
    Save(Then),
    DontSave(Then),
    Open(PathBuf),
    SaveTo(PathBuf, Then),
    /// Like [`Answer::SaveTo`], and what is there may be replaced.
    Replace(PathBuf, Then),
    /// Opens the recovery copy with this index.
    Recover(usize),
    /// Deletes the recovery copy with this index.
    Discard(usize),
    Site(Box<Site>),
    /// The room tag with its new use.
    Use(Box<Element>),
    SetAside {
        finding: FindingKey,
        reason: String,
    },
}

/// Shows a dialog; gives the answer once there is one.
pub fn show(ctx: &Context, dialog: &mut Dialog, system: System, look: Look) -> Option<Answer> {
    let width: f32 = match dialog {
        Dialog::Keys | Dialog::Compare(_) => 620.0,
        Dialog::Rules(_) => 820.0,
        Dialog::Sheet(_) => f32::INFINITY,
        Dialog::Unsaved { .. } | Dialog::Replace { .. } => 380.0,
        _ => 470.0,
    };
    let frame = Frame::popup(&ctx.global_style()).inner_margin(Margin::same(18));
    let shown = Modal::new(Id::unique("dialog")).frame(frame).show(ctx, |ui| {
        ui.set_width(width.min(ui.ctx().content_rect().width() - 48.0));
        ui.spacing_mut().item_spacing.y = 7.0;
        match dialog {
            Dialog::Unsaved { name, then } => ask::unsaved(ui, name, then),
            Dialog::Problem { title, text } => ask::problem(ui, title, text),
            Dialog::Recovery(orphans) => recovery::show(ui, orphans),
            Dialog::Site(form) => site::show(ui, form, system),
            Dialog::TitleBlock(site) => title_block::show(ui, site, system),
            Dialog::Compare(compare) => compare::show(ui, compare, system, look),
            Dialog::Sheet(page) => sheet::show(ui, page),
            Dialog::Export(export) => export::show(ui, export),
            Dialog::Carry(carrying) => carrying::show(ui, carrying, system, look),
            Dialog::Rules(book) => rule_book::show(ui, book, system, look),
            Dialog::SetAside { finding, title, reason } => {
                ask::set_aside(ui, finding, title, reason)
            }
            Dialog::Path { purpose, then, text, why } => path::show(ui, *purpose, then, text, why),
            Dialog::Replace { path, then } => ask::replace(ui, path, then),
            Dialog::Keys => help::keys(ui),
            Dialog::Cautions => help::cautions(ui),
            Dialog::About => help::about(ui),
        }
    });
    if shown.inner.is_none() && ctx.input(|i| i.key_pressed(Key::Escape)) && !shown.any_popup_open {
        return Some(Answer::Leave);
    }
    shown.inner
}

fn heading(ui: &mut Ui, text: &str) {
    ui.add(egui::Label::new(RichText::new(text).heading()).wrap());
}

/// The row of buttons at the foot; gives the index of the one that was pressed. The first stands at
/// the right and is pressed by Enter.
fn foot(ui: &mut Ui, words: &[&str]) -> Option<usize> {
    let mut pressed = None;
    ui.add_space(6.0);
    let layout = egui::Layout::right_to_left(egui::Align::Center);
    ui.allocate_ui_with_layout(
        egui::vec2(ui.available_width(), ui.spacing().interact_size.y),
        layout,
        |ui| {
            for (i, word) in words.iter().enumerate() {
                let mut button = egui::Button::new(*word);
                if i == 0 {
                    let ink = ui.visuals().selection.stroke;
                    button = button.fill(ui.visuals().selection.bg_fill).stroke(ink);
                }
                if ui.add(button).clicked() {
                    pressed = Some(i);
                }
            }
        },
    );
    let enter = ui.input(|i| i.key_pressed(Key::Enter)) && ui.memory(|m| m.focused().is_none());
    if enter { pressed.or(Some(0)) } else { pressed }
}
