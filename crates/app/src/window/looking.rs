//! Looking at things: zoom, findings, remedies shown before they are applied, boxes of elements.

use std::collections::BTreeMap;
use std::sync::Arc;

use editor::{Checked, ToolKind};
use geometry::{Bounds, Pt};
use plan::{ElementId, Plan};
use rules::Book;

use super::app::App;
use super::view::{FindingKey, View};

/// A remedy shown on the plan before it is applied.
#[derive(Debug)]
pub struct Preview {
    pub finding: FindingKey,
    pub remedy: usize,
    /// The remedy in words.
    pub label: String,
    /// The plan with the remedy.
    pub checked: Checked,
}

impl App {
    pub(super) fn zoom(&mut self, factor: f64) {
        let camera = self.view.camera;
        let about = match self.view.pointer {
            Some(p) => camera.screen_from_plan(p),
            None => drawing::P::new(camera.size.0 / 2.0, camera.size.1 / 2.0),
        };
        self.view.camera = camera.zoomed(about, factor);
    }

    pub(super) fn fit_selection(&mut self) {
        let ids: Vec<ElementId> = self.document.session.selection().iter().copied().collect();
        let checked = self.document.session.checked();
        self.view.look_at(bounds_of(&checked, &ids));
    }

    /// Selects what a finding is about and brings its place into sight.
    pub(super) fn show_finding(&mut self, key: FindingKey) {
        let checked = self.document.session.checked();
        let Some(finding) = checked.findings.iter().find(|f| key.is(f)) else { return };
        let mut points: Vec<Pt> =
            finding.places.iter().flat_map(|place| place.rings(&checked.facts)).flatten().collect();
        if points.is_empty() {
            let bounds = bounds_of(&checked, &finding.elements);
            points.extend([bounds.min, bounds.max]);
        }
        self.view.look_at(Bounds::of(points));
        self.pick_finding(key);
    }

    pub(super) fn pick_finding(&mut self, key: FindingKey) {
        self.document.session.set_tool(ToolKind::Select);
        self.document.session.select(key.elements.iter().copied());
        self.view.picked = Some(key);
        self.view.reveal = true;
    }

    pub(super) fn next_finding(&mut self) {
        let checked = self.document.session.checked();
        let open: Vec<FindingKey> = checked
            .findings
            .iter()
            .filter(|f| f.set_aside.is_none())
            .map(|f| FindingKey::of(f))
            .collect();
        let now = self.view.picked.as_ref().and_then(|k| open.iter().position(|o| o == k));
        let next = now.map_or(0, |i| (i + 1) % open.len().max(1));
        if let Some(key) = open.get(next) {
            self.show_finding(key.clone());
        }
    }

    pub(super) fn start_preview(&mut self, finding: FindingKey, remedy: usize) {
        let system = self.document.session.system();
        let wanted = self.remedies.of(&finding).remedies.get(remedy);
        let Some((edit, label)) = wanted.map(|r| (r.edit.clone(), r.label.say(system))) else {
            return;
        };
        match self.document.session.plan().with(&edit) {
            Ok(plan) => {
                let checked = check(Arc::new(plan));
                self.preview = Some(Preview { finding, remedy, label, checked });
            }
            Err(why) => self.notice = Some(why.to_string()),
        }
    }
}

/// Facts and findings of a plan.
fn check(plan: Arc<Plan>) -> Checked {
    let facts = Arc::new(space::derive(&plan));
    let book = Book::of(&plan.site);
    Checked::new(facts, &book)
}

/// The box around elements, as far as they take up space.
fn bounds_of(checked: &Checked, ids: &[ElementId]) -> Bounds {
    let boxes = element_boxes(checked);
    ids.iter().filter_map(|id| boxes.get(id)).fold(Bounds::EMPTY, |all, b| all.union(*b))
}

/// The box of every element, as far as it takes up space.
pub(super) fn element_boxes(checked: &Checked) -> BTreeMap<ElementId, Bounds> {
    let facts = &checked.facts;
    let mut boxes: BTreeMap<ElementId, Bounds> = BTreeMap::new();
    let mut add = |id: ElementId, points: &[Pt]| {
        let held = boxes.entry(id).or_insert(Bounds::EMPTY);
        *held = held.union(Bounds::of(points.iter().copied()));
    };
    for solid in &facts.solids {
        add(solid.element, &solid.ring);
    }
    for opening in &facts.openings {
        add(opening.id, &opening.quad);
    }
    for overhead in &facts.overheads {
        add(overhead.id, &overhead.ring);
    }
    for element in facts.plan.elements().iter() {
        add(element.id, &element.body.points());
    }
    boxes
}

impl View {
    /// Brings a box into sight: moves the picture as little as needed, and makes it smaller where it must.
    pub(super) fn look_at(&mut self, bounds: Bounds) {
        if bounds.is_empty() {
            return;
        }
        let camera = self.camera;
        let fitted = depict::View::fit(bounds, camera.size, 120.0);
        // Never nearer than a comfortable reading of the whole neighbourhood, never farther than needed.
        let most = 6.0 / f64::from(measure::Len::PER_INCH);
        let scale = fitted.scale.min(camera.scale.max(most / 2.0)).min(most);
        let middle =
            fitted.plan_from_screen(drawing::P::new(camera.size.0 / 2.0, camera.size.1 / 2.0));
        self.camera = depict::View {
            scale,
            origin: (
                f64::from(middle.x) - f64::from(camera.size.0) / 2.0 / scale,
                f64::from(middle.y) + f64::from(camera.size.1) / 2.0 / scale,
            ),
            size: camera.size,
        };
    }
}
