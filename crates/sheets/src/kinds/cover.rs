//! The cover: what is done where and by whom, areas, the index, the code, space for the stamp.

use drawing::{Marks, P, Stroke, Style, Tone};
use measure::{Area as FloorArea, Precision};
use plan::element::RoomUse;

use super::Context;
use crate::desk::Desk;
use crate::flow::{self, Piece, Table};
use crate::paper::{Area, INCH, Paper};
use crate::type_set;
use crate::type_set::{BODY, SMALL, wrap, write, write_lines};

pub(crate) const SLUG: &str = "cover";
pub(crate) const TITLE: &str = "Cover and index";

/// The number of a page of the cover, counted from 0.
pub(crate) fn number(page: usize) -> String {
    format!("G-{:03}", page + 1)
}

/// The space that one department asks to be left free: 3.75 x 5.75 in, top right.
const STAMP: (f32, f32) = (3.75 * INCH, 5.75 * INCH);

pub(crate) fn pages(context: &Context<'_>, desk: &Desk) -> Vec<Marks> {
    let area = context.area;
    let small = matches!(context.paper, Paper::Letter | Paper::A4);
    // On a letter sheet the stamp is as high as the sheet lets it be.
    let stamp = (STAMP.0.min(area.width() / 3.4), STAMP.1.min(area.height() * 0.6));
    let site = &context.source.plan().site;
    let mut top = Marks::new();
    let title = if site.title.is_empty() { "Basement" } else { &site.title };
    let head = format!("Permit drawings: {title}");
    let width = area.width() - stamp.0 - 24.0;
    let size = type_set::TITLE;
    let lines = wrap(&head, size, Style::Bold, width);
    let at = P::new(area.left, area.top + size / 2.0);
    let down = write_lines(&mut top, at, lines, size, Style::Bold);
    let text = Area { top: at.y + down, right: area.right - stamp.0 - 24.0, ..area };
    let columns = if small { 1 } else { 2 };
    let mut pages = flow::pages(&pieces(context, desk), text, columns);
    if let Some(first) = pages.first_mut() {
        first.append(top);
        stamps(first, area, stamp);
    }
    pages
}

/// Space for the stamp and for the statement of who drew the plan.
fn stamps(m: &mut Marks, area: Area, (width, height): (f32, f32)) {
    let left = area.right - width;
    let ink = |width| Stroke::solid(Tone::Ink, width);
    m.group("stamp", |m| {
        m.outline(Area { left, bottom: area.top + height, ..area }.ring(), ink(0.8));
        let at = P::new(left + 6.0, area.top + 9.0);
        write(m, at, "For the department's stamp", SMALL, Style::Plain);
    });
    m.group("statement", |m| {
        let top = area.top + height + 10.0;
        let bottom = (top + 96.0).min(area.bottom);
        m.outline(Area { left, top, bottom, ..area }.ring(), ink(0.8));
        let text = "I prepared this drawing myself and am the owner of the house (strike out what is not so):";
        let lines = wrap(text, BODY, Style::Plain, width - 12.0);
        write_lines(m, P::new(left + 6.0, top + 10.0), lines, BODY, Style::Plain);
        let line = bottom - 18.0;
        m.line(vec![P::new(left + 6.0, line), P::new(area.right - 6.0, line)], ink(0.5));
        write(m, P::new(left + 6.0, line + 9.0), "Signature, date", SMALL, Style::Plain);
    });
}

