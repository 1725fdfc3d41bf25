//! Furnishings: plain boxes with their names.

use drawing::{Anchor, Marks, Stroke, Tone, size};
use plan::Body;

use crate::arc::reading_angle;
use crate::labels::{ANY_SIZE, Label, Line, Placer, Rank, Spot, beside};
use crate::picture::Canvas;
use crate::walls::quad_of;

pub(crate) fn draw(
    canvas: &Canvas<'_>,
    placer: &mut Placer,
    labels: &mut Vec<Label>,
    marks: &mut Marks,
) {
    if !canvas.scene.show.furnishings {
        return;
    }
    for element in canvas.scene.facts.plan.elements().iter().filter(|e| e.stands()) {
        let Body::Furnishing(furnishing) = &element.body else { continue };
        let ring = furnishing.placed().corners();
        let Some(q) = quad_of(canvas, &ring).filter(|_| canvas.sees(&ring)) else { continue };
        placer.avoid(q, element.id.0);
        marks.group(element.name(), |m| {
            m.fill(q, Tone::Paper);
            m.outline(q, Stroke::solid(Tone::Ink, if furnishing.fixed { 1.4 } else { 0.9 }));
            // The back edge is doubled: the front is where one stands.
            let inset = (3.0 / q[0].distance(q[1]).max(1.0)).min(0.25);
            m.segments(
                vec![(q[0].towards(q[1], inset), q[3].towards(q[2], inset))],
                Stroke::solid(Tone::SoftInk, 0.7),
            );
        });
        let middle = q[0].towards(q[2], 0.5);
        let across = reading_angle(q[0], q[3]);
        let depth = reading_angle(q[0], q[1]);
        let mut spots = vec![Spot::new(middle, Anchor::Middle)];
        let (width, height) = (q[0].distance(q[3]), q[0].distance(q[1]));
        for angle in if width >= height { [across, depth] } else { [depth, across] } {
            for (u, v) in [(0.5, 0.5), (0.25, 0.5), (0.75, 0.5), (0.5, 0.25), (0.5, 0.75)] {
                let at = q[0].towards(q[3], u).towards(q[1].towards(q[2], u), v);
                spots.push(Spot { at, anchor: Anchor::Middle, angle });
            }
        }
        let inside = Label {
            origin: element.name(),
            rank: Rank::Furnishing,
            owner: element.id.0,
            forms: vec![vec![Line::plain(furnishing.name.clone(), size::SMALL, Tone::Ink)]],
            spots,
            within: Some(q.to_vec()),
            most: ANY_SIZE,
            plate: None,
        };
        labels.push(if inside.can_fit() {
            inside
        } else {
            let spots = beside(middle, width.min(height) / 2.0);
            Label { spots, within: canvas.slab_at(middle), ..inside }
        });
    }
}
