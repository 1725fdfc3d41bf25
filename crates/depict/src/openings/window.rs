//! Windows, and the wells outside them.

use drawing::{Marks, P, Stroke, Tone};
use measure::Len;
use plan::Element;
use plan::element::{Well, Window};
use space::OpeningFacts;

use super::{corners, tone};
use crate::labels::{NOBODY, Placer, strip};
use crate::picture::Canvas;

/// Frame faces and glass as three lines; the well outside.
pub(super) fn window(
    canvas: &Canvas<'_>,
    element: &Element,
    window: &Window,
    opening: &OpeningFacts,
    placer: &mut Placer,
    m: &mut Marks,
) {
    let [rn, rf, lf, ln] = corners(canvas, opening);
    let tone = tone(element);
    m.fill([rn, rf, lf, ln], Tone::Glass);
    m.segments(
        vec![(rn, rf), (ln, lf), (rn.towards(ln, 0.5), rf.towards(lf, 0.5)), (rn, ln), (rf, lf)],
        Stroke::solid(tone, 1.0),
    );
    if let Some(well) = &window.well {
        let ring = opening.well_ring(well);
        let q = ring.map(|p| canvas.view.screen_from_plan(p));
        for side in 0..3 {
            placer.avoid(strip(q[side], q[side + 1], 0.0), NOBODY);
        }
        m.line([q[0], q[1], q[2], q[3]], Stroke::solid(tone, 1.6));
        if well.ladder {
            ladder(canvas, well, &q, tone, m);
        }
    }
}

/// Two rails and their rungs on the well's far side.
fn ladder(canvas: &Canvas<'_>, well: &Well, q: &[P; 4], tone: Tone, m: &mut Marks) {
    let depth = q[0].distance(q[1]).max(0.1);
    let least = Len::inches(4).max(well.ladder_projection);
    let t = 1.0 - (canvas.view.points(least) / depth).min(0.5);
    let inner = (q[0].towards(q[1], t), q[3].towards(q[2], t));
    let (l0, l1) = (0.35, 0.65);
    let at = |s: f32, outer: bool| {
        if outer { q[1].towards(q[2], s) } else { inner.0.towards(inner.1, s) }
    };
    let mut lines = vec![(at(l0, false), at(l1, false)), (at(l0, false), at(l0, true))];
    lines.push((at(l1, false), at(l1, true)));
    for i in 1..4 {
        let s = l0 + (l1 - l0) * i as f32 / 4.0;
        lines.push((at(s, false), at(s, true)));
    }
    m.segments(lines, Stroke::solid(tone, 0.9));
}
