//! The findings: what the checker says, with its figures, its source, its remedies.

use std::sync::Arc;

use drawing::{P, Tone};
use egui::{
    Align, Button, Color32, CornerRadius, Frame, Label, Margin, RichText, Role, Sense, Stroke, Ui,
    UiBuilder, WidgetInfo, vec2,
};
use measure::{Precision, System};
use plan::Edit;
use rules::{Finding, Quantity, Safety, Severity, capital};

use super::super::act::{Act, Cx};
use super::super::dialogs::{Dialog, RuleBook};
use super::super::paint;
use super::super::remedies::Remedies;
use super::super::theme::{Look, SMALL, mix};
use super::super::view::FindingKey;

/// Height and breadth of a sign in the list.
const SIGN: f32 = 18.0;

/// The colour of a severity's words.
pub fn ink(severity: Severity, look: Look) -> Color32 {
    look.colour(match severity {
        Severity::Correction => Tone::Stop,
        Severity::Verify => Tone::Verify,
        Severity::Advice => Tone::Advice,
    })
}

/// A figure in the reader's units. What must be at least so large is rounded down.
fn say(quantity: &Quantity, system: System) -> String {
    match quantity {
        Quantity::Len(l) => system.inches(*l, Precision::Floor),
        Quantity::Area(a) => system.area(*a),
        Quantity::Count(n) => n.to_string(),
        Quantity::Words(words) => words.clone(),
    }
}

/// What was measured against what is required.
pub fn figures(
    ui: &mut Ui,
    measured: Option<&Quantity>,
    required: Option<&Quantity>,
    system: System,
) {
    for (word, quantity) in [("measured", measured), ("required", required)] {
        let Some(quantity) = quantity else { continue };
        let mut text = egui::text::LayoutJob::default();
        let more = word == "measured" && required.is_some();
        let parts = [
            RichText::new(format!("{word} ")).weak().small(),
            RichText::new(say(quantity, system)).strong(),
            RichText::new(if more { " ·" } else { "" }).weak(),
        ];
        for part in parts {
            part.append_to(&mut text, ui.style(), egui::FontSelection::Default, Align::BOTTOM);
        }
        let label = Label::new(text);
        // A figure stays with its word and its unit.
        let words = matches!(quantity, Quantity::Words(_));
        ui.add(if words { label } else { label.wrap_mode(egui::TextWrapMode::Extend) });
    }
}

/// Shows the pane; gives the findings in sight, whose remedies are wanted.
pub fn show(ui: &mut Ui, cx: &mut Cx<'_>, remedies: &Remedies) -> Vec<FindingKey> {
    let findings = Arc::clone(&cx.checked.findings);
    let open = || findings.iter().filter(|f| f.set_aside.is_none());
    let count = |severity| open().filter(|f| f.severity == severity).count();
    if open().next().is_none() {
        let text = if cx.checked.facts.plan.elements().is_empty() {
            "Nothing is drawn yet. Begin with the foundation walls."
        } else {
            "None. The checks can't see everything: your building department decides."
        };
        ui.add(Label::new(RichText::new(text).weak()).wrap());
    } else {
        let counts: Vec<String> = [Severity::Correction, Severity::Verify, Severity::Advice]
            .into_iter()
            .filter(|s| count(*s) > 0)
            .map(|s| match (s, count(s)) {
                (Severity::Correction, 1) => "1 correction".to_owned(),
                (Severity::Correction, n) => format!("{n} corrections"),
                (s, n) => format!("{n} {}", s.word()),
            })
            .collect();
        ui.label(RichText::new(counts.join(" · ")).weak());
    }
    let mut wanted = Vec::new();
    cx.view.lit = None;
    for severity in [Severity::Correction, Severity::Verify, Severity::Advice] {
        for finding in open().filter(|f| f.severity == severity) {
            ui.add_space(4.0);
            if card(ui, cx, finding, remedies) {
                wanted.push(FindingKey::of(finding));
            }
        }
    }
    set_aside(ui, cx, &findings);
    wanted
}

