//! The figure of a blade.

use drawing::{Marks, P, Stroke, Style, TextMark, Tone, size, text_width};
use measure::{Precision, System};

use super::{BREADTH, Blade, FigureBox, Frame};
use crate::View;
use crate::labels::{NOBODY, Placer, overlap};

/// The figure, always level: on the blade where it fits, else on a flag beside it.
pub(super) fn figure(
    view: &View,
    system: System,
    index: usize,
    blade: &Blade<'_>,
    frame: &Frame,
    (busy, placer): (&[[P; 4]], &mut Placer),
    m: &mut Marks,
) -> FigureBox {
    let text = blade.typed.map_or_else(|| system.len(blade.value, Precision::Tape), str::to_owned);
    let width =
        text_width(&text, size::BODY, Style::Bold).max(if blade.editable { 40.0 } else { 0.0 });
    let half = (width / 2.0 + 6.0, BREADTH / 2.0);
    let box_at = |c: P| {
        [(-half.0, -half.1), (half.0, -half.1), (half.0, half.1), (-half.0, half.1)]
            .map(|(x, y)| c.by(x, y))
    };
    // The extent of the level box along the blade.
    let extent = 2.0 * (half.0 * frame.along.0.abs() + half.1 * frame.along.1.abs());
    let on_screen = |c: &P| {
        c.x > half.0 && c.y > half.1 && c.x < view.size.0 - half.0 && c.y < view.size.1 - half.1
    };
    let middle = frame.from.towards(frame.to, 0.5);
    let fits = frame.length >= extent + 10.0;
    let off = half.0 * frame.up.0.abs() + half.1 * frame.up.1.abs() + BREADTH / 2.0 + 4.0;
    let lift = |c: P, by: f32| c.by(frame.up.0 * by, frame.up.1 * by);
    // On the blade: the middle, then nearer to an end. On a flag: above, below, then further out.
    let mut places: Vec<P> = Vec::new();
    if fits {
        places.extend([0.5, 0.3, 0.7, 0.2, 0.8].map(|t| frame.from.towards(frame.to, t)));
    }
    let along = |by: f32| middle.by(frame.along.0 * by, frame.along.1 * by);
    for far in [1.0, 2.0, 3.0, 4.0] {
        for shift in [0.0, 0.7, -0.7] {
            places.push(lift(along(extent * shift), off * far));
            places.push(lift(along(extent * shift), -off * far));
        }
    }
    let on_blade = |c: &P| fits && places[..5].contains(c);
    let free = |c: &P| {
        let quad = box_at(*c);
        on_screen(c)
            && busy.iter().all(|b| !overlap(&quad, b))
            && (on_blade(c) || placer.is_free(&quad, NOBODY))
    };
    let at = places.iter().find(|c| free(c)).or_else(|| places.iter().find(|c| on_screen(c)));
    let at = at.copied().unwrap_or(middle);
    let fits = on_blade(&at);
    placer.block(box_at(at), NOBODY);
    if !fits {
        m.line([middle, at], Stroke::solid(Tone::Ink, 1.0));
    }
    let (fill, edge) = match (blade.typed.is_some(), blade.editable) {
        (true, _) => (Tone::Paper, Some(Stroke::solid(Tone::Select, 2.0))),
        (false, true) => (Tone::Tape, Some(Stroke::dashed(Tone::TapeInk, 0.8, 2.0, 2.0))),
        (false, false) if fits => (Tone::Tape, None),
        (false, false) => (Tone::Tape, Some(Stroke::solid(Tone::TapeInk, 0.8))),
    };
    let inset = if fits { 1.5 } else { 0.0 };
    let plate = [
        at.by(-half.0, -half.1 + inset),
        at.by(half.0, -half.1 + inset),
        at.by(half.0, half.1 - inset),
        at.by(-half.0, half.1 - inset),
    ];
    m.fill(plate, fill);
    if let Some(edge) = edge {
        m.outline(plate, edge);
    }
    let ink = if blade.typed.is_some() { Tone::Ink } else { Tone::TapeInk };
    let shown = text_width(&text, size::BODY, Style::Bold);
    m.text(TextMark::new(at, text, size::BODY, ink).bold());
    if blade.typed.is_some() {
        let x = at.x + shown / 2.0 + 1.5;
        m.line([P::new(x, at.y - 6.0), P::new(x, at.y + 6.0)], Stroke::solid(Tone::Ink, 1.2));
    }
    FigureBox { blade: index, min: at.by(-half.0, -half.1), max: at.by(half.0, half.1) }
}
