//! Draws partitions: one by a drag, or a chain by clicks and typed lengths.

use geometry::Pt;
use plan::{Body, Draft, element};

use super::rubber::{self, Drawn, Rubber};
use super::{Cx, Event, Step, Tool};
use crate::pointer::distance;
use crate::{Dimension, DimensionId};

/// The partition tool.
#[derive(Clone, Debug, Default)]
pub(crate) struct Partition {
    rubber: Rubber,
}

impl Tool for Partition {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        let (drawn, caught) = self.rubber.on(event, cx, &[]);
        if let Drawn::Done { to, chain: true, .. } = drawn {
            self.rubber = Rubber::again(to);
        }
        let label = |from, to| format!("Draw partition {}", cx.say(distance(from, to)));
        rubber::step(cx, (drawn, caught), label, |a, b| draft(cx, a, b))
    }

    fn busy(&self) -> bool {
        self.rubber.busy()
    }

    fn expects(&self) -> &'static str {
        if self.busy() {
            "Click the other end, or type its length. Enter ends."
        } else {
            "Click or drag from where the partition starts, or type x, y."
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
    Draft::new(
        cx.options.partition_state,
        Body::Partition(element::Partition {
            a,
            b,
            justify: element::Justify::Centre,
            layers: cx.options.partition_layers.clone(),
            spacing: cx.options.stud_spacing,
        }),
    )
}
