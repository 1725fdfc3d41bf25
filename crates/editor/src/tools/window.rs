//! Sets windows in walls.

use plan::State;
use plan::element::OpeningKind;

use super::hosted::{FIELDS, Hosted};
use super::{Cx, Event, Step, Tool};
use crate::{Dimension, DimensionId};

/// The window tool.
#[derive(Clone, Debug, Default)]
pub(crate) struct Window {
    hosted: Hosted,
}

impl Tool for Window {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        let kind = OpeningKind::Window(cx.options.window.clone());
        self.hosted.on(event, cx, &kind, State::Existing)
    }

    fn busy(&self) -> bool {
        self.hosted.busy()
    }

    fn expects(&self) -> &'static str {
        if self.busy() {
            "Click to set the window here, or type its distance to the start of the wall."
        } else {
            "Point at the wall that the window goes in, or type x, y."
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
