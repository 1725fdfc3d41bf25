//! The rules: what each checks, why, by which source, how it is measured, with an example on a plan.

use drawing::Marks;
use egui::{Button, Label, RichText, ScrollArea, Sense, TextEdit, Ui, vec2};
use measure::System;
use rules::{HEADINGS, RULES, Rule};

use super::super::paint;
use super::super::theme::{BODY, Look, bold};
use super::{Answer, foot, heading};
use crate::examples;

/// Width of the list at the left.
const LIST: f32 = 250.0;
/// Height of the example.
const HEIGHT: f32 = 230.0;

/// The page that is open.
#[derive(Debug)]
pub struct RuleBook {
    rule: &'static Rule,
    /// What is looked for in names and titles.
    wanted: String,
    /// The list goes to the open page when it is shown at first.
    reveal: bool,
    page: Option<Page>,
}

/// A page as it was laid out, so that it isn't drawn anew in every frame.
#[derive(Debug)]
struct Page {
    slug: &'static str,
    system: System,
    width: f32,
    text: String,
    figure: Option<Marks>,
}

impl RuleBook {
    /// Open at a rule, or at the first.
    pub fn at(slug: Option<&str>) -> RuleBook {
        let rule = slug.and_then(rules::rule).unwrap_or(&RULES[0]);
        RuleBook { rule, wanted: String::new(), reveal: true, page: None }
    }
}

pub fn show(ui: &mut Ui, book: &mut RuleBook, system: System, look: Look) -> Option<Answer> {
    heading(ui, "Rules");
    let height = (ui.ctx().content_rect().height() - 190.0).clamp(160.0, 720.0);
    ui.horizontal_top(|ui| {
        ui.allocate_ui(vec2(LIST, height), |ui| {
            ui.vertical(|ui| list(ui, book, height));
        });
        ui.vertical(|ui| {
            ScrollArea::vertical()
                .id_salt(("page", book.rule.slug))
                .max_height(height)
                .min_scrolled_height(height)
                .auto_shrink([false, true])
                .show(ui, |ui| page(ui, book, system, look));
        });
    });
    foot(ui, &["Close"]).map(|_| Answer::Leave)
}

/// The rules whose name or title holds what is looked for, in their groups.
fn list(ui: &mut Ui, book: &mut RuleBook, height: f32) {
    let field = TextEdit::singleline(&mut book.wanted).hint_text("Find a rule");
    ui.add(field.desired_width(LIST - 16.0)).accessible_name("Find a rule");
    let wanted = book.wanted.trim().to_lowercase();
    let holds = |r: &&Rule| {
        wanted.is_empty() || r.slug.contains(&wanted) || r.title.to_lowercase().contains(&wanted)
    };
    ScrollArea::vertical()
        .id_salt("rules")
        .max_height(height - 34.0)
        .min_scrolled_height(height - 34.0)
        .auto_shrink([false, true])
        .show(ui, |ui| {
            let mut group = None;
            ui.spacing_mut().item_spacing.y = 2.0;
            for rule in RULES.iter().filter(holds) {
                if group.replace(rule.group) != Some(rule.group) {
                    ui.add_space(6.0);
                    ui.add(Label::new(RichText::new(rule.group.word()).weak()).wrap());
                }
                let open = rule.slug == book.rule.slug;
                let button = Button::selectable(open, rule.title).wrap();
                let response = ui.add(button).on_hover_text(rule.slug);
                if open && std::mem::take(&mut book.reveal) {
                    response.scroll_to_me(Some(egui::Align::Center));
                }
                if response.clicked() {
                    book.rule = rule;
                }
            }
            if group.is_none() {
                ui.add(Label::new(RichText::new("No rule has these words.").weak()).wrap());
            }
        });
}

fn page(ui: &mut Ui, book: &mut RuleBook, system: System, look: Look) {
    let width = ui.available_width() - 12.0;
    let rule = book.rule;
    let fresh =
        |p: &Page| p.slug == rule.slug && p.system == system && (p.width - width).abs() < 1.0;
    if !book.page.as_ref().is_some_and(fresh) {
        let figure = examples::example(rule)
            .map(|(facts, finding)| depict::figure(facts, finding, (width, HEIGHT), system).marks);
        let text = rules::explain(rule, system);
        book.page = Some(Page { slug: rule.slug, system, width, text, figure });
    }
    let Some(page) = &book.page else { return };
    ui.add(Label::new(RichText::new(rule.title).heading()).wrap());
    ui.label(RichText::new(rule.slug).weak().small());
    if let Some(figure) = &page.figure {
        let (rect, _) = ui.allocate_exact_size(vec2(width, HEIGHT), Sense::hover());
        let painter = ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
        paint::marks(&painter, figure, look.palette(), rect.min);
        ui.label(RichText::new("An invented example.").weak().small());
    }
    for paragraph in paragraphs(&page.text) {
        if HEADINGS.contains(&paragraph.as_str()) {
            ui.add_space(6.0);
            ui.label(RichText::new(paragraph).font(bold(BODY)));
        } else {
            ui.add(Label::new(paragraph).wrap());
        }
    }
}

/// The text below its first line, in paragraphs: a heading and an indented line stand alone.
fn paragraphs(text: &str) -> Vec<String> {
    let mut all: Vec<String> = Vec::new();
    let mut goes_on = false;
    for line in text.lines().skip(1) {
        let alone = HEADINGS.contains(&line) || line.starts_with(' ');
        match all.last_mut() {
            _ if line.is_empty() => {}
            Some(last) if goes_on && !alone => {
                last.push(' ');
                last.push_str(line);
            }
            _ => all.push(line.to_owned()),
        }
        goes_on = !line.is_empty() && !alone;
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_page_is_read_in_paragraphs() {
        let text = "slug: Title\n\nWhat\nOne line\nand the next.\n\nSource\nA book.\n  Limit\n    2018: 3\n\nWhy\nSo.";
        let expected = [
            "What",
            "One line and the next.",
            "Source",
            "A book.",
            "  Limit",
            "    2018: 3",
            "Why",
            "So.",
        ];
        assert_eq!(paragraphs(text), expected);
        for rule in RULES {
            let all = paragraphs(&rules::explain(rule, System::Imperial));
            let headings = all.iter().filter(|p| HEADINGS.contains(&p.as_str())).count();
            assert_eq!(headings, HEADINGS.len(), "{}", rule.slug);
        }
    }
}
