//! The place and the user's own amendments to the model code.

use egui::{Button, Label, RichText, TextEdit, Ui};
use measure::{Precision, System};
use plan::{Amendment, Site, bounds};
use rules::{Book, Figure};

use super::super::form::Form;

/// An amendment that is being written.
#[derive(Debug, Default)]
pub struct Draft {
    limit: String,
    figure: String,
    reason: String,
    /// Why it was refused.
    refused: Option<String>,
}

/// The place, what it changes, and the list of the user's own.
pub fn show(ui: &mut Ui, form: &mut Form, site: &mut Site, draft: &mut Draft) {
    place(ui, form, site);
    for fault in rules::faults(site) {
        let text = format!("Not applied, the model code holds: {fault}.");
        ui.add(Label::new(RichText::new(text).color(ui.visuals().error_fg_color)).wrap());
    }
    ui.add_space(4.0);
    ui.strong("Amendments of your own");
    let mut removed = None;
    for (i, amendment) in site.amendments.iter().enumerate() {
        ui.horizontal_wrapped(|ui| {
            ui.label(RichText::new(&amendment.limit).strong());
            ui.label(&amendment.figure);
            ui.label(RichText::new(&amendment.reason).weak());
            let name = format!("Remove {}", amendment.limit);
            let button = ui.button("Remove").on_hover_text("The limit goes back to what it was.");
            if button.accessible_name(name).clicked() {
                removed = Some(i);
            }
        });
    }
    if let Some(i) = removed {
        site.amendments.remove(i);
    }
    new(ui, form, site, draft);
}

fn place(ui: &mut Ui, form: &mut Form, site: &mut Site) {
    let mut choices = vec![(String::new(), "the model code")];
    let known = rules::localities().iter().map(|l| (l.key.to_owned(), l.layer.place.as_str()));
    choices.extend(known);
    form.choice(ui, "Place", &mut site.place, &choices);
    let Some(locality) = rules::locality(&site.place) else { return };
    let model = Book::model(site.edition);
    for entry in locality.layer.entries() {
        let Some(clause) = entry.clause(site.edition) else { continue };
        let was = model.entry(&entry.slug).map(|(_, c)| say(c.figure, form.system()));
        let text = format!(
            "{}: {}, instead of {}",
            entry.slug,
            say(clause.figure, form.system()),
            was.unwrap_or_default()
        );
        ui.add(Label::new(text).wrap()).on_hover_text(&entry.what);
    }
    ui.add(Label::new(RichText::new(&locality.layer.note).weak()).wrap());
}

/// A row to write one more.
fn new(ui: &mut Ui, form: &mut Form, site: &mut Site, draft: &mut Draft) {
    let limits: Vec<(String, &str)> = Book::limits()
        .filter(|e| e.amendable() && site.amendments.iter().all(|a| a.limit != e.slug))
        .map(|e| (e.slug.clone(), e.slug.as_str()))
        .collect();
    let before = draft.limit.clone();
    if draft.limit.is_empty()
        && let Some((slug, _)) = limits.first()
    {
        slug.clone_into(&mut draft.limit);
    }
    form.choice(ui, "Limit", &mut draft.limit, &limits);
    let book = Book::of(site);
    let Some((entry, clause)) = book.entry(&draft.limit) else { return };
    if draft.limit != before {
        draft.figure = say(clause.figure, form.system());
        draft.refused = None;
    }
    ui.add(Label::new(RichText::new(format!("{}.", entry.what)).weak()).wrap());
    ui.horizontal(|ui| {
        let figure = TextEdit::singleline(&mut draft.figure).desired_width(110.0);
        ui.add(figure).accessible_name("Figure");
        let reason = TextEdit::singleline(&mut draft.reason)
            .hint_text("Who says so, and where")
            .desired_width(ui.available_width() - 64.0);
        ui.add(reason).accessible_name("Reason");
        if ui.add(Button::new("Add")).clicked() {
            add(site, draft);
        }
    });
    if let Some(refused) = &draft.refused {
        let text = RichText::new(refused).color(ui.visuals().error_fg_color);
        ui.add(Label::new(text).wrap());
    }
}

/// Adds the amendment where the code book can use it.
fn add(site: &mut Site, draft: &mut Draft) {
    let text = |text: &str| text.trim().to_owned();
    let amendment = Amendment {
        limit: draft.limit.clone(),
        figure: text(&draft.figure),
        reason: text(&draft.reason),
    };
    if amendment.reason.is_empty() {
        draft.refused =
            Some("Say who demands it, and where: the reason stands in every finding.".to_owned());
        return;
    }
    if amendment.reason.chars().count() > bounds::REASON.most as usize {
        draft.refused = Some(format!("The reason may have {} letters.", bounds::REASON.most));
        return;
    }
    let alone = Site { amendments: vec![amendment.clone()], ..Site::default() };
    match rules::faults(&alone).pop() {
        Some(fault) => draft.refused = Some(fault),
        None => {
            site.amendments.push(amendment);
            *draft = Draft::default();
        }
    }
}

/// A figure as it may be typed again.
fn say(figure: Figure, system: System) -> String {
    match figure {
        Figure::None => "no figure".to_owned(),
        Figure::Len(len) => system.inches(len, Precision::Fine),
        Figure::Area(area) => {
            let figure = format!("{:.2}", area.to_square_inches());
            format!("{} sq in", figure.trim_end_matches('0').trim_end_matches('.'))
        }
        Figure::Count(n) => n.to_string(),
    }
}
