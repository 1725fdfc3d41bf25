//! The place and the user's own amendments to the model code.

use egui::{Button, Label, RichText, TextEdit, Ui};
use measure::{Precision, System};
use plan::{Amendment, Edition, Site, bounds};
use rules::{Book, Figure, Layer};

use super::super::form::Form;
use crate::store::{OwnList, keep_list, own_lists, own_lists_dir};

/// An amendment that is being written.
#[derive(Debug, Default)]
pub struct Draft {
    limit: String,
    figure: String,
    reason: String,
    /// Why it was refused.
    refused: Option<String>,
    /// The lists in the user's folder, once they are read.
    own: Option<Vec<OwnList>>,
    /// The name under which the list is to be kept.
    name: String,
    /// What came of keeping it.
    kept: Option<Result<String, String>>,
}

/// The place, what it changes, and the list of the user's own.
pub fn show(ui: &mut Ui, form: &mut Form, site: &mut Site, draft: &mut Draft) {
    place(ui, form, site, draft);
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
    ui.add_space(4.0);
    own_folder(ui, form, site, draft);
}

fn place(ui: &mut Ui, form: &mut Form, site: &mut Site, draft: &mut Draft) {
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
        let amended = site.amendments.iter().any(|a| a.limit == entry.slug);
        ui.horizontal_wrapped(|ui| {
            ui.label(text).on_hover_text(&entry.what);
            let copy = ui.add_enabled(!amended, Button::new("Change…"));
            let copy = copy.on_hover_text("Copies it below, to give another figure and a reason.");
            if copy.accessible_name(format!("Change {}", entry.slug)).clicked() {
                draft.limit.clone_from(&entry.slug);
                draft.figure = say(clause.figure, form.system());
                draft.refused = None;
            }
        });
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
            let Draft { own, name, kept, .. } = std::mem::take(draft);
            *draft = Draft { own, name, kept, ..Draft::default() };
        }
    }
}

/// The lists in the user's own folder: to take into this plan, and to keep this plan's list for others.
fn own_folder(ui: &mut Ui, form: &Form, site: &mut Site, draft: &mut Draft) {
    let Some(folder) = own_lists_dir() else { return };
    ui.strong("Lists in your folder").on_hover_text(folder.display().to_string());
    let lists = draft.own.get_or_insert_with(|| own_lists(&folder));
    if lists.is_empty() {
        ui.weak("None yet.");
    }
    for OwnList { path, list } in lists.iter() {
        ui.horizontal_wrapped(|ui| match list {
            Ok(layer) => {
                let take = ui.button("Take over").on_hover_text(path.display().to_string());
                if take.accessible_name(format!("Take over {}", layer.place)).clicked() {
                    take_over(site, layer, form.system());
                }
                ui.label(&layer.place);
                let limits: Vec<&str> = layer.entries().map(|e| e.slug.as_str()).collect();
                ui.label(RichText::new(limits.join(", ")).weak());
            }
            Err(fault) => {
                ui.label(RichText::new(fault).color(ui.visuals().error_fg_color));
            }
        });
    }
    if site.amendments.is_empty() {
        return;
    }
    ui.horizontal(|ui| {
        let name = TextEdit::singleline(&mut draft.name)
            .hint_text("Name of the list, such as the town")
            .desired_width(ui.available_width() - 60.0);
        ui.add(name).accessible_name("Name of the list");
        let named = !draft.name.trim().is_empty();
        if ui.add_enabled(named, Button::new("Keep list")).clicked() {
            let kept = keep_list(&folder, &draft.name, &site.amendments);
            draft.kept = Some(kept.map(|path| format!("Kept as {}.", path.display())));
            draft.own = None;
        }
    });
    match &draft.kept {
        Some(Ok(said)) => ui.weak(said),
        Some(Err(why)) => ui.label(RichText::new(why).color(ui.visuals().error_fg_color)),
        None => return,
    };
}

/// Puts a list's amendments of the plan's edition in place of the plan's own of the same limits.
fn take_over(site: &mut Site, layer: &Layer, system: System) {
    for amendment in taken(layer, site.edition, system) {
        site.amendments.retain(|a| a.limit != amendment.limit);
        site.amendments.push(amendment);
    }
}

fn taken(layer: &Layer, edition: Edition, system: System) -> Vec<Amendment> {
    let of = |entry: &rules::Entry| {
        let clause = entry.clause(edition)?;
        let figure = say(clause.figure, system);
        Some(Amendment { limit: entry.slug.clone(), figure, reason: clause.text.clone() })
    };
    layer.entries().filter_map(of).collect()
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
