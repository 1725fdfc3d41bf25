//! What is stated of the selected elements besides their figures.

use egui::{CollapsingHeader, Ui};
use plan::detail::{self, Detail, Details};
use plan::{Edit, Element};

use super::super::act::Cx;
use super::super::form::Form;

/// The details that are asked about one element.
pub fn one(ui: &mut Ui, form: &mut Form, element: &mut Element) {
    let fitting: Vec<&'static Detail> = detail::asked(&element.body, &element.details).collect();
    section(ui, &fitting, &element.details.clone(), |ui, detail| {
        form.detail(ui, detail, &mut element.details, false);
    });
}

/// The details that are asked about every one of several elements; what is stated is stated of all.
pub fn many(ui: &mut Ui, cx: &mut Cx<'_>, elements: &[&Element]) {
    let Some(first) = elements.first() else { return };
    let fitting: Vec<&'static Detail> = detail::asked(&first.body, &first.details)
        .filter(|detail| elements.iter().all(|e| detail.is_asked(&e.body, &e.details)))
        .collect();
    let mut form = Form::new(cx.system());
    let mut edit = None;
    section(ui, &fitting, &first.details, |ui, detail| {
        let mixed = elements.iter().any(|e| e.stated(detail) != first.stated(detail));
        let before = if mixed { None } else { first.stated(detail) };
        let mut details = Details::default();
        details.set(detail, before);
        form.detail(ui, detail, &mut details, mixed);
        if details.get(detail) != before {
            let stated = |e: &&Element| {
                let mut changed = Element::clone(e);
                changed.details.set(detail, details.get(detail));
                Edit::Replace(changed)
            };
            let label =
                format!("Change {} of {} elements", detail.word.to_lowercase(), elements.len());
            edit = Some((label, Edit::Batch(elements.iter().map(stated).collect())));
        }
    });
    if let Some((label, edit)) = edit {
        cx.edit(label, edit);
    }
}

/// The details of the house and its site.
pub fn site(ui: &mut Ui, form: &mut Form, details: &mut Details) {
    let fitting: Vec<&'static Detail> = detail::of_site().collect();
    section(ui, &fitting, &details.clone(), |ui, detail| form.detail(ui, detail, details, false));
}

/// A heading that counts what is stated, and a row for each detail.
fn section(
    ui: &mut Ui,
    fitting: &[&'static Detail],
    stated: &Details,
    mut row: impl FnMut(&mut Ui, &'static Detail),
) {
    if fitting.is_empty() {
        return;
    }
    let count = fitting.iter().filter(|detail| stated.get(detail).is_some()).count();
    let heading = format!("Details: {count} of {} stated", fitting.len());
    ui.add_space(4.0);
    CollapsingHeader::new(heading).id_salt("details").default_open(true).show_unindented(
        ui,
        |ui| {
            for detail in fitting {
                row(ui, detail);
            }
        },
    );
}
