//! The frame of a sheet: border, title block, how to print it.

use drawing::{Anchor, Marks, P, Stroke, Style, TextMark, Tone};
use plan::{Plan, Site};

use crate::paper::{Area, INCH, Paper};
use crate::type_set::{BODY, HEAD, SMALL, TITLE, cut, wrap, write, write_lines};

/// Printers leave about a quarter of an inch blank (from memory); half an inch is safe.
const MARGIN: f32 = INCH / 2.0;
/// Height of the title block.
const BLOCK: f32 = 74.0;
/// Between the border and what is drawn.
const INSIDE: f32 = 4.0;

/// What the title block of one sheet says.
pub(crate) struct Title<'a> {
    pub number: String,
    pub of: usize,
    pub title: &'a str,
    pub scale: Option<&'a str>,
    pub code: &'a str,
}

/// The box that a sheet's content may fill.
pub(crate) fn content(paper: Paper) -> Area {
    let (w, h) = paper.size();
    let all = Area { left: 0.0, top: 0.0, right: w, bottom: h };
    let out = MARGIN + INSIDE;
    all.cut(out, out, out, out + BLOCK)
}

fn outline(marks: &mut Marks, area: Area, width: f32) {
    marks.outline(area.ring(), Stroke::solid(Tone::Ink, width));
}

pub(crate) fn draw(paper: Paper, plan: &Plan, title: &Title<'_>, marks: &mut Marks) {
    let (w, h) = paper.size();
    let border = Area { left: MARGIN, top: MARGIN, right: w - MARGIN, bottom: h - MARGIN };
    marks.group("border", |m| outline(m, border, 1.2));
    marks.group("title block", |m| {
        let block = Area { top: border.bottom - BLOCK, ..border };
        outline(m, block, 1.2);
        let shares = [0.30, 0.24, 0.22, 0.24];
        let mut left = block.left;
        for (i, share) in shares.iter().enumerate() {
            let right = left + share * block.width();
            let cell = Area { left, right, ..block };
            if i > 0 {
                let line = vec![P::new(left, block.top), P::new(left, block.bottom)];
                m.line(line, Stroke::solid(Tone::Ink, 0.6));
            }
            let inner = cell.cut(5.0, 3.0, 5.0, 3.0);
            match i {
                0 => project(m, inner, &plan.site),
                1 => people(m, inner, &plan.site),
                2 => printing(m, inner, paper, title.code),
                _ => sheet(m, inner, title),
            }
            left = right;
        }
    });
}

/// Small word, then what is entered or a line to write on.
fn entry(m: &mut Marks, cell: Area, y: f32, word: &str, text: &str) {
    let at = P::new(cell.left, y);
    write(m, at, word, SMALL, Style::Plain);
    let from = cell.left + 46.0;
    if text.is_empty() {
        let line = vec![P::new(from, y + 3.5), P::new(cell.right, y + 3.5)];
        m.line(line, Stroke::solid(Tone::SoftInk, 0.5));
    } else {
        let text = cut(text, BODY, Style::Plain, cell.right - from);
        write(m, P::new(from, y), &text, BODY, Style::Plain);
    }
}

fn project(m: &mut Marks, cell: Area, site: &Site) {
    let title = if site.title.is_empty() { "Basement" } else { &site.title };
    let lines = wrap(title, HEAD, Style::Bold, cell.width()).into_iter().take(2);
    write_lines(m, P::new(cell.left, cell.top + 7.0), lines, HEAD, Style::Bold);
    let y = cell.top + 36.0;
    entry(m, cell, y, "Address", &site.papers.address);
    entry(m, cell, y + 13.0, "Parcel", &site.papers.parcel);
}

fn people(m: &mut Marks, cell: Area, site: &Site) {
    let y = cell.top + 7.0;
    entry(m, cell, y, "Owner", &site.papers.owner);
    entry(m, cell, y + 15.0, "Drawn by", &site.papers.author);
    entry(m, cell, y + 30.0, "Date", &site.papers.date);
    entry(m, cell, y + 50.0, "Signature", "");
}

fn printing(m: &mut Marks, cell: Area, paper: Paper, code: &str) {
    let lines = [
        format!("Paper: {}", paper.name()),
        "Print at 100 %, actual size, no fitting.".to_owned(),
        "The bar is 1 in long when printed right:".to_owned(),
    ];
    let lines = lines.map(|line| cut(&line, SMALL, Style::Plain, cell.width()));
    let at = P::new(cell.left, cell.top + 6.0);
    let y = at.y + write_lines(m, at, lines, SMALL, Style::Plain);
    // A check of the printer.
    let bar = Area { left: cell.left, top: y - 1.0, right: cell.left + INCH, bottom: y + 4.0 };
    outline(m, bar, 0.6);
    let half = Area { right: bar.left + INCH / 2.0, ..bar };
    m.fill(half.ring(), Tone::Ink);
    let code = wrap(code, SMALL, Style::Plain, cell.width()).into_iter().take(2);
    write_lines(m, P::new(cell.left, y + 12.0), code, SMALL, Style::Plain);
}

fn sheet(m: &mut Marks, cell: Area, title: &Title<'_>) {
    let lines = wrap(title.title, HEAD, Style::Bold, cell.width()).into_iter().take(2);
    write_lines(m, P::new(cell.left, cell.top + 8.0), lines, HEAD, Style::Bold);
    let scale = title.scale.map_or("Not to scale".to_owned(), |s| format!("Scale: {s}"));
    write(m, P::new(cell.left, cell.bottom - 22.0), &scale, BODY, Style::Plain);
    let of = format!("of {} sheets", title.of);
    write(m, P::new(cell.left, cell.bottom - 9.0), &of, BODY, Style::Plain);
    let number = TextMark::new(
        P::new(cell.right, cell.bottom - 14.0),
        title.number.clone(),
        TITLE + 6.0,
        Tone::Ink,
    );
    m.text(TextMark { style: Style::Bold, ..number.anchor(Anchor::End) });
}
