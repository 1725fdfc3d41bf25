//! Things that are in another room because a wall has passed them.

use geometry::{Bounds, Pt};
use measure::Len;
use plan::{Body, Element};

use super::Changes;
use crate::Facts;

/// How far before the face of a thing its room is looked for, where it is not where the thing is.
pub const BEFORE_A_FACE: Len = Len::inches(1);

/// The same for what hangs on a wall: past a wall's board.
pub const BEFORE_A_DEVICE: Len = Len::inches(4);

/// More than either.
const BEFORE: Len = Len::inches(5);

impl Changes {
    /// Counts things to what has changed that are in another room now than before, though they stand where they stood.
    pub(super) fn rehoused(&mut self, before: &Facts, after: &Facts, swept: &[Bounds]) {
        for within in swept {
            for place in after.grids.things.query(within.grow(BEFORE)) {
                let element = after.element_at(place as u32);
                let moved = told_by(element).into_iter().filter(|p| within.contains(*p));
                let mut moved = moved.filter(|p| before.room_at(*p) != after.room_at(*p));
                if moved.next().is_some() {
                    self.moved(element, place as u32);
                }
            }
        }
    }
}

/// The points by which it is told in which room a thing is.
fn told_by(element: &Element) -> Vec<Pt> {
    match &element.body {
        Body::Service(s) => {
            let placed = s.placed();
            let before = |by| placed.front() + placed.facing.step(by);
            let steps = [Len::ZERO, Len::UNIT, BEFORE_A_FACE, BEFORE_A_DEVICE];
            [placed.centre()].into_iter().chain(steps.map(before)).collect()
        }
        Body::Furnishing(f) => vec![f.placed().centre()],
        Body::Stair(s) => {
            let before = s.foot + s.up.back().step(BEFORE_A_FACE);
            vec![s.foot, before, s.placed().centre()]
        }
        _ => Vec::new(),
    }
}
