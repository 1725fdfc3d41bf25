//! Places a furnishing, its back to a wall face where one is near.

use geometry::{Facing, Pt};
use measure::Len;
use plan::{Body, Draft, Edit, State, element};

use super::place::{Place, Placing, against};
use super::{Cx, Event, Step, Tool};
use crate::Snap;
use crate::pointer::Pointer;

/// The furnishing tool.
#[derive(Clone, Debug)]
pub(crate) struct Furnishing {
    place: Place,
}

impl Default for Furnishing {
    fn default() -> Furnishing {
        Furnishing { place: Place::facing(Facing::SOUTH) }
    }
}

impl Tool for Furnishing {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        let (placing, caught) = self.place.on(event, cx, settle);
        let step = match placing {
            Placing::Nothing => Step::default(),
            Placing::Ghost(at, facing) => Step::preview(Edit::Add(draft(cx, at, facing)), None),
            Placing::Done(at, facing) => {
                let label = format!("Place {}", cx.options.furnishing.name);
                Step::add(cx, label, draft(cx, at, facing))
            }
        };
        Step { caught, ..step }
    }

    fn busy(&self) -> bool {
        self.place.busy()
    }

    fn expects(&self) -> &'static str {
        "Click where the middle of its back is, drag to turn it, or type x, y."
    }

    fn takes_point(&self) -> bool {
        true
    }
}

fn settle(cx: &Cx<'_>, pointer: &Pointer, facing: Facing) -> (Pt, Facing, Option<Snap>) {
    let near = if pointer.reach == Len::ZERO {
        Len::ZERO
    } else {
        pointer.reach.max(cx.options.furnishing.depth / 2)
    };
    against(cx, pointer, facing, near)
}

fn draft(cx: &Cx<'_>, at: Pt, facing: Facing) -> Draft {
    let furnishing = element::Furnishing { at, facing, ..cx.options.furnishing.clone() };
    Draft::new(State::New, Body::Furnishing(furnishing))
}
