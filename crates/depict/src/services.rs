//! Service points: glyphs with a word.

use drawing::{Anchor, Marks, P, Stroke, Tone, size};
use plan::element::{Mount, ServicePoint};
use plan::{Body, Element};

use crate::glyphs::{self, Pose, is_true_size};
use crate::labels::{ANY_SIZE, Label, Line, Placer, Rank, Spot, beside, square};
use crate::picture::Canvas;

/// Half size of a symbol that stands for a small thing, in points: least and most.
const SYMBOL: (f32, f32) = (6.5, 14.0);

/// Points per inch from which outlets have their words.
const DEVICE_WORDS_FROM: f32 = 2.0;

pub(crate) fn draw(
    canvas: &Canvas<'_>,
    placer: &mut Placer,
    labels: &mut Vec<Label>,
    marks: &mut Marks,
) {
    if !canvas.scene.show.services {
        return;
    }
    for element in canvas.scene.facts.plan.elements().iter().filter(|e| e.stands()) {
        let Body::Service(point) = &element.body else { continue };
        if !canvas.sees_near(&point.placed().corners(), canvas.view.len(12.0)) {
            continue;
        }
        let pose = pose(canvas, point);
        placer.block(pose.corners(), element.id.0);
        // A word of another thing this near would be read as this one's.
        let halo = pose.half.0.max(pose.half.1) + 8.0;
        placer.avoid(square(pose.centre, halo), element.id.0);
        marks.group(element.name(), |m| one(canvas, point, &pose, m));
        // Outlets are many and alike: from afar their symbols say enough.
        if !point.kind.is_device() || canvas.view.points_per_inch() >= DEVICE_WORDS_FROM {
            labels.push(label(canvas, element, point, &pose));
        }
    }
}

/// Where the glyph stands: true size where the glyph is the thing itself, else a symbol of a steady size.
pub(crate) fn pose(canvas: &Canvas<'_>, point: &ServicePoint) -> Pose {
    let view = canvas.view;
    let unit = |x: i32, y: i32| {
        let (x, y) = (f64::from(x), -f64::from(y));
        let norm = (x * x + y * y).sqrt().max(1e-9);
        ((x / norm) as f32, (y / norm) as f32)
    };
    let (right, out) = (point.facing.right(), point.facing);
    let (w, d) = (view.points(point.width) / 2.0, view.points(point.depth) / 2.0);
    let half = if is_true_size(point.kind) {
        (w.max(3.5), d.max(2.5))
    } else {
        let reach = w.max(d).clamp(SYMBOL.0, SYMBOL.1);
        (reach, reach)
    };
    let out_unit = unit(out.x, out.y);
    // A symbol larger than its thing still stands before the wall that the thing hangs on.
    let back = view.screen_from_plan(point.at);
    let centre = match point.mount {
        Mount::Wall => back.by(out_unit.0 * (half.1 + 1.0), out_unit.1 * (half.1 + 1.0)),
        Mount::Floor | Mount::Ceiling => view.screen_from_plan(point.placed().centre()),
    };
    Pose { centre, half, right: unit(right.x, right.y), out: out_unit }
}

fn one(canvas: &Canvas<'_>, point: &ServicePoint, pose: &Pose, m: &mut Marks) {
    let body = point.placed().corners().map(|p| canvas.view.screen_from_plan(p));
    let large = body[0].distance(body[2]) > 2.9 * pose.half.0;
    if !is_true_size(point.kind) && large {
        // The thing's own outline round its symbol.
        m.outline(body, Stroke::solid(Tone::SoftInk, 0.8));
    }
    // Nothing of the grid shows through a symbol.
    m.fill(pose.corners(), Tone::Slab);
    glyphs::put(point.kind, pose, Tone::Ink, 1.2, m);
    if point.mount == Mount::Ceiling {
        let frame = Pose { half: (pose.half.0 + 2.5, pose.half.1 + 2.5), ..*pose };
        m.outline(frame.corners(), Stroke::dashed(Tone::Overhead, 0.8, 3.0, 2.0));
    }
    if let Some(access) = point.access {
        // An access opening: a dashed frame of its width before the thing.
        let half = (canvas.view.points(access.width) / 2.0).max(pose.half.0 + 4.0);
        let depth = match point.mount {
            Mount::Wall => pose.half.1 + 3.0,
            Mount::Floor | Mount::Ceiling => {
                (canvas.view.points(access.height) / 2.0).max(pose.half.1 + 4.0)
            }
        };
        let frame = Pose { half: (half, depth), ..*pose };
        m.outline(frame.corners(), Stroke::dashed(Tone::Advice, 1.2, 6.0, 2.0));
    }
}

fn label(canvas: &Canvas<'_>, element: &Element, point: &ServicePoint, pose: &Pose) -> Label {
    let word = point.kind.word();
    let line = |text: &str| vec![Line::plain(text, size::SMALL, Tone::Ink)];
    let reach = (pose.half.0 * pose.right.0.abs() + pose.half.1 * pose.out.0.abs())
        .max(pose.half.0 * pose.right.1.abs() + pose.half.1 * pose.out.1.abs())
        + if point.mount == Mount::Ceiling { 2.5 } else { 0.0 };
    let mut spots = Vec::new();
    // Words fit into the larger things.
    if is_true_size(point.kind) && pose.half.0.min(pose.half.1) > 30.0 {
        let below = pose.centre.by(0.0, reach * 0.8);
        spots.push(Spot::new(below, Anchor::Middle));
    }
    spots.extend(beside(pose.centre, reach));
    Label {
        origin: element.name(),
        rank: Rank::Service,
        owner: element.id.0,
        forms: vec![line(word)],
        spots,
        within: canvas.slab_at(pose.centre),
        most: ANY_SIZE,
        plate: None,
    }
}

/// The screen point that stands for a service point, for badges that have no other place.
pub(crate) fn anchor(canvas: &Canvas<'_>, point: &ServicePoint) -> P {
    pose(canvas, point).centre
}
