//! Sets a service point: against the nearest wall face when it hangs on a wall, else where the click is.

use geometry::{Facing, Pt};
use measure::Len;
use plan::element::{Mount, ServicePoint};
use plan::{Body, Draft, Edit, State};

use super::place::{Place, Placing, against, anywhere};
use super::{Cx, Event, Step, Tool};
use crate::Snap;
use crate::pointer::Pointer;

/// A wall this near takes a thing that hangs on walls.
const WALL: Len = Len::inches(24);

/// The service point tool.
#[derive(Clone, Debug)]
pub(crate) struct Service {
    place: Place,
}

impl Default for Service {
    fn default() -> Service {
        Service { place: Place::facing(Facing::SOUTH) }
    }
}

impl Tool for Service {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        let (placing, caught) = self.place.on(event, cx, settle);
        let step = match placing {
            Placing::Nothing => Step::default(),
            Placing::Ghost(at, facing) => Step::preview(Edit::Add(draft(cx, at, facing)), None),
            Placing::Done(at, facing) => {
                let label = format!("Set {}", cx.options.service.word());
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
    let mount = ServicePoint::usual(cx.options.service, pointer.at, facing).mount;
    match mount {
        Mount::Wall => against(cx, pointer, facing, pointer.reach.max(WALL)),
        Mount::Floor | Mount::Ceiling => anywhere(cx, pointer, facing),
    }
}

fn draft(cx: &Cx<'_>, at: Pt, facing: Facing) -> Draft {
    Draft::new(State::Existing, Body::Service(ServicePoint::usual(cx.options.service, at, facing)))
}
