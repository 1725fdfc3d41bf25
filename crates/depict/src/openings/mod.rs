//! Doors and windows in drafting convention, wells, and their sizes when near.

mod door;
mod window;

use drawing::{Anchor, Marks, P, Tone, size};
use measure::{Len, Precision};
use plan::element::{OpeningKind, Side};
use plan::{Body, Element, State};
use space::OpeningFacts;

use crate::arc::reading_angle;
use crate::labels::{ANY_SIZE, Label, Line, Placer, Rank, Spot};
use crate::picture::Canvas;
use door::door;
use window::window;

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
        if canvas.view.points_per_inch() >= SIZES_FROM || canvas.scene.name_of(element.id).is_some()
        {
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
    // Where it has a name, a table says how it opens.
    let name = canvas.scene.name_of(element.id);
    let (text, more) = match name {
        Some(name) => (format!("{name} {text}"), None),
        None => (text, more),
    };
    if let Some(word) = more {
        forms.push(line(format!("{text} {word}")));
    }
    forms.push(line(text));
    if let Some(name) = name {
        forms.push(line(name.to_owned()));
    }
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
