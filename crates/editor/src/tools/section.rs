//! Draws the lines along which the building is cut for a section.

use geometry::Pt;
use plan::{Body, Draft, State, element};

use super::rubber::{self, Rubber};
use super::{Cx, Event, Step, Tool};
use crate::{Dimension, DimensionId};

/// The section line tool.
#[derive(Clone, Debug, Default)]
pub(crate) struct Section {
    rubber: Rubber,
}

impl Tool for Section {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        let label = |_, _| "Draw section line".to_owned();
        rubber::step(cx, self.rubber.on(event, cx, &[]), label, draft)
    }

    fn busy(&self) -> bool {
        self.rubber.busy()
    }

    fn expects(&self) -> &'static str {
        if self.busy() {
            "Click the other end, or type the length."
        } else {
            "Click where the cut starts, at its left hand, or type x, y."
        }
    }

    fn fields(&self) -> &'static [DimensionId] {
        self.rubber.fields()
    }

    fn takes_point(&self) -> bool {
        true
    }

    fn dimensions(&self) -> Vec<Dimension> {
        self.rubber.dimensions(DimensionId::Length, true)
    }
}

fn draft(a: Pt, b: Pt) -> Draft {
    Draft::new(State::New, Body::Section(element::SectionLine { a, b }))
}