fn pieces(context: &Context<'_>, desk: &Desk) -> Vec<Piece> {
    let mut pieces = Vec::new();
    project(context, &mut pieces);
    areas(context, &mut pieces);
    pieces.push(Piece::Head("Sheets".to_owned()));
    let rows = std::iter::once((number(0), TITLE.to_owned()))
        .chain(context.index.iter().map(|e| (e.number.clone(), e.title.clone())));
    let rows = rows.map(|(number, title)| vec![number, title]).collect();
    pieces.push(Piece::Table(Table { head: vec!["Sheet", "Title"], shares: vec![1.0, 4.0], rows }));
    for out in &context.left_out {
        pieces.push(Piece::Text(format!("No sheet \"{}\": {}.", out.title, out.why)));
    }
    pieces.push(Piece::Gap);
    pieces.push(Piece::Head("How to read the drawings".to_owned()));
    for text in [
        "Solid black: foundation walls. Hatched: new walls. Open outline: existing walls. Dashes: what is removed, or hangs overhead.".to_owned(),
        "P and U: types of new walls, with a section each. D and N: doors and windows of the tables.".to_owned(),
        "A room's label gives its use, net area, clear size between finished faces, and ceiling height.".to_owned(),
        format!("Made for {}. Print at 100 %; a bar on each sheet is 1 in long when printed right.", context.paper.name()),
    ] {
        pieces.push(Piece::Point(text));
    }
    pieces.push(Piece::Gap);
    department(desk, &mut pieces);
    pieces.push(Piece::Text("A planning aid drawn by the owner's program. Model-code figures differ by place and edition, and the building department decides. Structure, gas, service equipment, radon systems, asbestos and lead are work for licensed people.".to_owned()));
    pieces
}

fn project(context: &Context<'_>, pieces: &mut Vec<Piece>) {
    let site = &context.source.plan().site;
    let papers = &site.papers;
    let blank =
        |text: &str| if text.is_empty() { "________________".to_owned() } else { text.to_owned() };
    let height = context.system.len(site.ceiling_height(), Precision::Floor);
    let mut rows = vec![
        vec!["Address".to_owned(), blank(&papers.address)],
        vec!["Parcel".to_owned(), blank(&papers.parcel)],
        vec!["Owner".to_owned(), blank(&papers.owner)],
        vec!["Drawn by".to_owned(), blank(&papers.author)],
        vec!["Code".to_owned(), context.source.code()],
        vec!["Sprinklers".to_owned(), if site.sprinklers { "yes" } else { "no" }.to_owned()],
        vec!["Ceiling, finished".to_owned(), height],
    ];
    if !papers.work.is_empty() {
        rows.insert(0, vec!["The work".to_owned(), papers.work.clone()]);
    }
    pieces.push(Piece::Head("Project".to_owned()));
    pieces.push(Piece::Table(Table { head: vec!["", ""], shares: vec![1.0, 3.0], rows }));
    pieces.push(Piece::Gap);
    for a in &site.amendments {
        pieces.push(Piece::Point(format!(
            "Local amendment: {} is {} ({}).",
            a.limit, a.figure, a.reason
        )));
    }
}

/// Finished and unfinished floor of the proposed basement.
fn areas(context: &Context<'_>, pieces: &mut Vec<Piece>) {
    let of = |test: &dyn Fn(RoomUse) -> bool| {
        let rooms = context.source.facts.rooms.iter().filter(|r| test(r.room_use));
        rooms.fold(FloorArea::ZERO, |all, r| all + r.area)
    };
    let unfinished = |u: RoomUse| {
        matches!(u, RoomUse::Unfinished | RoomUse::Mechanical | RoomUse::Storage | RoomUse::Garage)
    };
    let say = |area| context.system.area(area);
    let rows = vec![
        vec!["Finished".to_owned(), say(of(&|u| !unfinished(u)))],
        vec!["Unfinished, storage, utility".to_owned(), say(of(&unfinished))],
        vec!["Together".to_owned(), say(of(&|_| true))],
    ];
    pieces.push(Piece::Head("Net floor areas".to_owned()));
    pieces.push(Piece::Table(Table {
        head: vec!["", "Between finished faces"],
        shares: vec![2.0, 2.0],
        rows,
    }));
    pieces.push(Piece::Gap);
}

fn department(desk: &Desk, pieces: &mut Vec<Piece>) {
    let Some(d) = desk.department else { return };
    pieces.push(Piece::Head(format!("List of {}", d.name)));
    let sets = d.sets.map_or(String::new(), |n| format!(" It asks for {n} identical sets."));
    pieces.push(Piece::Text(format!(
        "{}: {}.{sets} Lists change: ask the department.",
        d.publisher, d.title
    )));
    pieces.push(Piece::Gap);
}
