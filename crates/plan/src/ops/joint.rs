//! How walls meet: whether the end of one lies on the body of another.

use geometry::{Pt, Seg, Vec2};
use measure::Len;

use crate::element::{Body, End, Mount, ServicePoint};
use crate::{Element, ElementId, Plan, State};

use super::along;

/// A point derived on a skew face is rounded to the grid once, so it may lie this far off.
const ROUNDING: i64 = 1;

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
    fn of(element: &'p Element, furred: &[(ElementId, Len)]) -> Option<Wall<'p>> {
        match &element.body {
            Body::Shell(w) => Some(Wall {
                element,
                line: w.line(),
                left: furred
                    .iter()
                    .filter(|&&(host, _)| host == element.id)
                    .map(|&(_, thickness)| thickness)
                    .max()
                    .unwrap_or(Len::ZERO),
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

/// Every wall of a plan, in the order of the ids.
pub(super) fn walls(plan: &Plan) -> Vec<Wall<'_>> {
    let furring = plan.elements().iter().filter_map(|e| match &e.body {
        Body::Furring(f) => Some((f.host, f.thickness())),
        _ => None,
    });
    let furring: Vec<_> = furring.collect();
    plan.elements().iter().filter_map(|e| Wall::of(e, &furring)).collect()
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
