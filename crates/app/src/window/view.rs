//! What is shown and how: the camera, the toggles, what is lit. Not part of the plan, never undone.

use depict::{Show, View as Camera};
use editor::Hidden;
use egui::Vec2;
use geometry::{Bounds, Pt};
use plan::ElementId;
use rules::Finding;
use sheets::Options;
use space::ways::Target;
use std::sync::Arc;

use super::theme::Look;

/// A kind of thing that can be left out of the picture.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Toggle {
    Grid,
    Overheads,
    Services,
    KeepClears,
    Dimensions,
    Furnishings,
    Findings,
    Ways,
    Headroom,
}

impl Toggle {
    #[cfg(test)]
    pub const ALL: [Toggle; 9] = [
        Toggle::Grid,
        Toggle::Overheads,
        Toggle::Services,
        Toggle::KeepClears,
        Toggle::Dimensions,
        Toggle::Furnishings,
        Toggle::Findings,
        Toggle::Ways,
        Toggle::Headroom,
    ];
}

/// What the pane at the right lists.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Listed {
    #[default]
    Findings,
    Ways,
    Headroom,
    Sheets,
}

/// Names a finding from one check to the next.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FindingKey {
    pub rule: &'static str,
    pub elements: Vec<ElementId>,
}

impl FindingKey {
    pub fn of(finding: &Finding) -> FindingKey {
        FindingKey { rule: finding.rule, elements: finding.elements.clone() }
    }

    pub fn is(&self, finding: &Finding) -> bool {
        self.rule == finding.rule && self.elements == finding.elements
    }
}

/// Free space around a fitted plan, in points: the rulers and some air.
pub const MARGIN: f32 = 48.0;

/// What is shown and how.
#[derive(Debug)]
pub struct View {
    pub camera: Camera,
    /// Show the whole plan as soon as the size of the canvas is known.
    pub fit_wanted: bool,
    /// The camera as it was fitted last, and the size that the window had then.
    pub fitted: Option<(Camera, Vec2)>,
    pub look: Look,
    off: Vec<Toggle>,
    /// The finding under the pointer in the list.
    pub lit: Option<FindingKey>,
    /// The finding that was clicked last.
    pub picked: Option<FindingKey>,
    /// Scroll the list to the picked finding.
    pub reveal: bool,
    pub listed: Listed,
    /// The way under the pointer in the list, and the one that was clicked last.
    pub lit_way: Option<Target>,
    pub picked_way: Option<Target>,
    /// What the permit set is made for, and the sheet that is looked at.
    pub wanted: Options,
    pub sheet: usize,
    /// The pointer is over the rows of the room to move.
    pub shows_moving: bool,
    /// Where the pointer is on the plan.
    pub pointer: Option<Pt>,
}

impl Default for View {
    fn default() -> View {
        View {
            camera: Camera::fit(Bounds::EMPTY, (800.0, 600.0), MARGIN),
            fit_wanted: true,
            fitted: None,
            look: Look::default(),
            off: vec![Toggle::Ways, Toggle::Headroom],
            lit: None,
            picked: None,
            reveal: false,
            listed: Listed::default(),
            lit_way: None,
            picked_way: None,
            wanted: Options::default(),
            sheet: 0,
            shows_moving: false,
            pointer: None,
        }
    }
}

impl View {
    pub fn shows(&self, toggle: Toggle) -> bool {
        !self.off.contains(&toggle)
    }

    pub fn flip(&mut self, toggle: Toggle) {
        match self.off.iter().position(|t| *t == toggle) {
            Some(i) => {
                self.off.remove(i);
            }
            None => self.off.push(toggle),
        }
    }

    /// Whether ways in are painted: where they are listed, and where the toggle says so.
    pub fn shows_ways(&self) -> bool {
        self.listed == Listed::Ways || self.shows(Toggle::Ways)
    }

    /// Whether the headroom is painted: where it is listed, and where the toggle says so.
    pub fn shows_headroom(&self) -> bool {
        self.listed == Listed::Headroom || self.shows(Toggle::Headroom)
    }

    /// What is not shown is not picked either.
    pub fn hidden(&self) -> Hidden {
        Hidden {
            overheads: !self.shows(Toggle::Overheads),
            services: !self.shows(Toggle::Services),
            furnishings: !self.shows(Toggle::Furnishings),
        }
    }

    /// What the drawing leaves out.
    pub fn show(&self) -> Show {
        Show {
            overheads: self.shows(Toggle::Overheads),
            services: self.shows(Toggle::Services),
            keep_clears: self.shows(Toggle::KeepClears),
            dimensions: self.shows(Toggle::Dimensions),
            furnishings: self.shows(Toggle::Furnishings),
            grid: self.shows(Toggle::Grid),
            findings: self.shows(Toggle::Findings),
            ..Show::default()
        }
    }

    /// The finding to light up: the one under the pointer, else the picked one.
    pub fn shown_finding<'f>(&self, findings: &'f [Arc<Finding>]) -> Option<&'f Finding> {
        let key = self.lit.as_ref().or(self.picked.as_ref())?;
        findings.iter().map(|f| &**f).find(|f| key.is(f))
    }
}
