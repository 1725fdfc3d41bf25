//! Places columns by their centre.

use geometry::{Facing, Pt};
use plan::{Body, Draft, Edit, State, element};

use super::place::{Place, Placing, anywhere};
use super::{Cx, Event, Step, Tool};

/// The column tool.
#[derive(Clone, Debug)]
pub(crate) struct Column {
    place: Place,
}

impl Default for Column {
    fn default() -> Column {
        Column { place: Place::facing(Facing::NORTH) }
    }
}

impl Tool for Column {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        let (placing, caught) = self.place.on(event, cx, anywhere);
        let step = match placing {
            Placing::Nothing => Step::default(),
            Placing::Ghost(at, facing) => Step::preview(Edit::Add(draft(cx, at, facing)), None),
            Placing::Done(at, facing) => {
                Step::add(cx, "Set column".to_owned(), draft(cx, at, facing))
            }
        };
        Step { caught, ..step }
    }

    fn busy(&self) -> bool {
        self.place.busy()
    }

    fn expects(&self) -> &'static str {
        "Click the column's centre, or type x, y."
    }

    fn takes_point(&self) -> bool {
        true
    }
}

fn draft(cx: &Cx<'_>, at: Pt, facing: Facing) -> Draft {
    let shape = cx.options.column;
    Draft::new(State::Existing, Body::Column(element::Column { at, shape, facing }))
}
