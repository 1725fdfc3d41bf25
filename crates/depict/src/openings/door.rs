//! Doors: leaf and swing, folded panels, panels that pass, pockets, cased openings.

use drawing::{Marks, P, Stroke, Tone};
use geometry::Seg;
use measure::Len;
use plan::Element;
use plan::element::{Door, DoorOperation, End};
use space::{Leaf, OpeningFacts};

use super::{corners, tone};
use crate::arc::quarter;
use crate::picture::Canvas;

/// A leaf is drawn this thick: 1 3/8 in, the usual inside door (common practice, no source).
const LEAF: Len = Len::sixty_fourths(88);
pub(super) fn door(
    canvas: &Canvas<'_>,
    element: &Element,
    door: &Door,
    opening: &OpeningFacts,
    m: &mut Marks,
) {
    let [rn, rf, lf, ln] = corners(canvas, opening);
    let tone = tone(element);
    let jamb = Stroke::solid(tone, 1.4);
    m.segments(vec![(rn, ln), (rf, lf)], jamb);
    // What lies above the opening: the header, dashed as everything above the cut is.
    let above = Stroke::dashed(tone, 0.7, 3.0, 3.0);
    match door.operation {
        DoorOperation::Hinged => {
            for leaf in &opening.leaves {
                hinged(canvas, leaf, tone, m);
            }
        }
        DoorOperation::Bifold => {
            m.line([rn, rf], above);
            m.line([ln, lf], above);
            for leaf in &opening.leaves {
                bifold(canvas, leaf, tone, m);
            }
        }
        DoorOperation::Cased => {
            m.line([rn, rf], above);
            m.line([ln, lf], above);
        }
        DoorOperation::Sliding => sliding(canvas, [rn, rf, lf, ln], tone, m),
        DoorOperation::Pocket => pocket(canvas, door, opening, tone, m),
    }
}

fn hinged(canvas: &Canvas<'_>, leaf: &Leaf, tone: Tone, m: &mut Marks) {
    let view = canvas.view;
    // The leaf's thickness lies towards the opening.
    let thick = (leaf.shut - leaf.hinge).with_len(LEAF);
    let corners = [leaf.hinge, leaf.open, leaf.open + thick, leaf.hinge + thick];
    let corners = corners.map(|p| view.screen_from_plan(p));
    let [hinge, open, ..] = corners;
    let shut = view.screen_from_plan(leaf.shut);
    m.line(quarter(hinge, open, shut), Stroke::solid(tone, 0.8));
    m.fill(corners, Tone::Slab);
    m.outline(corners, Stroke::solid(tone, 1.1));
}

/// Two panels, half folded.
fn bifold(canvas: &Canvas<'_>, leaf: &Leaf, tone: Tone, m: &mut Marks) {
    let [hinge, shut, open] =
        [leaf.hinge, leaf.shut, leaf.open].map(|p| canvas.view.screen_from_plan(p));
    let (ax, ay) = (shut.x - hinge.x, shut.y - hinge.y);
    let (ox, oy) = (open.x - hinge.x, open.y - hinge.y);
    // 60° open: half along the wall, 0.866 out of it.
    let apex = hinge.by(ax * 0.5 + ox * 0.866, ay * 0.5 + oy * 0.866);
    let guide = hinge.by(ax, ay);
    let stroke = Stroke::solid(tone, 1.6);
    m.line([hinge, apex, guide], stroke);
    m.circle(guide, 1.5, Some(tone), None);
}

/// Two panels that pass each other, each a little over half the opening.
fn sliding(canvas: &Canvas<'_>, [rn, rf, lf, ln]: [P; 4], tone: Tone, m: &mut Marks) {
    let depth = rn.distance(ln).max(0.1);
    let t = (canvas.view.points(LEAF) / depth).clamp(0.08, 0.3);
    let (near, far) = (|v: f32| rn.towards(ln, v), |v: f32| rf.towards(lf, v));
    let panel = |low: f32, from: f32, to: f32| {
        let (a, b) = ((near(low), far(low)), (near(low + t), far(low + t)));
        [a.0.towards(a.1, from), a.0.towards(a.1, to), b.0.towards(b.1, to), b.0.towards(b.1, from)]
    };
    for panel in [panel(0.5 - t, 0.0, 0.54), panel(0.5, 0.46, 1.0)] {
        m.fill(panel, Tone::Slab);
        m.outline(panel, Stroke::solid(tone, 1.0));
    }
}

/// A leaf half drawn out of its pocket; the part in the wall is dashed.
fn pocket(canvas: &Canvas<'_>, door: &Door, opening: &OpeningFacts, tone: Tone, m: &mut Marks) {
    let view = canvas.view;
    let middle = |a: usize, b: usize| opening.quad[a].midway(opening.quad[b]);
    let (near, far) = (middle(0, 3), middle(1, 2));
    let (jamb, other) = match door.hinge {
        End::Start => (near, far),
        End::Finish => (far, near),
    };
    let into = jamb - other;
    let along = Seg::new(jamb, other);
    let half = LEAF / 2;
    let strip = |from: Seg| {
        let (l, r) = (from.offset_left(half), from.offset_left(-half));
        [r.a, r.b, l.b, l.a].map(|p| view.screen_from_plan(p))
    };
    let leaf = strip(Seg::new(jamb, along.point_at(door.leaf_width / 2)));
    let hidden = strip(Seg::new(jamb, jamb + into.with_len(door.leaf_width)));
    m.outline(hidden, Stroke::dashed(tone, 0.8, 3.0, 2.0));
    m.fill(leaf, Tone::Slab);
    m.outline(leaf, Stroke::solid(tone, 1.1));
}
