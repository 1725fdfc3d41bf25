//! Placing a thing by a click, and turning it by a drag. Shared by the tools that place boxes.

use geometry::{Facing, Pt};
use measure::Len;

use super::{Cx, Event};
use crate::Snap;
use crate::pointer::Pointer;
use crate::snap::{caught, face_near};

/// The states of a thing being placed.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Place {
    Ready {
        /// The way the next thing faces, where no wall decides.
        facing: Facing,
    },
    /// The button is down at `at`: dragging away turns it.
    Held { at: Pt, facing: Facing, next: Facing },
}

/// What the gesture has come to.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Placing {
    Nothing,
    /// Where it would stand now.
    Ghost(Pt, Facing),
    Done(Pt, Facing),
}

/// Where a thing settles when the pointer is at a place and it would face a way.
pub(crate) type Settle = fn(&Cx<'_>, &Pointer, Facing) -> (Pt, Facing, Option<Snap>);

impl Place {
    pub const fn facing(facing: Facing) -> Place {
        Place::Ready { facing }
    }

    pub fn busy(self) -> bool {
        matches!(self, Place::Held { .. })
    }

    /// Feeds an event; `settle` says where the thing goes.
    pub fn on(&mut self, event: &Event, cx: &Cx<'_>, settle: Settle) -> (Placing, Option<Snap>) {
        match (*self, event) {
            (Place::Ready { facing }, Event::Move(pointer)) => {
                let (at, facing, snap) = settle(cx, pointer, facing);
                (Placing::Ghost(at, facing), snap)
            }
            (Place::Ready { facing: next }, Event::Press(pointer)) => {
                let (at, facing, snap) = settle(cx, pointer, next);
                *self = Place::Held { at, facing, next };
                (Placing::Ghost(at, facing), snap)
            }
            (Place::Ready { facing: next }, Event::Point(at)) => {
                let pointer = Pointer { at: *at, ..Pointer::default() };
                let (at, facing, _) = settle(cx, &pointer, next);
                (Placing::Done(at, facing), None)
            }
            (Place::Ready { facing }, Event::Turn) => {
                *self = Place::facing(facing.left());
                (Placing::Nothing, None)
            }
            (Place::Ready { .. }, Event::Arrow(facing)) => {
                *self = Place::facing(*facing);
                (Placing::Nothing, None)
            }
            (Place::Held { at, facing, next }, Event::Move(pointer)) => {
                match turned(cx, at, pointer) {
                    Some(facing) => {
                        *self = Place::Held { at, facing, next: facing };
                        (Placing::Ghost(at, facing), None)
                    }
                    None => {
                        *self = Place::Held { at, facing, next };
                        (Placing::Ghost(at, facing), None)
                    }
                }
            }
            (Place::Held { at, facing, next }, Event::Release(pointer)) => {
                let drag = turned(cx, at, pointer);
                *self = Place::facing(drag.unwrap_or(next));
                (Placing::Done(at, drag.unwrap_or(facing)), None)
            }
            (Place::Held { at, facing, next }, Event::Turn) => {
                *self = Place::Held { at, facing: facing.left(), next: next.left() };
                (Placing::Ghost(at, facing.left()), None)
            }
            (Place::Held { at, .. }, Event::Arrow(facing)) => {
                *self = Place::Held { at, facing: *facing, next: *facing };
                (Placing::Ghost(at, *facing), None)
            }
            (Place::Held { at, facing, .. }, Event::Enter) => {
                *self = Place::facing(facing);
                (Placing::Done(at, facing), None)
            }
            (Place::Held { at, facing, .. }, _) => (Placing::Ghost(at, facing), None),
            (Place::Ready { .. }, _) => (Placing::Nothing, None),
        }
    }
}

/// The way that a drag away from `at` turns a thing: one of eight directions, or any while Ctrl or Cmd is held.
/// `None` while the pointer is still near.
fn turned(cx: &Cx<'_>, at: Pt, pointer: &Pointer) -> Option<Facing> {
    let slack = pointer.reach * 2;
    if crate::pointer::within(at, pointer.at, slack) {
        return None;
    }
    let v = pointer.at - at;
    if !cx.catch(&[]).active(pointer) {
        return Facing::along(v);
    }
    let (x, y) = (v.x.signum() as i32, v.y.signum() as i32);
    // tan 22.5° is about 5/12.
    let (x, y) = if v.y.abs() * 12 < v.x.abs() * 5 {
        (x, 0)
    } else if v.x.abs() * 12 < v.y.abs() * 5 {
        (0, y)
    } else {
        (x, y)
    };
    Some(Facing { x, y })
}

/// Settles on any point: where the pointer is caught.
pub(crate) fn anywhere(
    cx: &Cx<'_>,
    pointer: &Pointer,
    facing: Facing,
) -> (Pt, Facing, Option<Snap>) {
    if pointer.reach == Len::ZERO {
        return (pointer.at, facing, None);
    }
    let (at, snap) = cx.catch(&[]).point(pointer);
    (at, facing, snap)
}

/// Settles with its back on the wall face within `far`, looking into the room; else as [`anywhere`].
pub(crate) fn against(
    cx: &Cx<'_>,
    pointer: &Pointer,
    facing: Facing,
    far: Len,
) -> (Pt, Facing, Option<Snap>) {
    let catch = cx.catch(&[]);
    if catch.active(pointer)
        && let Some(face) = face_near(&catch, pointer, far)
    {
        return (face.at, face.out, caught("face", face.at));
    }
    anywhere(cx, pointer, facing)
}
