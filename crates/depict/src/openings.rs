//! Doors and windows in drafting convention, wells, and their sizes when near.

use drawing::{Anchor, Marks, P, Stroke, Tone, size};
use geometry::{Seg, Vec2};
use measure::{Len, Precision};
use plan::element::{Door, DoorOperation, End, OpeningKind, Side, Well, Window};
use plan::{Body, Element, State};
use space::{Leaf, OpeningFacts};

use crate::arc::{quarter, reading_angle};
use crate::labels::{ANY_SIZE, Label, Line, NOBODY, Placer, Rank, Spot, strip};
use crate::picture::Canvas;

/// A leaf is drawn this thick: 1 3/8 in, the usual inside door (common practice, no source).
const LEAF: Len = Len::sixty_fourths(88);
/// Points per inch from which sizes are written.
const SIZES_FROM: f32 = 1.4;

pub(crate) fn draw(
    canvas: &Canvas<'_>,
    placer: &mut Placer,
    labels: &mut Vec<Label>,
    marks: &mut Marks,
) {
    let facts = canvas.scene.facts;
    for opening in &facts.openings {
        let Some(element) = facts.plan.get(opening.id) else { continue };
        let Body::Opening(body) = &element.body else { continue };
        let reach = body.width().max(Len::feet_inches(4, 0));
        if !canvas.sees_near(&opening.quad, reach) {
            continue;
        }
        if let Some(leaf) = opening.leaves.first() {
            let far = leaf.shut + (leaf.open - leaf.hinge);
            let quad = [leaf.hinge, leaf.shut, far, leaf.open];
            placer.avoid(quad.map(|p| canvas.view.screen_from_plan(p)), opening.id.0);
        }
        placer.block(opening.quad.map(|p| canvas.view.screen_from_plan(p)), opening.id.0);
        marks.group(element.name(), |m| match &body.kind {
            OpeningKind::Door(d) => door(canvas, element, d, opening, m),
            OpeningKind::Window(w) => window(canvas, element, w, opening, placer, m),
        });
        if canvas.view.points_per_inch() >= SIZES_FROM {
            labels.push(label(canvas, element, &body.kind, opening));
        }
    }
}

fn tone(element: &Element) -> Tone {
    match element.state {
        State::New => Tone::New,
        State::Existing | State::Removed => Tone::Ink,
    }
}

/// The hole's edges on the screen: right near, right far, left far, left near.
fn corners(canvas: &Canvas<'_>, opening: &OpeningFacts) -> [P; 4] {
    opening.quad.map(|p| canvas.view.screen_from_plan(p))
}

fn door(
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

/// Frame faces and glass as three lines; the well outside.
fn window(
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
        let ring = well_ring(well, opening);
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

/// The well's clear outline: out from the wall, along, and back. Outside is the host's right.
pub(crate) fn well_ring(well: &Well, opening: &OpeningFacts) -> [geometry::Pt; 4] {
    let face = opening.face(Side::Right);
    let out: Vec2 = -face.dir().left();
    let middle = face.a.midway(face.b);
    let to_end = face.dir().with_len(well.width / 2);
    let out = out.with_len(well.projection);
    [middle - to_end, middle - to_end + out, middle + to_end + out, middle + to_end]
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

/// Width × height, along the wall on either side of it.
fn label(
    canvas: &Canvas<'_>,
    element: &Element,
    kind: &OpeningKind,
    opening: &OpeningFacts,
) -> Label {
    let system = canvas.scene.system;
    let size_text = |w: Len, h: Len| {
        format!("{} × {}", system.inches(w, Precision::Tape), system.inches(h, Precision::Tape))
    };
    let (text, more) = match kind {
        OpeningKind::Door(d) => (size_text(d.leaf_width, d.leaf_height), None),
        OpeningKind::Window(w) => {
            (size_text(w.frame_width, w.frame_height), Some(w.operation.word()))
        }
    };
    let [rn, rf, lf, ln] = corners(canvas, opening);
    let angle = reading_angle(rn, rf);
    let (right, left) = (rn.towards(rf, 0.5), ln.towards(lf, 0.5));
    let depth = right.distance(left).max(0.1);
    let beyond = |from: P, to: P, points: f32| from.towards(to, 1.0 + points / depth);
    let mut spots = Vec::new();
    // Before the side that the leaf does not swing to, then the other.
    // A window's size stands outside.
    let right_first = match kind {
        OpeningKind::Door(d) => d.swing == Side::Left,
        OpeningKind::Window(_) => true,
    };
    let sides =
        if right_first { [(left, right), (right, left)] } else { [(right, left), (left, right)] };
    for (from, to) in sides {
        for points in [8.0, 20.0] {
            spots.push(Spot { at: beyond(from, to, points), anchor: Anchor::Middle, angle });
        }
    }
    let line = |text: String| vec![Line::plain(text, size::SMALL, Tone::SoftInk)];
    let mut forms = Vec::new();
    if let Some(word) = more {
        forms.push(line(format!("{text} {word}")));
    }
    forms.push(line(text));
    Label {
        origin: element.name(),
        rank: Rank::Opening,
        owner: opening.id.0,
        forms,
        spots,
        within: None,
        most: ANY_SIZE,
        plate: None,
    }
}
