//! Writing the sheets: where, as what, and how far it is.

use std::path::{Path, PathBuf};
use std::sync::{Arc, PoisonError};

use egui::{Label, ProgressBar, RichText, TextEdit, Ui};
use plan::Site;
use sheets::Set;

use super::super::moving::Job;
use super::{Answer, foot, heading};
use crate::export::{self, Format};

/// What is known of the writing.
#[derive(Clone, Debug, Default)]
struct State {
    done: usize,
    end: Option<Result<Vec<PathBuf>, String>>,
}

/// What is entered, and the writing once it has begun.
#[derive(Debug)]
pub struct Export {
    set: Arc<Set>,
    site: Site,
    stem: String,
    folder: String,
    formats: [(Format, bool); 3],
    job: Option<Job<State>>,
}

impl Export {
    /// Into a folder beside the plan, as PDF.
    pub fn of(set: Arc<Set>, site: Site, plan: Option<&Path>) -> Export {
        let stem = plan.and_then(Path::file_stem).map(|s| s.to_string_lossy().into_owned());
        let stem = stem.unwrap_or_else(|| "basement".to_owned());
        let beside = plan.and_then(Path::parent).map(Path::to_owned).unwrap_or_default();
        let folder = beside.join(format!("{stem}-sheets")).display().to_string();
        let formats = [(Format::Pdf, true), (Format::Svg, false), (Format::Png, false)];
        Export { set, site, stem, folder, formats, job: None }
    }

    fn chosen(&self) -> Vec<Format> {
        self.formats.iter().filter(|(_, on)| *on).map(|(f, _)| *f).collect()
    }

    fn steps(&self) -> usize {
        self.chosen().len() * self.set.sheets.len()
    }

    fn start(&mut self, ctx: &egui::Context) {
        let (set, site, stem) = (Arc::clone(&self.set), self.site.clone(), self.stem.clone());
        let (folder, formats, ctx) =
            (PathBuf::from(self.folder.trim()), self.chosen(), ctx.clone());
        self.job = Some(Job::start(move |_, result| {
            let state = |change: &dyn Fn(&mut State)| {
                change(&mut result.lock().unwrap_or_else(PoisonError::into_inner));
                ctx.request_repaint();
            };
            let mut progress = || state(&|s| s.done += 1);
            let end = export::write(&set, &site, (&folder, &stem), &formats, &mut progress);
            let end = end.map_err(|e| e.to_string());
            state(&|s| s.end = Some(end.clone()));
        }));
    }
}

pub fn show(ui: &mut Ui, export: &mut Export) -> Option<Answer> {
    heading(ui, "Export the sheets");
    let Some(state) = export.job.as_ref().map(|job| job.read(State::clone)) else {
        return entries(ui, export);
    };
    match &state.end {
        None => {
            let part = state.done as f32 / export.steps().max(1) as f32;
            let text = format!("{} of {} sheets", state.done, export.steps());
            ui.add(ProgressBar::new(part).text(text));
            None
        }
        Some(Ok(files)) => {
            ui.label("Written:");
            egui::ScrollArea::vertical().max_height(260.0).show(ui, |ui| {
                for file in files {
                    ui.add(Label::new(file.display().to_string()).wrap());
                }
            });
            let text =
                "Print at 100 %, actual size, without fitting; check the 1 in bar with a ruler.";
            ui.add(Label::new(RichText::new(text).weak()).wrap());
            foot(ui, &["Close"]).map(|_| Answer::Leave)
        }
        Some(Err(why)) => {
            ui.add(Label::new(RichText::new(why).color(ui.visuals().error_fg_color)).wrap());
            match foot(ui, &["Try again", "Close"]) {
                Some(0) => {
                    export.job = None;
                    None
                }
                other => other.map(|_| Answer::Leave),
            }
        }
    }
}

fn entries(ui: &mut Ui, export: &mut Export) -> Option<Answer> {
    ui.label("Folder; it is made where it is missing. Files of the same name are replaced.");
    let edit = TextEdit::singleline(&mut export.folder).desired_width(f32::INFINITY);
    ui.add(edit).accessible_name("Folder of the sheets");
    for (format, on) in &mut export.formats {
        let word = match format {
            Format::Pdf => "PDF: one file with all sheets, for the desk and the printer",
            Format::Svg => "SVG: a file for each sheet",
            Format::Png => "PNG: a picture of each sheet",
        };
        ui.checkbox(on, word);
    }
    let gaps = export.set.desk.gaps();
    if gaps > 0 {
        let text =
            format!("Left to do for the list: {gaps}. The sheets can be written all the same.");
        ui.add(Label::new(RichText::new(text).weak()).wrap());
    }
    let ready = !export.chosen().is_empty() && !export.folder.trim().is_empty();
    let words: &[&str] = if ready { &["Write", "Cancel"] } else { &["Cancel"] };
    let pressed = foot(ui, words)?;
    if ready && pressed == 0 {
        export.start(ui.ctx());
        return None;
    }
    Some(Answer::Leave)
}
