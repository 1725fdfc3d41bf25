//! What the pointer was caught by: a mark, one word, and the guide line. Also ghosts and the marquee.

use drawing::{Anchor, Marks, P, Stroke, TextMark, Tone, size};
use geometry::Pt;

use crate::labels::{NOBODY, Placer, square};
use crate::{Scene, View};

/// A snap, as the editor tells it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Caught<'a> {
    /// One word: `end`, `face`, `square` …
    pub word: &'a str,
    pub at: Pt,
    /// The line of the direction that was caught.
    pub guide: Option<(Pt, Pt)>,
}

/// The guide line runs this far beyond the screen, in points.
const BEYOND: f32 = 4_000.0;

pub(crate) fn draw(view: &View, scene: &Scene<'_>, placer: &mut Placer, marks: &mut Marks) {
    for ring in scene.ghosts {
        let ring = view.ring(ring);
        marks.group("ghost", |m| {
            m.tint(ring.clone(), Tone::Select, 0.10);
            m.outline(ring, Stroke::dashed(Tone::Select, 1.2, 5.0, 3.0));
        });
    }
    if let Some((a, b)) = scene.marquee {
        let (a, b) = (view.screen_from_plan(a), view.screen_from_plan(b));
        let ring = [a, P::new(b.x, a.y), b, P::new(a.x, b.y)];
        marks.group("marquee", |m| {
            m.tint(ring, Tone::Select, 0.08);
            m.outline(ring, Stroke::dashed(Tone::Select, 1.0, 4.0, 3.0));
        });
    }
    if let Some(caught) = &scene.caught {
        marks.group("caught", |m| one(view, caught, placer, m));
    }
}

fn one(view: &View, caught: &Caught<'_>, placer: &mut Placer, m: &mut Marks) {
    let at = view.screen_from_plan(caught.at);
    if let Some((a, b)) = caught.guide {
        let (a, b) = (view.screen_from_plan(a), view.screen_from_plan(b));
        let length = a.distance(b);
        if length > 0.0 {
            let (dx, dy) = ((b.x - a.x) / length * BEYOND, (b.y - a.y) / length * BEYOND);
            m.line([a.by(-dx, -dy), b.by(dx, dy)], Stroke::dashed(Tone::Advice, 1.0, 8.0, 5.0));
        }
    }
    m.outline(square(at, 4.5), Stroke::solid(Tone::Advice, 1.5));
    let word = |dx: f32, dy: f32, anchor: Anchor| {
        TextMark::new(at.by(dx, dy), caught.word, size::SMALL, Tone::Advice)
            .anchor(anchor)
            .plate(Tone::Paper)
    };
    let words = [
        word(12.0, 16.0, Anchor::Start),
        word(12.0, -16.0, Anchor::Start),
        word(-12.0, 16.0, Anchor::End),
        word(-12.0, -16.0, Anchor::End),
        word(0.0, 30.0, Anchor::Middle),
        word(0.0, -30.0, Anchor::Middle),
    ];
    placer.block(square(at, 6.0), NOBODY);
    // Walls may lie behind the word: it has a plate.
    if let Some(word) = words.into_iter().find(|w| placer.take(w.plate_corners(), NOBODY)) {
        m.text(word);
    }
}
