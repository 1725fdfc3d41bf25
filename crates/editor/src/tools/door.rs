//! Sets doors in walls.

use plan::State;
use plan::element::OpeningKind;

use super::hosted::{FIELDS, Hosted};
use super::{Cx, Event, Step, Tool};
use crate::{Dimension, DimensionId};

/// The door tool.
#[derive(Clone, Debug, Default)]
pub(crate) struct Door {
    hosted: Hosted,
}

impl Tool for Door {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        let kind = OpeningKind::Door(cx.options.door.clone());
        self.hosted.on(event, cx, &kind, State::New)
    }

    fn busy(&self) -> bool {
        self.hosted.busy()
    }

    fn expects(&self) -> &'static str {
        if self.busy() {
            "Click to set the door here, or type its distance to the start of the wall."
        } else {
            "Point at the wall that the door goes in, or type x, y."
        }
    }

    fn fields(&self) -> &'static [DimensionId] {
        if self.busy() { FIELDS } else { &[] }
    }

    fn takes_point(&self) -> bool {
        true
    }

    fn dimensions(&self) -> Vec<Dimension> {
        self.hosted.dimensions()
    }
}
