//! Keep-clear boxes: thin dashed with a light hatch; dense and red where something stands in one.

use drawing::{Anchor, Marks, Slope, Stroke, Tone, hatch, size};
use plan::ElementId;
use rules::{KeepClear, Place, Severity};

use crate::findings;
use crate::labels::{ANY_SIZE, Label, Line, Placer, Rank, Spot};
use crate::outlines::middle;
use crate::picture::Canvas;

pub(crate) fn draw(
    canvas: &Canvas<'_>,
    placer: &mut Placer,
    labels: &mut Vec<Label>,
    marks: &mut Marks,
) {
    if !canvas.scene.show.keep_clears {
        return;
    }
    for (index, keep_clear) in canvas.scene.keep_clears.iter().enumerate() {
        if !canvas.sees(&keep_clear.ring) {
            continue;
        }
        let ring = canvas.view.ring(&keep_clear.ring);
        let name = canvas.name(keep_clear.service);
        let severity = severity(canvas, keep_clear);
        let (tone, slope, gap, weight, edge) = if keep_clear.breached {
            let tone = findings::tone(severity);
            (tone, Slope::Rising, 4.0, 0.9, Stroke::solid(tone, 1.4))
        } else {
            let edge = Stroke::dashed(Tone::KeepClear, 0.9, 4.0, 3.0);
            (Tone::KeepClear, Slope::Falling, 9.0, 0.35, edge)
        };
        // Another box of the same service point over the same floor is not hatched again.
        let repeated = canvas.scene.keep_clears[..index]
            .iter()
            .any(|k| k.ring == keep_clear.ring && k.breached == keep_clear.breached);
        if repeated {
            continue;
        }
        marks.group(format!("keep-clear {} {name}", keep_clear.rule), |m| {
            if keep_clear.breached && !canvas.scene.hatched {
                m.tint(ring.clone(), findings::fill(severity), 0.55);
            }
            m.segments(hatch(&[&ring], slope, gap, canvas.phase()), Stroke::solid(tone, weight));
            m.outline(ring.clone(), edge);
        });
        if let Ok(quad) = <[drawing::P; 4]>::try_from(ring.clone()) {
            placer.avoid(quad, keep_clear.service.0);
        }
        if let Some(at) = middle(&keep_clear.ring) {
            labels.push(word(canvas, keep_clear.service, keep_clear.word, tone, at, ring));
        }
    }
}

/// How much the breach of a box matters: what the finding that names it says. A box that no finding names
/// counts as a correction.
fn severity(canvas: &Canvas<'_>, keep_clear: &KeepClear) -> Severity {
    canvas
        .scene
        .findings
        .iter()
        .filter(|f| {
            f.places.iter().any(
                |p| matches!(p, Place::Breach { keep_clear: ring, .. } if *ring == keep_clear.ring),
            )
        })
        .map(|f| f.severity)
        .min()
        .unwrap_or(Severity::Correction)
}

fn word(
    canvas: &Canvas<'_>,
    service: ElementId,
    word: &str,
    tone: Tone,
    at: geometry::Pt,
    ring: Vec<drawing::P>,
) -> Label {
    let at = canvas.view.screen_from_plan(at);
    let spots = [0.0, 12.0, -12.0, 24.0, -24.0]
        .map(|dy| Spot::new(at.by(0.0, dy), Anchor::Middle))
        .to_vec();
    Label {
        origin: canvas.name(service),
        rank: Rank::Detail,
        owner: service.0,
        forms: vec![vec![Line::plain(word, size::SMALL, tone)]],
        spots,
        within: Some(ring),
        most: ANY_SIZE,
        plate: Some(Tone::Slab),
    }
}
