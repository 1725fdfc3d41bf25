//! Headings, paragraphs and tables that flow down columns and over to further pages.

use std::rc::Rc;

use drawing::{Marks, P, Stroke, Style, Tone};

use crate::paper::Area;
use crate::type_set::{BODY, HEAD, LEADING, wrap, write, write_lines};

/// Space between two columns.
const GUTTER: f32 = 18.0;
/// Space round a cell of a table.
const PAD: f32 = 3.0;

/// A piece of what flows.
#[derive(Clone, Debug)]
pub(crate) enum Piece {
    Head(String),
    Text(String),
    /// A line with a mark before it.
    Point(String),
    Table(Table),
    Gap,
}

/// A table: its columns take shares of the width.
#[derive(Clone, Debug)]
pub(crate) struct Table {
    pub head: Vec<&'static str>,
    pub shares: Vec<f32>,
    pub rows: Vec<Vec<String>>,
}

/// Draws a part from its left top corner.
type Draw = Rc<dyn Fn(&mut Marks, P)>;

/// A part that is not divided, with its height.
struct Block {
    height: f32,
    /// With this much of the next block it stays together.
    keep: bool,
    /// Drawn above it where a column begins with it: the head of its table.
    head: Option<(f32, Draw)>,
    /// Nothing where there is only space.
    draw: Option<Draw>,
}

/// Lays the pieces out in so many columns of the box; one list of marks for each page.
pub(crate) fn pages(pieces: &[Piece], area: Area, columns: usize) -> Vec<Marks> {
    let columns = columns.max(1);
    let gutters = GUTTER * (columns - 1) as f32;
    let width = (area.width() - gutters) / columns as f32;
    let blocks: Vec<Block> = pieces.iter().flat_map(|piece| blocks(piece, width)).collect();
    let mut pages = vec![Marks::new()];
    let (mut column, mut y) = (0, area.top);
    for (i, block) in blocks.iter().enumerate() {
        let Some(draw) = &block.draw else {
            // Space begins no column.
            y += if y > area.top { block.height } else { 0.0 };
            continue;
        };
        let follows = if block.keep { blocks.get(i + 1).map_or(0.0, |b| b.height) } else { 0.0 };
        let mut head = None;
        if y > area.top && y + block.height + follows > area.bottom {
            column += 1;
            y = area.top;
            if column == columns {
                pages.push(Marks::new());
                column = 0;
            }
            head = block.head.as_ref();
        }
        let x = area.left + column as f32 * (width + GUTTER);
        if let Some(page) = pages.last_mut() {
            if let Some((height, draw)) = head {
                draw(page, P::new(x, y));
                y += height;
            }
            draw(page, P::new(x, y));
        }
        y += block.height;
    }
    pages
}

fn blocks(piece: &Piece, width: f32) -> Vec<Block> {
    match piece {
        Piece::Gap => vec![Block { height: BODY, keep: false, head: None, draw: None }],
        Piece::Head(text) => lines(text, HEAD, Style::Bold, width, 0.0, true),
        Piece::Text(text) => lines(text, BODY, Style::Plain, width, 0.0, false),
        Piece::Point(text) => {
            let mut all = lines(text, BODY, Style::Plain, width, 10.0, false);
            if let Some(first) = all.first_mut()
                && let Some(draw) = first.draw.take()
            {
                first.draw = Some(Rc::new(move |m, at| {
                    m.circle(at.by(3.0, BODY * LEADING / 2.0), 1.4, Some(Tone::Ink), None);
                    draw(m, at);
                }));
            }
            all
        }
        Piece::Table(table) => rows(table, width),
    }
}

fn lines(text: &str, size: f32, style: Style, width: f32, indent: f32, keep: bool) -> Vec<Block> {
    let height = size * LEADING;
    let line = |text: String| Block {
        height,
        keep,
        head: None,
        draw: Some(Rc::new(move |m: &mut Marks, at: P| {
            write(m, at.by(indent, height / 2.0), &text, size, style);
        })),
    };
    wrap(text, size, style, width - indent).into_iter().map(line).collect()
}

fn rows(table: &Table, width: f32) -> Vec<Block> {
    let all: f32 = table.shares.iter().sum();
    let widths: Vec<f32> = table.shares.iter().map(|s| s / all * width).collect();
    let head = table.head.iter().map(|h| (*h).to_owned()).collect();
    let mut blocks: Vec<Block> = Vec::new();
    if table.head.iter().any(|h| !h.is_empty()) {
        blocks.push(row(head, &widths, Style::Bold));
    }
    let head: Option<(f32, Draw)> = blocks.first().and_then(|b| Some((b.height, b.draw.clone()?)));
    blocks.extend(
        table
            .rows
            .iter()
            .map(|cells| Block { head: head.clone(), ..row(cells.clone(), &widths, Style::Plain) }),
    );
    blocks
}

fn row(cells: Vec<String>, widths: &[f32], style: Style) -> Block {
    let lines: Vec<Vec<String>> = cells
        .iter()
        .zip(widths)
        .map(|(cell, width)| wrap(cell, BODY, style, width - 2.0 * PAD))
        .collect();
    let most = lines.iter().map(Vec::len).max().unwrap_or(1) as f32;
    let height = most * BODY * LEADING + 2.0 * PAD;
    let widths = widths.to_vec();
    let draw = move |m: &mut Marks, at: P| {
        let mut x = at.x;
        for (cell, width) in lines.iter().zip(&widths) {
            let first = P::new(x + PAD, at.y + PAD + 0.5 * BODY * LEADING);
            write_lines(m, first, cell.iter().cloned(), BODY, style);
            let cell = Area { left: x, top: at.y, right: x + width, bottom: at.y + height };
            m.outline(cell.ring(), Stroke::solid(Tone::SoftInk, 0.5));
            x += width;
        }
    };
    Block { height, keep: style == Style::Bold, head: None, draw: Some(Rc::new(draw)) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_table_that_goes_on_has_its_head_again_and_space_makes_no_page() {
        let area = Area { left: 0.0, top: 0.0, right: 200.0, bottom: 60.0 };
        let rows = (0..5).map(|i| vec![format!("row {i}")]).collect();
        let table = Table { head: vec!["Mark"], shares: vec![1.0], rows };
        let pages = pages(&[Piece::Table(table), Piece::Gap], area, 1);
        let texts = |page: &Marks| page.texts().map(|t| t.text.clone()).collect::<Vec<_>>();
        let all: Vec<Vec<String>> = pages.iter().map(texts).collect();
        assert_eq!(
            all,
            [vec!["Mark", "row 0", "row 1"], vec!["Mark", "row 2", "row 3"], vec!["Mark", "row 4"]]
        );
    }

    #[test]
    fn what_does_not_fit_goes_to_the_next_column_and_page() {
        let area = Area { left: 10.0, top: 10.0, right: 210.0, bottom: 60.0 };
        let pieces: Vec<Piece> = (0..20).map(|i| Piece::Text(format!("line {i}"))).collect();
        let pages = pages(&pieces, area, 2);
        assert_eq!(pages.len(), 3);
        let all: Vec<String> =
            pages.iter().flat_map(|p| p.texts().map(|t| t.text.clone())).collect();
        assert_eq!(all.len(), 20);
        for text in pages.iter().flat_map(Marks::texts) {
            assert!(text.corners().iter().all(|c| {
                c.x >= area.left && c.x <= area.right && c.y >= area.top && c.y <= area.bottom + 1.0
            }));
        }
    }
}
