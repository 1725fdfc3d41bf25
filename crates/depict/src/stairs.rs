//! Stairs: treads, the cut, the arrow of the way up.

use drawing::{Anchor, Marks, P, Stroke, Tone, size};
use measure::Len;
use plan::Body;
use plan::element::Stair;

use crate::arc::reading_angle;
use crate::labels::{ANY_SIZE, Label, Line, Placer, Rank, Spot};
use crate::picture::Canvas;
use crate::walls::quad_of;

/// Height of the plan's cut above the slab: treads above it are dashed.
const CUT: Len = Len::feet_inches(4, 0);

pub(crate) fn draw(
    canvas: &Canvas<'_>,
    placer: &mut Placer,
    labels: &mut Vec<Label>,
    marks: &mut Marks,
) {
    for element in canvas.scene.facts.plan.elements().iter().filter(|e| e.stands()) {
        let Body::Stair(stair) = &element.body else { continue };
        let ring = stair.placed().corners();
        let Some(q) = quad_of(canvas, &ring).filter(|_| canvas.sees(&ring)) else { continue };
        placer.avoid(q, element.id.0);
        marks.group(element.name(), |m| flight(stair, &q, m));
        labels.push(label(element.name(), element.id.0, stair, &q));
    }
}

fn flight(stair: &Stair, q: &[P; 4], m: &mut Marks) {
    // Corners: right foot, right top, left top, left foot.
    let [rf, rt, lt, lf] = *q;
    m.fill(*q, Tone::Paper);
    let line = Stroke::solid(Tone::Ink, 1.0);
    let treads = stair.risers.saturating_sub(1).min(60);
    let below = (CUT.units() / stair.rise.units().max(1)).max(1) as u32;
    let at = |n: f32| {
        let t = n / treads.max(1) as f32;
        (rf.towards(rt, t), lf.towards(lt, t))
    };
    let nosings = |from: u32, to: u32| (from..to).map(|n| at(n as f32)).collect::<Vec<_>>();
    m.segments(nosings(1, treads.min(below)), line);
    m.segments(nosings(below.max(1), treads), Stroke::dashed(Tone::SoftInk, 0.8, 4.0, 3.0));
    if below < treads {
        cut(at(below as f32 - 0.7), at(below as f32 + 0.2), m);
    }
    m.outline(*q, line);
    // The arrow: a dot on the lowest tread, the head at the top.
    let (foot, top) = (rf.towards(lf, 0.5), rt.towards(lt, 0.5));
    let length = foot.distance(top).max(1.0);
    let head = foot.towards(top, 1.0 - 3.0 / length);
    let start = foot.towards(top, (6.0 / length).min(0.3));
    m.line([start, head], Stroke::solid(Tone::Ink, 1.2));
    m.circle(start, 2.2, Some(Tone::Ink), None);
    let back = 10.0 / length;
    let side = |to: P| {
        foot.towards(top, 1.0 - 3.0 / length - back).by(
            (to.x - rt.x) / rt.distance(lt).max(1.0) * 4.0,
            (to.y - rt.y) / rt.distance(lt).max(1.0) * 4.0,
        )
    };
    let mirror = |p: P| {
        let base = foot.towards(top, 1.0 - 3.0 / length - back);
        base.by(base.x - p.x, base.y - p.y)
    };
    let wing = side(lt);
    m.fill([head, wing, mirror(wing)], Tone::Ink);
}

/// A pair of slanting lines with a jog across the flight.
fn cut(low: (P, P), high: (P, P), m: &mut Marks) {
    let line = |shift: f32| {
        let a = low.0.towards(high.0, shift);
        let b = low.1.towards(high.1, shift + 1.0);
        let (p, q) = (a.towards(b, 0.44), a.towards(b, 0.56));
        let jog = (b.y - a.y, a.x - b.x);
        let k = 0.05;
        [a, p, p.by(jog.0 * k, jog.1 * k), q.by(-jog.0 * k, -jog.1 * k), q, b]
    };
    for shift in [-0.1, 0.15] {
        m.line(line(shift), Stroke::solid(Tone::Ink, 1.0));
    }
}

fn label(origin: String, owner: u32, stair: &Stair, q: &[P; 4]) -> Label {
    let [rf, rt, lt, lf] = *q;
    let foot = rf.towards(lf, 0.5);
    let top = rt.towards(lt, 0.5);
    let length = foot.distance(top).max(1.0);
    let before = |points: f32| foot.towards(top, -points / length);
    let width = rf.distance(lf).max(1.0);
    let angle = reading_angle(rf, rt);
    let beside = |from: P, to: P, t: f32| {
        from.towards(to, -9.0 / width).by((rt.x - rf.x) * t, (rt.y - rf.y) * t)
    };
    let along = |at: P| Spot { at, anchor: Anchor::Middle, angle };
    // Level words before the foot of a flight that runs across the screen end, or begin, at the foot.
    let (dx, dy) = (top.x - foot.x, top.y - foot.y);
    let ahead = match (dx.abs() > dy.abs(), dx > 0.0) {
        (true, true) => Anchor::End,
        (true, false) => Anchor::Start,
        (false, _) => Anchor::Middle,
    };
    let line = |text: String| vec![Line::plain(text, size::SMALL, Tone::Ink)];
    Label {
        origin,
        rank: Rank::Service,
        owner,
        forms: vec![line(format!("UP · {} risers", stair.risers)), line("UP".to_owned())],
        spots: vec![
            Spot::new(before(9.0), ahead),
            along(beside(rf, lf, 0.3)),
            along(beside(lf, rf, 0.3)),
            Spot::new(before(22.0), ahead),
        ],
        within: None,
        most: ANY_SIZE,
        plate: None,
    }
}
