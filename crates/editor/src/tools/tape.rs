//! Measures from a point to a point; draws nothing.

use geometry::Pt;

use super::rubber::{Drawn, Rubber};
use super::{Cx, Event, Step, Tool};
use crate::pointer::distance;
use crate::{Dimension, DimensionId};

/// The tape: being pulled, or lying where it was last read.
#[derive(Clone, Debug, Default)]
pub(crate) struct Tape {
    rubber: Rubber,
    /// The last reading, shown until the next one starts.
    lying: Option<(Pt, Pt)>,
}

impl Tool for Tape {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        let (drawn, caught) = self.rubber.on(event, cx, &[]);
        match drawn {
            Drawn::Nothing => {}
            Drawn::Rubber { .. } | Drawn::Ended => self.lying = None,
            Drawn::Refused(why) => return Step::refuse(why),
            Drawn::Done { from, to, .. } => self.lying = Some((from, to)),
        }
        Step { caught, ..Step::default() }
    }

    fn busy(&self) -> bool {
        self.rubber.busy() || self.lying.is_some()
    }

    fn expects(&self) -> &'static str {
        if self.rubber.busy() {
            "Release or click where the measurement ends."
        } else {
            "Press where the measurement starts, or type x, y."
        }
    }

    fn takes_point(&self) -> bool {
        true
    }

    fn dimensions(&self) -> Vec<Dimension> {
        match self.lying {
            Some((from, to)) => vec![Dimension {
                id: DimensionId::Distance,
                from,
                to,
                value: distance(from, to),
                editable: false,
                against: None,
            }],
            None => self.rubber.dimensions(DimensionId::Distance, false),
        }
    }
}
