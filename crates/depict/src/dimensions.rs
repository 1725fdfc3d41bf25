//! Static drafting dimensions: the shell's walls outside, rectangular rooms' clear sizes inside.

use drawing::{Marks, P, Stroke, TextMark, Tone, size};
use geometry::{Seg, Shape};
use measure::{Len, Precision};
use plan::Body;
use space::{Room, WallFacts, WallKind};

use crate::arc::reading_angle;
use crate::labels::{NOBODY, Placer, strip};
use crate::picture::Canvas;
use crate::rooms::origin;

/// From the wall's outer face to the dimension line, in points.
const OUTSIDE: f32 = 20.0;
/// A shorter line is not dimensioned.
const LEAST: f32 = 34.0;
/// A room must be this wide and deep on the screen for dimension lines of its own.
const LEAST_ROOM: f32 = 110.0;

pub(crate) fn shell(canvas: &Canvas<'_>, placer: &mut Placer, marks: &mut Marks) {
    if !canvas.scene.show.dimensions {
        return;
    }
    for wall in canvas.scene.facts.walls.iter().filter(|w| w.kind == WallKind::Shell) {
        let away = wall.thickness + deepest_well(canvas, wall) + canvas.view.len(OUTSIDE);
        let line = wall.line.offset_left(-away);
        if canvas.sees(&[line.a, line.b, wall.line.a, wall.line.b]) {
            outside(canvas, wall, line, placer, marks);
        }
    }
}

/// How far the wells of a wall's windows reach out.
fn deepest_well(canvas: &Canvas<'_>, wall: &WallFacts) -> Len {
    let plan = &canvas.scene.facts.plan;
    canvas
        .scene
        .facts
        .openings
        .iter()
        .filter(|o| o.host == wall.id)
        .filter_map(|o| match plan.get(o.id).map(|e| &e.body) {
            Some(Body::Opening(opening)) => opening.window()?.well,
            _ => None,
        })
        .map(|well| well.projection)
        .max()
        .unwrap_or(Len::ZERO)
}

fn outside(
    canvas: &Canvas<'_>,
    wall: &WallFacts,
    line: Seg,
    placer: &mut Placer,
    marks: &mut Marks,
) {
    let view = canvas.view;
    let (a, b) = (view.screen_from_plan(line.a), view.screen_from_plan(line.b));
    let (fa, fb) = (view.screen_from_plan(wall.right.a), view.screen_from_plan(wall.right.b));
    let figure = canvas.scene.system.len(wall.line.len(), Precision::Tape);
    if let Some(text) = place(a, b, figure, false, placer) {
        marks.group(format!("dimension {}", canvas.name(wall.id)), |m| {
            let reach = fa.distance(a).max(1.0);
            // Extension lines start off the face and pass the dimension line.
            let extension = |face: P, end: P| {
                (face.towards(end, 4.0 / reach), face.towards(end, 1.0 + 5.0 / reach))
            };
            m.segments(vec![extension(fa, a), extension(fb, b)], Stroke::solid(Tone::SoftInk, 0.6));
            put(a, b, text, m);
        });
    }
}

/// Clear width and depth of a room that is a rectangle.
pub(crate) fn room(canvas: &Canvas<'_>, room: &Room, placer: &mut Placer, marks: &mut Marks) {
    let Some([a, b, c, d]) = rectangle(&room.shape) else { return };
    let view = canvas.view;
    let [sa, sb, sd] = [a, b, d].map(|p| view.screen_from_plan(p));
    let (u, v) = ((sb.x - sa.x, sb.y - sa.y), (sd.x - sa.x, sd.y - sa.y));
    if sa.distance(sb) < LEAST_ROOM || sa.distance(sd) < LEAST_ROOM {
        return;
    }
    let system = canvas.scene.system;
    let sides = [(u, v, Seg::new(a, b)), (v, u, Seg::new(a, d))];
    for (along, across, side) in sides {
        // The shell's dimension outside says it already.
        if canvas.scene.facts.walls.iter().any(|w| {
            let opposite = if side.b == b { Seg::new(d, c) } else { Seg::new(b, c) };
            w.kind == WallKind::Shell && (same(w.line, side) || same(w.line, opposite))
        }) {
            continue;
        }
        let len = side.len();
        let figure = system.len(len, Precision::Tape);
        let breadth = (across.0 * across.0 + across.1 * across.1).sqrt().max(1.0);
        let near = 20.0 / breadth;
        let found = [near, 1.0 - near, near * 2.0, 1.0 - near * 2.0, 0.25, 0.75]
            .into_iter()
            .find_map(|t| {
                let from = sa.by(across.0 * t, across.1 * t);
                let to = from.by(along.0, along.1);
                if !placer.is_free(&strip(from, to, 3.0), NOBODY) {
                    return None;
                }
                place(from, to, figure.clone(), true, placer).map(|text| (from, to, text))
            });
        if let Some((from, to, text)) = found {
            placer.block(strip(from, to, 3.0), NOBODY);
            marks.group(format!("dimension {}", origin(canvas, room)), |m| put(from, to, text, m));
        }
    }
}

/// Whether two segments have the same ends.
fn same(s: Seg, t: Seg) -> bool {
    (s.a, s.b) == (t.a, t.b) || (s.a, s.b) == (t.b, t.a)
}

/// The corners of a shape that is a rectangle without islands.
fn rectangle(shape: &Shape) -> Option<[geometry::Pt; 4]> {
    let q = <[geometry::Pt; 4]>::try_from(shape.outer.clone()).ok()?;
    let square = |i: usize| {
        let (u, v) = (q[(i + 1) % 4] - q[i], q[(i + 3) % 4] - q[i]);
        // Skew rooms are rounded to the grid: a slope of 1 in 10,000 still counts as square.
        (u.dot(v) as f64).abs() <= u.norm() * v.norm() * 1e-4
    };
    (shape.holes.is_empty() && (0..4).all(square)).then_some(q)
}

/// The figure above the line's middle, or a third from an end; it takes its place. With `clear` it also
/// keeps off what words should avoid.
fn place(a: P, b: P, figure: String, clear: bool, placer: &mut Placer) -> Option<TextMark> {
    let length = a.distance(b);
    if length < LEAST {
        return None;
    }
    let angle = reading_angle(a, b);
    let (sin, cos) = libm::sincosf(angle.to_radians());
    let text = TextMark::new(a, figure, size::SMALL, Tone::Ink).angle(angle);
    if text.width() + 10.0 > length {
        return None;
    }
    // Above, as one reads it: 7 points to the text's own up.
    [0.5, 0.3, 0.7].into_iter().find_map(|t| {
        let at = a.towards(b, t).by(-sin * 7.0, -cos * 7.0);
        let text = TextMark { at, ..text.clone() };
        let taken = if clear {
            placer.take_clear(text.corners(), NOBODY)
        } else {
            placer.take(text.corners(), NOBODY)
        };
        taken.then_some(text)
    })
}

/// The line with slanting strokes at its ends, and its figure.
fn put(a: P, b: P, text: TextMark, m: &mut Marks) {
    let length = a.distance(b).max(1.0);
    let (ux, uy) = ((b.x - a.x) / length, (b.y - a.y) / length);
    // 45° to the line, rising as one reads it.
    let slant = ((ux + uy) * 3.5, (uy - ux) * 3.5);
    m.line([a, b], Stroke::solid(Tone::SoftInk, 0.7));
    let stroke = |p: P| (p.by(-slant.0, -slant.1), p.by(slant.0, slant.1));
    m.segments(vec![stroke(a), stroke(b)], Stroke::solid(Tone::Ink, 1.3));
    m.text(text);
}
