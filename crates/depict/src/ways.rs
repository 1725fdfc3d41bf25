//! Ways in: where people come in, where ways pinch, and the way that is lit.

use drawing::{Marks, P, Stroke, TextMark, Tone, size};
use measure::{Len, Precision};
use space::ways::{Gap, Hindrance, Target, Walked, WayIn, Ways};

use crate::labels::{NOBODY, Placer};
use crate::picture::Canvas;

/// Pinches that are narrower are drawn; a wider one is in nobody's way (common practice, no source).
const NARROW: Len = Len::inches(36);

/// The ways of a plan, and the one that is lit.
#[derive(Clone, Copy, Debug)]
pub struct WaysLayer<'a> {
    pub ways: &'a Ways,
    pub lit: Option<Target>,
    /// The walk of the way that is lit.
    pub walk: Option<&'a Walked>,
}

pub(crate) fn draw(canvas: &Canvas<'_>, placer: &mut Placer, marks: &mut Marks) {
    let Some(layer) = canvas.scene.ways else { return };
    for arrival in &layer.ways.arrivals {
        marks.group(format!("arrival {}", canvas.name(arrival.element)), |m| {
            let at = canvas.view.screen_from_plan(arrival.at);
            m.circle(at, 5.0, Some(Tone::Paper), Some(Stroke::solid(Tone::Advice, 2.0)));
            word(placer, m, at, "way in", Tone::Advice);
        });
    }
    let mut drawn: Vec<&Gap> = Vec::new();
    for way in &layer.ways.ways {
        let lit = layer.lit == Some(way.target);
        if lit {
            place(canvas, way, layer.walk, marks);
        }
        let Some(gap) = way.gap().filter(|_| lit || shows(way)) else { continue };
        // Several ways may pass the same pinch.
        if drawn.contains(&gap) || !canvas.sees(&[gap.from, gap.to]) {
            continue;
        }
        drawn.push(gap);
        let [a, b] = gap.between.map(|id| canvas.name(id));
        marks.group(format!("pinch {a} {b}"), |m| pinch(canvas, gap, way.width, lit, placer, m));
    }
}

/// Whether a pinch is worth drawing without being asked for.
fn shows(way: &WayIn) -> bool {
    matches!(way.hindrance, Hindrance::Pinch(_)) && way.width < NARROW
}

/// The walk, and the place where somebody stands at the target.
fn place(canvas: &Canvas<'_>, way: &WayIn, walk: Option<&Walked>, marks: &mut Marks) {
    let at = canvas.view.screen_from_plan(way.place);
    marks.group("way", |m| {
        if let Some(walk) = walk {
            m.line(canvas.view.ring(&walk.line), Stroke::dashed(Tone::Advice, 2.0, 7.0, 4.0));
        }
        m.circle(at, 7.0, None, Some(Stroke::solid(Tone::Advice, 2.0)));
        m.circle(at, 2.5, Some(Tone::Advice), None);
    });
}

/// A line across the gap with a stroke at both ends, and its width.
fn pinch(
    canvas: &Canvas<'_>,
    gap: &Gap,
    width: Len,
    lit: bool,
    placer: &mut Placer,
    m: &mut Marks,
) {
    let tone = if width == Len::ZERO { Tone::Stop } else { Tone::Advice };
    let stroke = Stroke::solid(tone, if lit { 3.0 } else { 2.0 });
    let (p, q) = (canvas.view.screen_from_plan(gap.from), canvas.view.screen_from_plan(gap.to));
    m.line([p, q], stroke);
    let length = p.distance(q).max(0.01);
    let (ux, uy) = ((q.x - p.x) / length, (q.y - p.y) / length);
    for end in [p, q] {
        m.line([end.by(-uy * 5.0, ux * 5.0), end.by(uy * 5.0, -ux * 5.0)], stroke);
    }
    let figure = match width {
        Len::ZERO => "closed".to_owned(),
        width => canvas.scene.system.inches(width, Precision::Floor),
    };
    word(placer, m, p.towards(q, 0.5), &figure, tone);
}

/// A word beside a point, where it is free; else it is left to the pane.
fn word(placer: &mut Placer, m: &mut Marks, at: P, word: &str, tone: Tone) {
    let text =
        |at: P| TextMark::new(at, word.to_owned(), size::BODY, tone).bold().plate(Tone::Paper);
    let (right, up) = (text(at).width() / 2.0 + 12.0, 16.0);
    let places = [
        (0.0, 0.0),
        (right, 0.0),
        (-right, 0.0),
        (0.0, -up),
        (0.0, up),
        (right, up),
        (-right, -up),
    ];
    let mut free = places.map(|(dx, dy)| text(at.by(dx, dy))).into_iter().skip(1);
    if let Some(text) = free.find(|t| placer.take(t.plate_corners(), NOBODY)) {
        m.text(text);
    }
}
