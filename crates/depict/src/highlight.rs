//! What is selected or under the pointer.

use drawing::{Marks, Stroke, Tone};
use plan::{Body, Element};

use crate::labels::square;
use crate::outlines::outline;
use crate::picture::Canvas;

pub(crate) fn draw(canvas: &Canvas<'_>, marks: &mut Marks) {
    let scene = canvas.scene;
    let plan = &scene.facts.plan;
    let hovered = scene.hovered.filter(|id| !scene.selected(*id)).and_then(|id| plan.get(id));
    if let Some(element) = hovered {
        marks.group(format!("hover {}", element.name()), |m| {
            ring(canvas, element, Stroke::solid(Tone::Select, 1.2), 0.10, m);
        });
    }
    for element in scene.selection.iter().filter_map(|id| plan.get(*id)) {
        marks.group(format!("select {}", element.name()), |m| {
            ring(canvas, element, Stroke::solid(Tone::Select, 2.2), 0.12, m);
            handles(canvas, element, m);
        });
    }
}

fn ring(canvas: &Canvas<'_>, element: &Element, stroke: Stroke, alpha: f32, m: &mut Marks) {
    let facts = canvas.scene.facts;
    let ring = match &element.body {
        Body::RoomTag(_) => {
            let room = facts.rooms.iter().find(|r| r.tag == Some(element.id));
            room.map(|r| r.shape.outer.clone()).unwrap_or_default()
        }
        _ => outline(facts, element),
    };
    if let [a, b] = ring[..] {
        m.line(vec![canvas.view.screen_from_plan(a), canvas.view.screen_from_plan(b)], stroke);
    }
    if ring.len() >= 3 {
        let points = canvas.view.ring(&ring);
        if !matches!(element.body, Body::RoomTag(_)) {
            m.tint(points.clone(), stroke.tone, alpha);
        }
        m.outline(points, stroke);
    }
    if let (true, Some(p)) =
        (matches!(element.body, Body::RoomTag(_) | Body::Note(_)), element.body.points().first())
    {
        m.outline(square(canvas.view.screen_from_plan(*p), 6.0), stroke);
    }
}

/// Squares on the points that place it: the ends of a wall or run, the corners of an outline.
fn handles(canvas: &Canvas<'_>, element: &Element, m: &mut Marks) {
    let grips = match &element.body {
        Body::Shell(_) | Body::Partition(_) | Body::Overhead(_) | Body::Section(_) => {
            element.body.points()
        }
        _ => return,
    };
    for p in grips {
        let q = square(canvas.view.screen_from_plan(p), 4.0);
        m.fill(q, Tone::Paper);
        m.outline(q, Stroke::solid(Tone::Select, 1.6));
    }
}
