//! One dimension: a line with a slash at each end, and its figure.

use drawing::{Anchor, Marks, P, Stroke, Style, TextMark, Tone, text_width};

use crate::type_set::SMALL;

/// The line of a dimension.
pub(crate) const LINE: Stroke = Stroke::solid(Tone::Ink, 0.5);

/// A slash through each of some points.
pub(crate) fn slashes(points: &[P], m: &mut Marks) {
    let slash = |p: &P| (p.by(-2.5, 2.5), p.by(2.5, -2.5));
    m.segments(points.iter().map(slash).collect(), Stroke::solid(Tone::Ink, 0.9));
}

/// A dimension between two points that lie level or upright, its figure over the line or left of it.
pub(crate) fn between(a: P, b: P, text: &str, m: &mut Marks) {
    m.line(vec![a, b], LINE);
    slashes(&[a, b], m);
    let upright = (a.x - b.x).abs() < (a.y - b.y).abs();
    let at = a.towards(b, 0.5);
    let short = a.distance(b) < text_width(text, SMALL, Style::Plain) + 4.0;
    let mark = if upright && short {
        TextMark::new(at.by(-5.0, 0.0), text, SMALL, Tone::Ink).anchor(Anchor::End)
    } else if upright {
        TextMark::new(at.by(-6.0, 0.0), text, SMALL, Tone::Ink).angle(90.0)
    } else {
        TextMark::new(at.by(0.0, -6.0), text, SMALL, Tone::Ink)
    };
    m.text(mark);
}
