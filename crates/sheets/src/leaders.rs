//! Words beside a section, each with a line to what it names.

use drawing::{Marks, P, Stroke, Style, Tone};

use crate::paper::Area;
use crate::type_set::{BODY, LEADING, wrap, write_lines};

/// Words in a column, each with a line to what it names; from top to bottom as what they name.
pub(crate) fn leaders(words: &mut Vec<(P, String)>, x: f32, cell: Area, m: &mut Marks) {
    words.retain(|(_, text)| !text.is_empty());
    words.sort_by(|a, b| a.0.y.total_cmp(&b.0.y));
    let width = cell.right - x - 6.0;
    let blocks: Vec<(P, Vec<String>)> =
        words.iter().map(|(at, text)| (*at, wrap(text, BODY, Style::Plain, width))).collect();
    let lines: usize = blocks.iter().map(|(_, lines)| lines.len()).sum();
    // Closer together where there is little room.
    let free = cell.height() - lines as f32 * BODY * LEADING;
    let gap = (free / blocks.len().max(1) as f32).clamp(1.0, 5.0);
    let height = |lines: &[String]| lines.len() as f32 * BODY * LEADING + gap;
    let mut places: Vec<f32> = Vec::new();
    let mut y = cell.top;
    for (at, lines) in &blocks {
        y = y.max(at.y - BODY);
        places.push(y);
        y += height(lines);
    }
    // What ran out below is pushed up again.
    let mut end = cell.bottom;
    for (place, (_, lines)) in places.iter_mut().zip(&blocks).rev() {
        *place = place.min(end - height(lines));
        end = *place;
    }
    for ((at, lines), y) in blocks.iter().zip(places) {
        let first = P::new(x, y + BODY / 2.0);
        m.line(
            vec![*at, first.by(-10.0, 0.0), first.by(-2.0, 0.0)],
            Stroke::solid(Tone::SoftInk, 0.4),
        );
        m.circle(*at, 1.2, Some(Tone::Ink), None);
        write_lines(m, first, lines.iter().cloned(), BODY, Style::Plain);
    }
}
