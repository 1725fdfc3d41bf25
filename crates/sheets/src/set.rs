//! All sheets of a plan.

use drawing::Marks;
use measure::System;
use plan::Plan;
use rules::{Book, Finding};
use space::Facts;
use std::sync::Arc;

use crate::desk::{self, Desk};
use crate::frame::{self, Title};
use crate::kinds::{Context, KINDS, Listed, Made, cover};
use crate::one_sheet::{self, Boxes};
use crate::paper::Paper;

/// What sheets are made from: a plan's facts, what was found in it, and the code in force.
#[derive(Clone, Copy, Debug)]
pub struct Source<'a> {
    pub facts: &'a Facts,
    pub findings: &'a [Arc<Finding>],
    pub book: &'a Book,
}

/// How they are made.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Options {
    pub paper: Paper,
    pub system: System,
    /// The department whose list is checked: its code; the general list where none is named.
    pub list: Option<String>,
    pub join: Join,
    /// Everything on one sheet, where the paper has room for it.
    pub one_sheet: bool,
}

/// What is drawn together.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Join {
    /// The existing and the proposed plan on one sheet.
    pub plans: bool,
    /// Electrical, mechanical and plumbing in one plan.
    pub trades: bool,
}

/// One sheet.
#[derive(Clone, Debug)]
pub struct Sheet {
    /// By discipline, as sets of drawings are numbered: `A-101`.
    pub number: String,
    /// The kind it is of: `proposed-plan`.
    pub kind: &'static str,
    pub title: String,
    /// `1/4" = 1'-0"`, where the sheet is drawn to one.
    pub scale: Option<&'static str>,
    /// Width and height in points.
    pub size: (f32, f32),
    pub marks: Marks,
}

/// A sheet that is not made, because there is nothing to show.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LeftOut {
    pub title: &'static str,
    pub why: String,
}

/// The sheets in order, what was left out, and what a desk will find.
#[derive(Clone, Debug)]
pub struct Set {
    pub sheets: Vec<Sheet>,
    pub left_out: Vec<LeftOut>,
    pub desk: Desk,
    /// One sheet was asked for, but the paper is too small: there are several.
    pub crowded: bool,
}

impl Source<'_> {
    pub(crate) fn plan(&self) -> &Plan {
        &self.facts.plan
    }

    /// The code in force, as the title block says it.
    pub(crate) fn code(&self) -> String {
        let edition = self.book.edition().year();
        format!("{edition} International Residential Code, {}", self.book.place())
    }
}

/// A page before it has its frame.
pub(crate) struct Page {
    pub number: String,
    pub kind: &'static str,
    pub title: String,
    pub scale: Option<&'static str>,
    pub marks: Marks,
}

/// Makes the set.
pub fn set(source: &Source<'_>, options: &Options) -> Set {
    let all = frame::content(options.paper);
    let (pages, left_out, desk, crowded) = match options.one_sheet {
        false => {
            let drawn = draw(source, options, &|_| all);
            (drawn.pages, drawn.left_out, drawn.desk, false)
        }
        true => match one_sheet::compose(all, &|area| draw(source, options, area)) {
            Some((page, drawn)) => (vec![page], drawn.left_out, drawn.desk, false),
            None => {
                let many = Options { one_sheet: false, ..options.clone() };
                let drawn = draw(source, &many, &|_| all);
                (drawn.pages, drawn.left_out, drawn.desk, true)
            }
        },
    };
    let of = pages.len();
    let sheets = pages.into_iter().map(|page| sheet(page, of, source, options)).collect();
    Set { sheets, left_out, desk, crowded }
}

/// What there is to show, each page in the box that its kind was given.
pub(crate) struct Drawn {
    /// The cover first.
    pub pages: Vec<Page>,
    pub left_out: Vec<LeftOut>,
    pub desk: Desk,
}

/// Draws every kind into the box that `area` has for it, by the kind's slug.
fn draw(source: &Source<'_>, options: &Options, area: &Boxes<'_>) -> Drawn {
    let mut context = Context {
        source: *source,
        system: options.system,
        paper: options.paper,
        join: options.join,
        area: area(cover::SLUG),
        index: Vec::new(),
        left_out: Vec::new(),
    };
    let mut pages = Vec::new();
    for kind in KINDS {
        context.area = area(kind.slug);
        match (kind.make)(&context) {
            Made::NotAsked => {}
            Made::Nothing(why) => context.left_out.push(LeftOut { title: kind.title, why }),
            Made::Drawn(made) => {
                for (i, (marks, scale)) in made.into_iter().enumerate() {
                    let number = format!("{}-{}", kind.discipline, kind.first + i);
                    let title = title(kind.title, i);
                    pages.push(Page { number, kind: kind.slug, title, scale, marks });
                }
            }
        }
    }
    let listed = |p: &Page| Listed {
        number: p.number.clone(),
        title: p.title.clone(),
        kind: p.kind,
        scale: p.scale,
    };
    context.index = pages.iter().map(listed).collect();
    let desk = desk::check(&context, options);
    // The cover lists all the others, so it comes last and lies on top.
    context.area = area(cover::SLUG);
    let covers = cover::pages(&context, &desk);
    let covers = covers.into_iter().enumerate().map(|(i, marks)| Page {
        number: cover::number(i),
        kind: cover::SLUG,
        title: title(cover::TITLE, i),
        scale: None,
        marks,
    });
    Drawn { pages: covers.chain(pages).collect(), left_out: context.left_out, desk }
}

/// The title of a page of a kind, counted from 0.
fn title(kind: &str, page: usize) -> String {
    if page == 0 { kind.to_owned() } else { format!("{kind}, continued") }
}

fn sheet(page: Page, of: usize, source: &Source<'_>, options: &Options) -> Sheet {
    let mut marks = page.marks;
    let code = source.code();
    let title = Title {
        number: page.number.clone(),
        of,
        title: &page.title,
        scale: page.scale,
        code: &code,
    };
    frame::draw(options.paper, source.plan(), &title, &mut marks);
    Sheet {
        number: page.number,
        kind: page.kind,
        title: page.title,
        scale: page.scale,
        size: options.paper.size(),
        marks,
    }
}
