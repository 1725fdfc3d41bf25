//! Columns: solid sections with centre lines.

use drawing::{Marks, Stroke, Tone};
use plan::Body;
use plan::element::ColumnShape;

use crate::labels::Placer;
use crate::picture::Canvas;
use crate::walls::quad_of;

pub(crate) fn draw(canvas: &Canvas<'_>, placer: &mut Placer, marks: &mut Marks) {
    for element in canvas.scene.facts.plan.elements().iter().filter(|e| e.stands()) {
        let Body::Column(column) = &element.body else { continue };
        let ring = column.placed().corners();
        let Some(quad) = quad_of(canvas, &ring).filter(|_| canvas.sees(&ring)) else { continue };
        placer.block(quad, element.id.0);
        let centre = canvas.view.screen_from_plan(column.at);
        let (a, b) = (quad[0].towards(quad[1], 0.5), quad[1].towards(quad[2], 0.5));
        marks.group(element.name(), |m| {
            match column.shape {
                ColumnShape::Round { diameter } => {
                    let radius = (canvas.view.points(diameter) / 2.0).max(2.0);
                    m.circle(centre, radius, Some(Tone::Shell), None);
                }
                ColumnShape::Square { .. } => m.fill(quad, Tone::Shell),
            }
            // Centre lines reach as far again beyond the section.
            let line = |to: drawing::P| (centre.towards(to, -2.0), centre.towards(to, 2.0));
            let thin = Stroke::solid(Tone::Shell, 0.7);
            m.segments(vec![line(a), line(b)], thin);
        });
    }
}
