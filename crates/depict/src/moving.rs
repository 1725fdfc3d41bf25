//! Room to move: a band along the line of an element, the stretch in which nothing breaks, and what breaks at its ends.

use drawing::{Marks, P, Stroke, TextMark, Tone, size};
use geometry::Pt;
use measure::{Len, Precision};
use plan::Body;
use rules::room_to_move::{Break, RoomToMove};

use crate::labels::{NOBODY, Placer};
use crate::picture::Canvas;

/// Half the breadth of the band in points.
const HALF: f32 = 4.0;

/// A title longer than this is cut on the plan; the pane has it whole.
const LONGEST: usize = 44;

pub(crate) fn draw(canvas: &Canvas<'_>, placer: &mut Placer, marks: &mut Marks) {
    for found in canvas.scene.moving {
        let plan = &canvas.scene.moved_from.unwrap_or(&canvas.scene.facts.plan);
        let Some(at) = plan.get(found.course.element()).and_then(|e| anchor(plan, &e.body)) else {
            continue;
        };
        let name = canvas.name(found.course.element());
        marks.group(format!("room to move {name}"), |m| band(canvas, plan, found, at, placer, m));
    }
}

/// The point of an element from which offsets are drawn.
fn anchor(plan: &plan::Plan, body: &Body) -> Option<Pt> {
    Some(match body {
        Body::Opening(opening) => {
            let line = plan.get(opening.host)?.body.wall_line()?;
            line.point_at(opening.at + opening.width() / 2)
        }
        Body::Service(s) => s.placed().centre(),
        Body::Furnishing(f) => f.placed().centre(),
        Body::Stair(s) => s.foot,
        Body::Column(c) => c.at,
        body => {
            let points = body.points();
            let (first, last) = (*points.first()?, *points.last()?);
            first.midway(last)
        }
    })
}

fn band(
    canvas: &Canvas<'_>,
    plan: &plan::Plan,
    found: &RoomToMove,
    at: Pt,
    placer: &mut Placer,
    m: &mut Marks,
) {
    let place = |by: Len| canvas.view.screen_from_plan(at + found.course.vector(plan, by));
    let (from, to) = found.looked;
    let (start, end) = (place(from), place(to));
    let length = start.distance(end);
    if length < 1.0 {
        return;
    }
    let (ux, uy) = ((end.x - start.x) / length, (end.y - start.y) / length);
    let across = |p: P, by: f32| p.by(-uy * by, ux * by);
    m.line([start, end], Stroke::dashed(Tone::Stop, 1.5, 3.0, 4.0));
    for (a, b) in found.all() {
        let (a, b) = (place(a), place(b));
        let ring = [across(a, -HALF), across(b, -HALF), across(b, HALF), across(a, HALF)];
        m.tint(ring, Tone::Select, 0.35);
    }
    let (low, high) = found.safe();
    let (a, b) = (place(low), place(high));
    m.line([a, b], Stroke::solid(Tone::Select, 2.5));
    for (i, ends) in found.breaks().into_iter().enumerate() {
        let p = place(if i == 0 { low } else { high });
        let stroke = match ends {
            Some(_) => Stroke::solid(Tone::Stop, 2.5),
            None => Stroke::solid(Tone::Select, 1.5),
        };
        m.line([across(p, -HALF * 2.0), across(p, HALF * 2.0)], stroke);
        if let Some(ends) = ends {
            label(canvas, ends, p, (ux, uy), if i == 0 { -1.0 } else { 1.0 }, placer, m);
        }
    }
}

/// What breaks there, beyond the end of the stretch where that is free.
fn label(
    canvas: &Canvas<'_>,
    ends: Break<'_>,
    at: P,
    (ux, uy): (f32, f32),
    sign: f32,
    placer: &mut Placer,
    m: &mut Marks,
) {
    let figure = canvas.scene.system.inches(ends.at.abs(), Precision::Floor);
    let mut title: String = ends.fault.title.chars().take(LONGEST).collect();
    if title.len() < ends.fault.title.len() {
        title.push('…');
    }
    let words = format!("{figure}: {title}");
    let text =
        |p: P| TextMark::new(p, words.clone(), size::BODY, Tone::Stop).bold().plate(Tone::Paper);
    let half = text(at).width() / 2.0;
    let out = half * ux.abs() + 16.0;
    let beyond = at.by(ux * sign * out, uy * sign * out);
    // Beyond the end first, then ever further to the sides, above and below.
    let sides = [0.0, half + 14.0, -half - 14.0];
    let rows = [0.0, -18.0, 18.0, -36.0, 36.0, -54.0, 54.0, -72.0, 72.0];
    let round = rows.into_iter().flat_map(|dy| sides.into_iter().map(move |dx| (dx, dy)));
    let places = std::iter::once(beyond).chain(round.skip(1).map(|(dx, dy)| at.by(dx, dy)));
    let mut free = places.map(text);
    let free = free.find(|t| placer.take(t.plate_corners(), NOBODY));
    // What breaks is said wherever else it would have to stand.
    m.text(free.unwrap_or_else(|| text(beyond)));
}
