//! Draws a straight beam, duct, pipe run or soffit.

use geometry::Pt;
use plan::{Body, Draft, State, element};

use super::rubber::{self, Rubber};
use super::{Cx, Event, Step, Tool};
use crate::pointer::distance;
use crate::{Dimension, DimensionId};

/// The overhead tool.
#[derive(Clone, Debug, Default)]
pub(crate) struct Overhead {
    rubber: Rubber,
}

impl Tool for Overhead {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        let label = |from, to| {
            format!("Draw {} {}", cx.options.overhead.word(), cx.say(distance(from, to)))
        };
        rubber::step(cx, self.rubber.on(event, cx, &[]), label, |a, b| draft(cx, a, b))
    }

    fn busy(&self) -> bool {
        self.rubber.busy()
    }

    fn expects(&self) -> &'static str {
        if self.busy() {
            "Release or click at the other end, or type its length."
        } else {
            "Press where the middle line starts and drag along it, or type x, y."
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

fn draft(cx: &Cx<'_>, a: Pt, b: Pt) -> Draft {
    let width = cx.options.overhead_width;
    Draft::new(
        State::Existing,
        Body::Overhead(element::Overhead {
            kind: cx.options.overhead,
            shape: element::OverheadShape::Run { a, b, width },
            underside: cx.options.overhead_underside,
        }),
    )
}