/// How high a card was when it was laid out last, at which width.
#[derive(Clone, Copy)]
struct Height {
    width: f32,
    height: f32,
}

/// One finding; gives whether it is in sight.
fn card(ui: &mut Ui, cx: &mut Cx<'_>, finding: &Finding, remedies: &Remedies) -> bool {
    let key = FindingKey::of(finding);
    let system = cx.system();
    let look = cx.view.look;
    let picked = cx.view.picked.as_ref() == Some(&key);
    let id = ui.make_persistent_id(("finding", finding.rule, &finding.elements));
    let builder = UiBuilder::new().id_salt(id).sense(Sense::click());
    let known = Height { width: ui.available_width(), height: 0.0 };
    let height = ui.data(|d| d.get_temp::<Height>(id)).filter(|h| h.width == known.width);
    let place = egui::Rect::from_min_size(
        ui.cursor().min,
        vec2(known.width, height.map_or(0.0, |h| h.height)),
    );
    let out_of_sight = height.is_some() && !ui.is_rect_visible(place);
    let response = ui
        .scope_builder(builder, |ui| {
            if out_of_sight {
                // It keeps its place and its name; what is in it is laid out when it comes into sight.
                ui.allocate_exact_size(place.size(), Sense::hover());
                return;
            }
            let hovered = ui.response().contains_pointer();
            let paper = ui.visuals().panel_fill;
            let ink = ink(finding.severity, look);
            let (fill, line) = match (picked, hovered) {
                (true, _) => (mix(paper, ink, 0.10), Stroke::new(1.5, ink)),
                (_, true) => (mix(paper, ink, 0.06), Stroke::new(1.0, mix(paper, ink, 0.5))),
                _ => (paper, Stroke::new(1.0, mix(paper, ui.visuals().text_color(), 0.18))),
            };
            let frame = Frame::new()
                .fill(fill)
                .stroke(line)
                .corner_radius(CornerRadius::same(5))
                .inner_margin(Margin { left: 8, right: 8, top: 6, bottom: 7 });
            frame.show(ui, |ui| {
                ui.set_width(ui.available_width());
                ui.spacing_mut().item_spacing.y = 3.0;
                body(ui, cx, finding, &key, remedies);
            });
        })
        .response;
    ui.data_mut(|d| d.insert_temp(id, Height { height: response.rect.height(), ..known }));
    let name = format!("{}: {}", capital(finding.severity.word()), finding.title.say(system));
    response.widget_info(|| WidgetInfo::labeled(Role::ListItem, true, &name));
    if response.contains_pointer() {
        cx.view.lit = Some(key.clone());
    }
    if response.has_focus() {
        let focus = ui.visuals().selection.stroke;
        ui.painter().rect_stroke(
            response.rect.expand(2.0),
            6.0,
            Stroke::new(2.0, focus.color),
            egui::StrokeKind::Middle,
        );
    }
    if picked && std::mem::take(&mut cx.view.reveal) {
        ui.scroll_to_rect(response.rect.expand(8.0), None);
    }
    if response.clicked() {
        cx.push(Act::ShowFinding(key));
    }
    ui.is_rect_visible(response.rect)
}

