//! How walls meet: whether the end of one lies on the body of another.

use geometry::{Bounds, Pt, Seg, Vec2};
use measure::Len;

use crate::bounds::WALL_THICKNESS;
use crate::element::{Body, End, Mount, ServicePoint};
use crate::{Element, ElementId, Plan, State};

use super::along;

/// A point derived on a skew face is rounded to the grid once, so it may lie this far off.
const ROUNDING: i64 = 1;

/// What ends on a wall or hangs on it has that end within this distance of the wall's box: the thickness of the wall, and
/// past its end that of the other.
pub(super) const REACH: Len = Len::from_units(2 * WALL_THICKNESS.most.units() + Len::PER_INCH);

/// A wall as its joints see it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Wall<'p> {
    pub element: &'p Element,
    pub line: Seg,
    /// From the drawn line to the body's left and right side; furring counts to the left of the shell.
    pub left: Len,
    pub right: Len,
    pub shell: bool,
}

impl<'p> Wall<'p> {
    /// `None` for what is no wall.
    pub fn of(plan: &'p Plan, element: &'p Element) -> Option<Wall<'p>> {
        match &element.body {
            Body::Shell(w) => Some(Wall {
                element,
                line: w.line(),
                left: furring(plan, element.id),
                right: w.thickness,
                shell: true,
            }),
            Body::Partition(w) => {
                let (left, right) = w.sides();
                Some(Wall { element, line: w.line(), left, right, shell: false })
            }
            _ => None,
        }
    }

    pub fn end(&self, end: End) -> Pt {
        match end {
            End::Start => self.line.a,
            End::Finish => self.line.b,
        }
    }

    /// Whether two walls share an end point, and which end of `self` it is.
    pub fn shared_end(&self, other: &Wall) -> Option<End> {
        [End::Start, End::Finish]
            .into_iter()
            .find(|&e| [other.line.a, other.line.b].contains(&self.end(e)))
    }

    /// Whether two walls run within about 3° of each other (the sine of the angle is under 1/20), so
    /// that one can't give way to the other along its own line.
    pub fn runs_with(&self, other: &Wall) -> bool {
        runs_with(self.line.dir(), other.line.dir())
    }

    /// Whether `end` of `self` lies on the body of `other`: on its line, on a face or in between; past
    /// its ends by up to the thickness of `self`, as at a corner where faces were drawn to meet.
    pub fn ends_on(&self, end: End, other: &Wall) -> bool {
        let past = if self.shell { Len::ZERO } else { self.left.max(self.right) };
        let (forward, lateral) = other.place(self.end(end));
        let past = i64::from(past.units()) + ROUNDING;
        let length = i64::from(other.line.len().units());
        -i64::from(other.right.units()) - ROUNDING <= lateral
            && lateral <= i64::from(other.left.units()) + ROUNDING
            && -past <= forward
            && forward <= length + past
    }

    /// Whether a service point hangs on a face of the wall and looks away from it.
    pub fn carries(&self, s: &ServicePoint) -> bool {
        let (forward, lateral) = self.place(s.at);
        let on = |side: i64| (lateral - side).abs() <= ROUNDING;
        let faces = [i64::from(self.left.units()), -i64::from(self.right.units())];
        let on_face = faces.into_iter().any(on) || (self.shell && on(0));
        s.mount == Mount::Wall
            && on_face
            && (0..=i64::from(self.line.len().units())).contains(&forward)
            && runs_with(s.facing.vec(), self.line.dir().left())
    }

    /// A point as a distance along the wall from `a` and a distance to the left of its line.
    fn place(&self, p: Pt) -> (i64, i64) {
        let (v, dir) = (p - self.line.a, self.line.dir());
        (along(v, dir), along(v, dir.left()))
    }
}

/// The walls of a plan that have a point in a box or may pass through it, in the order of the ids.
pub(super) fn walls_near(plan: &Plan, bounds: Bounds) -> Vec<Wall<'_>> {
    plan.elements().near(bounds).filter_map(|e| Wall::of(plan, e)).collect()
}

/// The walls of a plan that may have an end at a point, in the order of the ids.
pub(super) fn walls_at(plan: &Plan, p: Pt) -> Vec<Wall<'_>> {
    walls_near(plan, Bounds::of([p]))
}

/// The thickness of the furring on a foundation wall.
fn furring(plan: &Plan, host: ElementId) -> Len {
    let thickness = plan.elements().fixed_to(host).filter_map(|e| match &e.body {
        Body::Furring(f) => Some(f.thickness()),
        _ => None,
    });
    thickness.max().unwrap_or(Len::ZERO)
}

/// Whether a wall gives way to `moving`: what is to be torn out does not follow new work.
pub(super) fn heeds(wall: &Wall, moving: &Wall) -> bool {
    (!wall.shell || moving.shell)
        && (wall.element.state != State::Removed
            || moving.shell
            || moving.element.state == State::Removed)
}

fn runs_with(a: Vec2, b: Vec2) -> bool {
    let cross = a.cross(b) as f64;
    cross * cross * 400.0 < a.norm2() as f64 * b.norm2() as f64
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::bounds::FURRING_THICKNESS;
    use crate::ops::{move_end, move_wall, move_wall_range, set_wall_length};
    use crate::sample::{any_plan, basement};

    /// What follows a wall is the same where every element is asked whether it does.
    fn nothing_far_follows(plan: &Plan, by: Len) {
        let all = Plan { elements: plan.elements.clone().near_to_all(), ..plan.clone() };
        let to = |p: Pt| Pt::new(p.x + by.units(), p.y - by.units() / 2);
        for e in plan.elements().iter() {
            let Some(line) = e.body.wall_line() else { continue };
            assert_eq!(move_wall(plan, e.id, by), move_wall(&all, e.id, by));
            assert_eq!(move_wall_range(plan, e.id), move_wall_range(&all, e.id));
            for (end, p) in [(End::Start, line.a), (End::Finish, line.b)] {
                assert_eq!(move_end(plan, e.id, end, to(p)), move_end(&all, e.id, end, to(p)));
                let length = line.len() + by;
                let there = set_wall_length(plan, e.id, length, end);
                assert_eq!(there, set_wall_length(&all, e.id, length, end));
            }
        }
    }

    proptest! {
        #[test]
        fn nothing_far_follows_in_any_plan(plan in any_plan(), inches in -30..30i32) {
            nothing_far_follows(&plan, Len::inches(inches));
        }
    }

    #[test]
    fn nothing_far_follows_in_a_basement() {
        nothing_far_follows(&basement(300), Len::inches(7));
    }

    #[test]
    fn furring_is_no_thicker_than_a_wall() {
        assert!(FURRING_THICKNESS.most <= WALL_THICKNESS.most);
    }
}
