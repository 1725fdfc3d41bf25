//! What the title block of the permit sheets says.

use egui::{Label, RichText, Ui};
use measure::System;
use plan::{Papers, Site, bounds};

use super::super::form::Form;
use super::{Answer, foot, heading};

/// Edits the entries; they are kept when it is said so.
pub fn show(ui: &mut Ui, site: &mut Site, system: System) -> Option<Answer> {
    heading(ui, "Title block");
    let mut form = Form::new(system);
    form.text(ui, "Project", &mut site.title, bounds::TITLE);
    papers(ui, &mut form, &mut site.papers);
    let text = "North: degrees clockwise from the top of the drawing. What is left empty is a line on paper, to be filled in by hand.";
    ui.add(Label::new(RichText::new(text).weak()).wrap());
    match foot(ui, &["Keep", "Cancel"])? {
        0 => Some(Answer::Site(Box::new(site.clone()))),
        _ => Some(Answer::Leave),
    }
}

/// What the title block of the sheets says.
fn papers(ui: &mut Ui, form: &mut Form, papers: &mut Papers) {
    form.text(ui, "Address", &mut papers.address, bounds::ADDRESS);
    form.text(ui, "Parcel", &mut papers.parcel, bounds::PARCEL);
    form.text(ui, "Owner", &mut papers.owner, bounds::OWNER);
    form.text(ui, "Drawn by", &mut papers.author, bounds::AUTHOR);
    form.text(ui, "Date", &mut papers.date, bounds::DATE);
    form.text(ui, "The work", &mut papers.work, bounds::WORK);
    let mut known = papers.north.is_some();
    form.check(ui, "The direction of north is known", &mut known);
    if known {
        let mut north = papers.north.unwrap_or(0);
        form.count(ui, "North", &mut north, bounds::NORTH);
        papers.north = Some(north);
    } else {
        papers.north = None;
    }
}
