//! Draws a straight beam, duct, pipe run or soffit.

use geometry::Pt;
use plan::{Body, Draft, Edit, State, element};

use super::rubber::{Drawn, Rubber};
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
        let (drawn, caught) = self.rubber.on(event, cx, &[]);
        let step = match drawn {
            Drawn::Nothing | Drawn::Ended => Step::default(),
            Drawn::Rubber { from, to } if from == to => Step::default(),
            Drawn::Rubber { from, to } => Step::preview(Edit::Add(draft(cx, from, to)), None),
            Drawn::Refused(why) => Step::refuse(why),
            Drawn::Done { from, to, .. } => {
                let word = cx.options.overhead.word();
                let label = format!("Draw {word} {}", cx.say(distance(from, to)));
                Step::add(cx, label, draft(cx, from, to))
            }
        };
        Step { caught, ..step }
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
