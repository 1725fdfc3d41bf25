//! Draws the lines along which the building is cut for a section.

use geometry::Pt;
use plan::{Body, Draft, Edit, State, element};

use super::rubber::{Drawn, Rubber};
use super::{Cx, Event, Step, Tool};
use crate::{Dimension, DimensionId};

/// The section line tool.
#[derive(Clone, Debug, Default)]
pub(crate) struct Section {
    rubber: Rubber,
}

impl Tool for Section {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        let (drawn, caught) = self.rubber.on(event, cx, &[]);
        let step = match drawn {
            Drawn::Nothing | Drawn::Ended => Step::default(),
            Drawn::Rubber { from, to } if from == to => Step::default(),
            Drawn::Rubber { from, to } => Step::preview(Edit::Add(draft(from, to)), None),
            Drawn::Refused(why) => Step::refuse(why),
            Drawn::Done { from, to, .. } => {
                Step::add(cx, "Draw section line".to_owned(), draft(from, to))
            }
        };
        Step { caught, ..step }
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
