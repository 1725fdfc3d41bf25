//! Overheads: dashed, since they hang above the cut, with their clear height written along them.

use drawing::{Anchor, Marks, P, Stroke, Tone, size};
use measure::Precision;
use plan::element::{OverheadKind, OverheadShape};
use plan::{Body, ElementId};
use space::OverheadFacts;

use crate::arc::reading_angle;
use crate::labels::{ANY_SIZE, Label, Line, Placer, Rank, Spot, strip};
use crate::picture::Canvas;

pub(crate) fn draw(
    canvas: &Canvas<'_>,
    placer: &mut Placer,
    labels: &mut Vec<Label>,
    marks: &mut Marks,
) {
    if !canvas.scene.show.overheads {
        return;
    }
    for overhead in &canvas.scene.facts.overheads {
        if !canvas.sees(&overhead.ring) {
            continue;
        }
        let ring = canvas.view.ring(&overhead.ring);
        let stroke = match overhead.kind {
            OverheadKind::Beam => Stroke::dashed(Tone::Overhead, 1.8, 11.0, 4.0),
            OverheadKind::Duct => Stroke::dashed(Tone::Overhead, 1.2, 7.0, 4.0),
            OverheadKind::Pipe => Stroke::dashed(Tone::Overhead, 1.0, 4.0, 3.0),
            OverheadKind::Soffit => Stroke::dashed(Tone::Overhead, 1.2, 11.0, 3.0),
        };
        marks.group(canvas.name(overhead.id), |m| {
            if overhead.kind == OverheadKind::Soffit && !canvas.scene.hatched {
                m.tint(ring.clone(), Tone::Overhead, 0.07);
            }
            m.outline(ring.clone(), stroke);
        });
        for (i, a) in ring.iter().enumerate() {
            placer.avoid(strip(*a, ring[(i + 1) % ring.len()], 0.0), overhead.id.0);
        }
        labels.push(label(canvas, overhead, &ring));
    }
}

/// The middle line of a run, or the middles of the two shorter sides of an outline's longest band.
fn axis(canvas: &Canvas<'_>, id: ElementId, ring: &[P]) -> (P, P, f32) {
    if let Some(Body::Overhead(o)) = canvas.scene.facts.plan.get(id).map(|e| &e.body)
        && let OverheadShape::Run { a, b, width } = &o.shape
    {
        let view = canvas.view;
        return (view.screen_from_plan(*a), view.screen_from_plan(*b), view.points(*width) / 2.0);
    }
    // Along the longest edge, through the middle of the corners.
    let edge = |i: usize| (ring[i], ring[(i + 1) % ring.len()]);
    let longest = (0..ring.len())
        .max_by(|i, j| {
            let length = |i: &usize| edge(*i).0.distance(edge(*i).1);
            length(i).total_cmp(&length(j)).then(j.cmp(i))
        })
        .unwrap_or(0);
    let (a, b) = edge(longest);
    let n = ring.len().max(1) as f32;
    let middle = ring.iter().fold(P::default(), |s, p| s.by(p.x / n, p.y / n));
    let half = ((b.x - a.x) / 2.0, (b.y - a.y) / 2.0);
    (middle.by(-half.0, -half.1), middle.by(half.0, half.1), 12.0)
}

fn label(canvas: &Canvas<'_>, overhead: &OverheadFacts, ring: &[P]) -> Label {
    let (a, b, half) = axis(canvas, overhead.id, ring);
    let angle = reading_angle(a, b);
    let length = a.distance(b).max(1.0);
    let up = ((b.y - a.y) / length, (a.x - b.x) / length);
    // On the run where it is wide enough for words, else beside it.
    let offsets: &[f32] = if half >= 7.0 { &[0.0] } else { &[half + 8.0, -half - 8.0] };
    // Only the part on the screen is written on.
    let (t0, t1) = on_screen(a, b, canvas.view.size);
    let mut spots = Vec::new();
    for t in [0.5, 0.35, 0.65, 0.22, 0.78, 0.1, 0.9] {
        for off in offsets {
            let at = a.towards(b, t0 + (t1 - t0) * t).by(up.0 * off, up.1 * off);
            spots.push(Spot { at, anchor: Anchor::Middle, angle });
        }
    }
    let clear = canvas.scene.system.len(overhead.clear, Precision::Floor);
    let line = |text: String| vec![Line::plain(text, size::SMALL, Tone::Overhead)];
    let word = overhead.kind.word();
    Label {
        origin: canvas.name(overhead.id),
        rank: Rank::Overhead,
        owner: overhead.id.0,
        forms: vec![line(format!("{word} {clear} clear")), line(format!("{word} {clear}"))],
        spots,
        within: None,
        most: ANY_SIZE,
        plate: None,
    }
}

/// The stretch of a line that is on the screen, as shares of its length.
fn on_screen(a: P, b: P, size: (f32, f32)) -> (f32, f32) {
    let (mut low, mut high) = (0.0f32, 1.0f32);
    for (from, to, limit) in [(a.x, b.x, size.0), (a.y, b.y, size.1)] {
        let d = to - from;
        if d.abs() > 0.01 {
            let (t0, t1) = (-from / d, (limit - from) / d);
            low = low.max(t0.min(t1));
            high = high.min(t0.max(t1));
        }
    }
    if low < high { (low, high) } else { (0.0, 1.0) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_seen_stretch_of_a_line() {
        let seen = on_screen(P::new(-100.0, 50.0), P::new(300.0, 50.0), (200.0, 100.0));
        assert_eq!(seen, (0.25, 0.75));
    }
}
