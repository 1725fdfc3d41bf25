//! Limits that a drag sticks to: where something breaks if the element goes further.

use geometry::{Facing, Pt, Vec2};
use measure::Len;
use plan::ElementId;
use rules::room_to_move::Course;

use crate::Snap;
use crate::pointer::{along, offset};
use crate::snap::caught;

/// The last offset along a course before something breaks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stop {
    pub course: Course,
    pub at: Len,
}

/// The stop of a wall or an opening that is within reach of an offset.
pub(crate) fn near(stops: &[Stop], course: Course, by: Len, reach: Len) -> Option<Len> {
    let of = stops.iter().filter(|stop| stop.course == course).map(|stop| stop.at);
    of.filter(|at| (*at - by).abs() <= reach).min_by_key(|at| (*at - by).abs())
}

/// Where a thing that is dragged by a vector comes to lie: at the stops of its two courses that are within reach.
pub(crate) fn thing(
    stops: &[Stop],
    id: ElementId,
    v: Vec2,
    reach: Len,
    at: Pt,
) -> Option<(Vec2, Option<Snap>)> {
    let mut moved = v;
    let mut met = false;
    for stop in stops {
        let Course::Thing(thing, facing) = stop.course else { continue };
        let off = stop.at - along(moved, facing.vec());
        if thing == id && is_square(facing) && off.abs() <= reach && off != Len::ZERO {
            moved = moved + facing.step(off);
            met = true;
        }
    }
    met.then(|| (moved, offset(at, moved + -v).and_then(|p| caught("limit", p))))
}

/// A step along another facing is rounded to the grid, so that it can't be met exactly.
fn is_square(facing: Facing) -> bool {
    let v = facing.vec();
    v.x == 0 || v.y == 0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_nearest_stop_within_reach_catches() {
        let course = Course::Wall(ElementId(3));
        let stop = |inches| Stop { course, at: Len::inches(inches) };
        let stops =
            [stop(9), stop(-4), Stop { course: Course::Opening(ElementId(3)), at: Len::inches(8) }];
        let reach = Len::inches(2);
        assert_eq!(near(&stops, course, Len::inches(8), reach), Some(Len::inches(9)));
        assert_eq!(near(&stops, course, Len::inches(-3), reach), Some(Len::inches(-4)));
        assert_eq!(near(&stops, course, Len::inches(5), reach), None);
    }

    #[test]
    fn a_thing_sticks_along_both_of_its_courses() {
        let id = ElementId(7);
        let stop =
            |facing, inches| Stop { course: Course::Thing(id, facing), at: Len::inches(inches) };
        let stops = [stop(Facing::EAST, 10), stop(Facing::NORTH, -6)];
        let inch = i64::from(Len::PER_INCH);
        let v = Vec2::new(9 * inch, -5 * inch);
        let (moved, snap) = thing(&stops, id, v, Len::inches(2), Pt::new(0, 0)).expect("caught");
        assert_eq!(moved, Vec2::new(10 * inch, -6 * inch));
        assert_eq!(snap.expect("a snap").word, "limit");
        assert!(thing(&stops, ElementId(8), v, Len::inches(2), Pt::new(0, 0)).is_none());
    }
}
