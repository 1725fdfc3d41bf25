//! Walls: the shell as solid poché, partitions and furring in chalk blue with their layers when near,
//! existing walls grey, removed ones dashed and crossed.

use drawing::{Anchor, Marks, P, Slope, Stroke, Tone, hatch, size};
use geometry::{Pt, Ring, Seg, Shape, convex_clip};
use measure::Len;
use plan::element::Material;
use plan::{Body, State};
use space::{LayerStrip, WallFacts};

use crate::labels::{ANY_SIZE, Label, Line, Placer, Rank, Spot};
use crate::outlines::outline;
use crate::picture::Canvas;
use crate::poche::{Class, Poche};

/// Points per inch from which layers can be told apart.
const LAYERS_FROM: f32 = 3.5;

pub(crate) fn draw(canvas: &Canvas<'_>, poche: &Poche, placer: &mut Placer, marks: &mut Marks) {
    let facts = canvas.scene.facts;
    for class in [Class::New, Class::Existing, Class::Shell] {
        for wall in facts.walls.iter().filter(|w| canvas.sees(&w.outline)) {
            if Class::of(facts, wall) == class {
                for piece in &wall.pieces {
                    placer.block(piece.map(|p| canvas.view.screen_from_plan(p)), wall.id.0);
                }
                marks.group(canvas.name(wall.id), |m| one(canvas, wall, class, m));
            }
        }
        let (shapes, stroke, origin) = match class {
            Class::Shell => (&poche.shell, Stroke::solid(Tone::Shell, 1.0), "shell outline"),
            Class::Existing => {
                (&poche.existing, Stroke::solid(Tone::Existing, 1.2), "existing outline")
            }
            Class::New => (&poche.new, Stroke::solid(Tone::New, 1.4), "new outline"),
        };
        marks.group(origin, |m| edges(canvas, shapes, stroke, m));
    }
    removed(canvas, placer, marks);
}

/// The short names of walls, along their faces.
pub(crate) fn names(canvas: &Canvas<'_>, labels: &mut Vec<Label>) {
    for wall in &canvas.scene.facts.walls {
        let Some(name) = canvas.scene.name_of(wall.id) else { continue };
        let at = |seg: Seg, t: f32| {
            let (a, b) = (canvas.view.screen_from_plan(seg.a), canvas.view.screen_from_plan(seg.b));
            a.towards(b, t)
        };
        let mut spots = Vec::new();
        for t in [0.5, 0.3, 0.7, 0.15, 0.85] {
            let (left, right) = (at(wall.left, t), at(wall.right, t));
            let depth = left.distance(right).max(0.1);
            for (from, to) in [(left, right), (right, left)] {
                let out = from.towards(to, 1.0 + 9.0 / depth);
                spots.push(Spot::new(out, Anchor::Middle));
            }
        }
        labels.push(Label {
            origin: format!("type of {}", canvas.name(wall.id)),
            rank: Rank::Opening,
            owner: wall.id.0,
            forms: vec![vec![Line::bold(name, size::SMALL, Tone::Ink)]],
            spots,
            within: None,
            most: ANY_SIZE,
            plate: None,
        });
    }
}

/// Only the edges on the screen: a shape may be as large as the plan.
fn edges(canvas: &Canvas<'_>, shapes: &[Shape], stroke: Stroke, m: &mut Marks) {
    for shape in shapes.iter().filter(|s| canvas.sees(&s.outer)) {
        for ring in shape.rings().filter(|r| canvas.sees(r)) {
            m.outline(canvas.view.ring(ring), stroke);
        }
    }
}

fn one(canvas: &Canvas<'_>, wall: &WallFacts, class: Class, m: &mut Marks) {
    let (fill, line) = match class {
        Class::Shell => (Tone::Shell, Tone::Shell),
        Class::Existing => (Tone::ExistingFill, Tone::Existing),
        Class::New => (Tone::NewFill, Tone::New),
    };
    let near = canvas.view.points_per_inch() >= LAYERS_FROM && class != Class::Shell;
    for piece in &wall.pieces {
        let ring = canvas.view.ring(piece);
        m.fill(ring.clone(), fill);
        // A hair of the same tone closes the seams between the pieces.
        m.outline(ring.clone(), Stroke::solid(fill, 0.8));
        if canvas.scene.hatched && class == Class::New && !near {
            m.segments(
                hatch(&[&ring], Slope::Rising, 3.5, canvas.phase()),
                Stroke::solid(line, 0.5),
            );
        }
    }
    if near {
        for strip in &wall.layers {
            layer(canvas, wall, strip, line, m);
        }
    }
}

