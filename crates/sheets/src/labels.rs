//! Words on a drawing that look for a free place.

use drawing::{Anchor, Marks, P, Stroke, Style, TextMark, Tone};

use crate::strings::apart;
use crate::type_set::LEADING;

/// Words that were placed, and level boxes that words keep off.
#[derive(Debug, Default)]
pub(crate) struct Labels {
    placed: Vec<TextMark>,
    boxes: Vec<(P, P)>,
}

/// A line of words: its text, size and style.
pub(crate) type Line = (String, f32, Style);

impl Labels {
    /// Keeps words off the box of some points.
    pub fn block(&mut self, points: &[P]) {
        let low = |v: fn(&P) -> f32| points.iter().map(v).fold(f32::MAX, f32::min);
        let high = |v: fn(&P) -> f32| points.iter().map(v).fold(f32::MIN, f32::max);
        self.boxes.push((P::new(low(|p| p.x), low(|p| p.y)), P::new(high(|p| p.x), high(|p| p.y))));
    }

    /// Keeps words off the words of a list.
    pub fn beside(&mut self, marks: &Marks) {
        self.placed.extend(marks.texts().cloned());
    }

    /// Writes lines, the first in the middle of the first free spot, and says whether there was one. Words that stand
    /// away from what they name are tied to it.
    pub fn write(
        &mut self,
        lines: &[Line],
        about: P,
        spots: impl IntoIterator<Item = P>,
        m: &mut Marks,
    ) -> bool {
        for spot in spots {
            let block = block(lines, spot);
            if !block.iter().all(|mark| self.free(mark)) {
                continue;
            }
            if (spot.y - about.y).abs() > 12.0 {
                let side = if spot.y > about.y { -5.0 } else { 5.0 };
                m.line(vec![about, spot.by(0.0, side)], Stroke::solid(Tone::SoftInk, 0.4));
            }
            for mark in block {
                self.placed.push(mark.clone());
                m.text(mark);
            }
            return true;
        }
        false
    }

    fn free(&self, mark: &TextMark) -> bool {
        let [lt, _, rb, _] = mark.corners();
        let off = |(low, high): &(P, P)| {
            rb.x <= low.x || high.x <= lt.x || rb.y <= low.y || high.y <= lt.y
        };
        self.placed.iter().all(|other| apart(mark, other)) && self.boxes.iter().all(off)
    }
}

fn block(lines: &[Line], spot: P) -> Vec<TextMark> {
    let mut y = spot.y;
    let mut block = Vec::new();
    for (text, size, style) in lines {
        let mark = TextMark::new(P::new(spot.x, y), text.clone(), *size, Tone::Ink);
        y += size * LEADING;
        block.push(TextMark { style: *style, ..mark.anchor(Anchor::Middle) });
    }
    block
}
