//! A small figure of one finding: the part of a plan that it is about, with its place lit.

use std::sync::Arc;

use geometry::{Bounds, Pt};
use measure::{Len, System};
use plan::ElementId;
use rules::Finding;
use space::Facts;

use crate::outlines::outline;
use crate::{Picture, Scene, Show, View, extent, picture};

/// At least this much of the plan is shown around what the finding is about.
const AROUND: Len = Len::inches(30);

/// At most this much of the plan: a wall of a hall is shown in part.
const LARGEST: Len = Len::feet_inches(24, 0);

/// Draws a finding of a plan in a box of `size` points, in the reader's units.
pub fn figure(facts: &Facts, finding: &Finding, size: (f32, f32), system: System) -> Picture {
    let about = about(facts, finding);
    let bounds = if about.is_empty() { extent(facts) } else { about.grow(AROUND) };
    let show = Show { rulers: false, grid: false, dimensions: false, ..Show::default() };
    let findings = &[Arc::new(finding.clone())];
    let scene = Scene { findings, lit: &[0], show, system, ..Scene::new(facts) };
    picture(&View::fit(bounds, size, 8.0), &scene)
}

/// The box round the finding's places, and round its elements as far as the box stays small.
fn about(facts: &Facts, finding: &Finding) -> Bounds {
    let places = finding.places.iter().flat_map(|place| place.rings(facts)).flatten();
    let mut all = Bounds::of(places);
    for id in &finding.elements {
        let with = all.union(Bounds::of(element(facts, *id)));
        if all.is_empty() || (span(with) <= LARGEST) {
            all = with;
        }
    }
    all
}

fn span(bounds: Bounds) -> Len {
    let (w, h) = (bounds.max.x - bounds.min.x, bounds.max.y - bounds.min.y);
    Len::from_units(w.max(h))
}

fn element(facts: &Facts, id: ElementId) -> Vec<Pt> {
    let Some(element) = facts.plan.get(id) else { return Vec::new() };
    match outline(facts, element) {
        ring if ring.is_empty() => element.body.points(),
        ring => ring,
    }
}
