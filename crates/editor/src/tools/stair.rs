//! Sets a stair: press at its foot, drag the way one walks up, release.

use geometry::{Facing, Pt};
use plan::{Body, Draft, Edit, State, element};

use super::place::{Place, Placing, anywhere};
use super::{Cx, Event, Step, Tool};

/// The stair tool.
#[derive(Clone, Debug)]
pub(crate) struct Stair {
    place: Place,
}

impl Default for Stair {
    fn default() -> Stair {
        Stair { place: Place::facing(Facing::NORTH) }
    }
}

impl Tool for Stair {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        let (placing, caught) = self.place.on(event, cx, anywhere);
        let step = match placing {
            Placing::Nothing => Step::default(),
            Placing::Ghost(foot, up) => Step::preview(Edit::Add(draft(cx, foot, up)), None),
            Placing::Done(foot, up) => Step::add(cx, "Set stair".to_owned(), draft(cx, foot, up)),
        };
        Step { caught, ..step }
    }

    fn busy(&self) -> bool {
        self.place.busy()
    }

    fn expects(&self) -> &'static str {
        if self.busy() {
            "Drag the way one walks up, then release."
        } else {
            "Press at the middle of the lowest step, or type x, y (an arrow key says the way up)."
        }
    }

    fn takes_point(&self) -> bool {
        true
    }
}

fn draft(cx: &Cx<'_>, foot: Pt, up: Facing) -> Draft {
    let options = cx.options;
    Draft::new(
        State::Existing,
        Body::Stair(element::Stair {
            foot,
            up,
            width: options.stair_width,
            risers: options.stair_risers,
            rise: options.stair_rise,
            run: options.stair_run,
            headroom: options.stair_headroom,
        }),
    )
}