/// One layer, cut to the pieces of its wall.
fn layer(canvas: &Canvas<'_>, wall: &WallFacts, strip: &LayerStrip, tone: Tone, m: &mut Marks) {
    let thin = Stroke::solid(tone, 0.6);
    for piece in &wall.pieces {
        let part = convex_clip(&strip.quad, piece);
        if part.len() < 3 || !canvas.sees(&part) {
            continue;
        }
        let ring = canvas.view.ring(&part);
        match strip.material {
            Material::Board | Material::Gap => {}
            Material::Stud => studs(canvas, wall, &part, thin, m),
            Material::Foam => {
                for slope in [Slope::Rising, Slope::Falling] {
                    let lines = hatch(&[&ring], slope, 6.0, canvas.phase());
                    m.segments(lines, Stroke::solid(tone, 0.4));
                }
            }
            Material::Panel => {
                let lines = hatch(&[&ring], Slope::Falling, 3.0, canvas.phase());
                m.segments(lines, Stroke::solid(tone, 0.4));
            }
            Material::Masonry => {
                let lines = hatch(&[&ring], Slope::Rising, 5.0, canvas.phase());
                m.segments(lines, Stroke::solid(tone, 0.6));
            }
        }
        // The lines between layers run along the wall; its ends belong to the joined outline.
        let along = wall.line.dir();
        let lines = (0..part.len()).filter(|&i| {
            let edge = part[(i + 1) % part.len()] - part[i];
            (along.cross(edge) as f64).abs() < 0.02 * along.norm() * edge.norm()
        });
        m.segments(lines.map(|i| (ring[i], ring[(i + 1) % ring.len()])).collect(), thin);
    }
}

/// Studs at their spacing from the wall's start, crossed as sawn wood is.
fn studs(canvas: &Canvas<'_>, wall: &WallFacts, layer: &Ring, stroke: Stroke, m: &mut Marks) {
    let spacing = match canvas.scene.facts.plan.get(wall.id).map(|e| &e.body) {
        Some(Body::Partition(p)) => p.spacing,
        Some(Body::Furring(f)) => f.spacing,
        _ => return,
    };
    if spacing < Len::inches(3) {
        return;
    }
    let length = wall.line.len();
    let half = Len::sixty_fourths(48);
    let count = length.units() / spacing.units();
    let centres = (0..=count.min(1_000)).map(|n| spacing * n);
    for centre in centres {
        // The first stud stands inside the end of the wall.
        let (from, to) =
            ((centre - half).max(Len::ZERO), (centre - half).max(Len::ZERO) + half * 2);
        if to > length {
            break;
        }
        let stud = convex_clip(layer, &across(wall, from, to));
        if stud.len() == 4 && canvas.sees(&stud) {
            let q: Vec<P> = canvas.view.ring(&stud);
            m.segments(vec![(q[0], q[2]), (q[1], q[3])], stroke);
            m.outline(q, stroke);
        }
    }
}

/// The band across a wall between two distances along its line, wider than the wall.
fn across(wall: &WallFacts, from: Len, to: Len) -> Ring {
    let line = Seg::new(wall.line.point_at(from), wall.line.point_at(to));
    let reach = wall.thickness * 2;
    let (l, r) = (line.offset_left(reach), line.offset_left(-reach));
    vec![r.a, r.b, l.b, l.a]
}

/// What goes: dashed, with crosses along it.
fn removed(canvas: &Canvas<'_>, placer: &mut Placer, marks: &mut Marks) {
    for element in canvas.scene.facts.plan.elements().iter() {
        let body = &element.body;
        let wall = matches!(body, Body::Shell(_) | Body::Partition(_) | Body::Furring(_));
        let shown = canvas.shows(body) && element.state == State::Removed;
        if !shown {
            continue;
        }
        let ring = outline(canvas.scene.facts, element);
        if ring.len() < 3 || !canvas.sees(&ring) {
            continue;
        }
        let q = canvas.view.ring(&ring);
        if let Ok(quad) = <[P; 4]>::try_from(q.clone()) {
            placer.avoid(quad, element.id.0);
        }
        marks.group(element.name(), |m| {
            m.outline(q.clone(), Stroke::dashed(Tone::Removed, 1.2, 5.0, 3.0));
            let thin = Stroke::solid(Tone::Removed, 1.0);
            if !wall {
                let reach = q.len() / 2;
                m.segments((0..reach).map(|i| (q[i], q[i + reach])).collect(), thin);
                return;
            }
            // The band's right face is q[0] to q[1], its left face q[3] to q[2].
            let length = q[0].distance(q[1]);
            let count = (length / 36.0).floor().clamp(1.0, 200.0);
            let arm = (q[0].distance(q[3]) / length.max(1.0)).min(0.5) / 2.0;
            let cross = |n: f32| {
                let t = (n + 0.5) / count;
                let at = |t: f32, side: bool| {
                    if side { q[0].towards(q[1], t) } else { q[3].towards(q[2], t) }
                };
                [(at(t - arm, true), at(t + arm, false)), (at(t + arm, true), at(t - arm, false))]
            };
            m.segments((0..count as i32).flat_map(|n| cross(n as f32)).collect(), thin);
        });
    }
}

/// A point as a box of the screen, for callers that need one.
pub(crate) fn quad_of(canvas: &Canvas<'_>, ring: &[Pt]) -> Option<[P; 4]> {
    <[P; 4]>::try_from(canvas.view.ring(ring)).ok()
}