fn body(ui: &mut Ui, cx: &mut Cx<'_>, finding: &Finding, key: &FindingKey, remedies: &Remedies) {
    let system = cx.system();
    ui.horizontal_top(|ui| {
        let (rect, _) = ui.allocate_exact_size(vec2(SIGN, SIGN), Sense::hover());
        let sign = depict::badge(finding.severity, P::new(SIGN / 2.0, SIGN / 2.0), SIGN);
        paint::marks(ui.painter(), &sign, cx.view.look.palette(), rect.min);
        let title = capital(&finding.title.say(system));
        ui.add(Label::new(RichText::new(title).strong()).wrap());
    });
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().interact_size.y = 0.0;
        let word = RichText::new(capital(finding.severity.word()));
        ui.label(word.color(ink(finding.severity, cx.view.look)).small());
        figures(ui, finding.measured.as_ref(), finding.required.as_ref(), system);
    });
    ui.add(Label::new(finding.why.say(system)).wrap());
    if !finding.assumed.is_empty() {
        let text = format!("Assumed: {}.", finding.assumed.join("; "));
        ui.add(Label::new(RichText::new(text).weak()).wrap());
    }
    remedy_row(ui, cx, key, remedies);
    ui.horizontal_wrapped(|ui| {
        let title = finding.title.say(system);
        let aside = ui.button("Set aside…");
        let aside = aside.on_hover_text("Asks for a reason, which stays in the plan.");
        if aside.accessible_name(format!("Set aside: {title}")).clicked() {
            let (title, reason) = (title.clone(), String::new());
            let dialog = Dialog::SetAside { finding: key.clone(), title, reason };
            cx.push(Act::Show(dialog));
        }
        let explain = ui.button("Explain…");
        let explain = explain.on_hover_text("What the rule checks, why, and how it is measured.");
        if explain.accessible_name(format!("Explain: {title}")).clicked() {
            cx.push(Act::Show(Dialog::Rules(Box::new(RuleBook::at(Some(finding.rule))))));
        }
        let citation = RichText::new(finding.citation.marked()).weak().size(SMALL);
        ui.add(Label::new(citation).wrap());
    });
}

/// The remedies: a safe one is applied at once, any other is shown on the plan first.
fn remedy_row(ui: &mut Ui, cx: &mut Cx<'_>, key: &FindingKey, remedies: &Remedies) {
    let system = cx.system();
    let offer = remedies.of(key);
    for (i, remedy) in offer.remedies.iter().enumerate() {
        let label = remedy.label.say(system);
        if cx.preview.is_some_and(|p| p.finding == *key && p.remedy == i) {
            ui.add(Label::new(format!("Shown on the plan: {label}.")).wrap());
            ui.horizontal(|ui| {
                if ui.button("Apply").accessible_name(format!("Apply: {label}")).clicked() {
                    cx.edit(label.clone(), remedy.edit.clone());
                    cx.push(Act::EndPreview);
                }
                if ui.button("Leave it").clicked() {
                    cx.push(Act::EndPreview);
                }
            });
            continue;
        }
        let (text, help) = match remedy.safety {
            Safety::Safe => (label.clone(), "Applies it as one step that can be undone."),
            Safety::Ask => (format!("{label}…"), "Shows it on the plan first."),
        };
        let button = Button::new(text).wrap().fill(ui.visuals().selection.bg_fill);
        if ui.add_enabled(offer.fresh, button).on_hover_text(help).clicked() {
            cx.push(match remedy.safety {
                Safety::Safe => Act::Edit { label, edit: remedy.edit.clone() },
                Safety::Ask => Act::Preview { finding: key.clone(), remedy: i },
            });
        }
    }
}

/// Findings that were set aside, with their reasons.
fn set_aside(ui: &mut Ui, cx: &mut Cx<'_>, findings: &[Arc<Finding>]) {
    let system = cx.system();
    let aside: Vec<(&Finding, &String)> =
        findings.iter().filter_map(|f| Some((&**f, f.set_aside.as_ref()?))).collect();
    if aside.is_empty() {
        return;
    }
    ui.add_space(10.0);
    ui.label(RichText::new(format!("Set aside ({})", aside.len())).strong());
    for (finding, reason) in aside {
        let title = finding.title.say(system);
        ui.add_space(2.0);
        ui.add(Label::new(format!("{}: {title}", capital(finding.severity.word()))).wrap());
        ui.add(Label::new(RichText::new(format!("Reason: {reason}")).weak()).wrap());
        let button = ui.button("Take up again");
        if button.accessible_name(format!("Take up again: {title}")).clicked() {
            let edit =
                Edit::TakeUp { rule: finding.rule.to_owned(), elements: finding.elements.clone() };
            cx.edit(format!("Take up: {title}"), edit);
        }
    }
}
