//! A line drawn from a first point to a second: by drag (press, move, release), by two clicks, or by a typed
//! length in the direction of the pointer or of an arrow key. Shared by the tools that draw lines.

use geometry::{Facing, Pt};
use measure::Len;
use plan::{Draft, Edit};

use super::{Cx, Event, Step};
use crate::pointer::{Pointer, distance, offset, within};
use crate::{Dimension, DimensionId, Snap};

/// The states of a line being drawn.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) enum Rubber {
    #[default]
    Ready,
    Drawing {
        from: Pt,
        to: Pt,
        /// The button that set `from` is still down: the line is being dragged.
        held: bool,
    },
}

/// What a line's gesture has come to.
#[derive(Clone, Debug)]
pub(crate) enum Drawn {
    /// Nothing new.
    Nothing,
    /// The line as it would be now; `from` and `to` may be the same point.
    Rubber {
        from: Pt,
        to: Pt,
    },
    /// The line is fixed. `chain`: it was not dragged, so that the next may start at `to`.
    Done {
        from: Pt,
        to: Pt,
        chain: bool,
    },
    /// The user ended without a further line.
    Ended,
    Refused(&'static str),
}

impl Rubber {
    /// Feeds an event; `marks` are points of the same chain that ends are caught by or brought level with.
    /// After `Done` the rubber is ready; [`Rubber::again`] starts the next line of a chain.
    pub fn on(&mut self, event: &Event, cx: &Cx<'_>, marks: &[Pt]) -> (Drawn, Option<Snap>) {
        match *self {
            Rubber::Ready => self.start(event, cx),
            Rubber::Drawing { from, to, held } => self.draw(event, cx, marks, from, to, held),
        }
    }

    fn start(&mut self, event: &Event, cx: &Cx<'_>) -> (Drawn, Option<Snap>) {
        match event {
            Event::Press(pointer) => {
                let (from, snap) = cx.catch(&[]).point(pointer);
                *self = Rubber::Drawing { from, to: from, held: true };
                (Drawn::Rubber { from, to: from }, snap)
            }
            Event::Move(pointer) => (Drawn::Nothing, cx.catch(&[]).point(pointer).1),
            Event::Point(from) => {
                *self = Rubber::again(*from);
                (Drawn::Rubber { from: *from, to: *from }, None)
            }
            _ => (Drawn::Nothing, None),
        }
    }

    fn draw(
        &mut self,
        event: &Event,
        cx: &Cx<'_>,
        marks: &[Pt],
        from: Pt,
        to: Pt,
        held: bool,
    ) -> (Drawn, Option<Snap>) {
        match event {
            Event::Press(pointer) | Event::Move(pointer) => {
                let (to, snap) = far_end(cx, from, pointer, marks);
                *self = Rubber::Drawing { from, to, held };
                (Drawn::Rubber { from, to }, snap)
            }
            Event::Release(pointer) | Event::Double(pointer) => {
                let double = matches!(event, Event::Double(_));
                let (to, snap) = far_end(cx, from, pointer, marks);
                if to != from {
                    *self = Rubber::Ready;
                    return (Drawn::Done { from, to, chain: !held && !double }, snap);
                }
                if double {
                    *self = Rubber::Ready;
                    return (Drawn::Ended, None);
                }
                *self = Rubber::Drawing { from, to: from, held: false };
                (Drawn::Rubber { from, to: from }, snap)
            }
            Event::Length(_, len) => {
                if *len <= Len::ZERO {
                    return (Drawn::Refused("A length is more than zero."), None);
                }
                let dir = to - from;
                match offset(from, dir.with_len(*len)) {
                    _ if to == from => {
                        (Drawn::Refused("Point where it goes first, or press an arrow key."), None)
                    }
                    None => (Drawn::Refused("That would lie too far out."), None),
                    Some(to) => {
                        *self = Rubber::Ready;
                        (Drawn::Done { from, to, chain: true }, None)
                    }
                }
            }
            Event::Point(to) if *to == from => {
                (Drawn::Refused("It ends where it starts: type another point."), None)
            }
            Event::Point(to) => {
                *self = Rubber::Ready;
                (Drawn::Done { from, to: *to, chain: true }, None)
            }
            Event::Arrow(facing) => {
                let to = self.pointed(*facing, from, to);
                *self = Rubber::Drawing { from, to, held };
                (Drawn::Rubber { from, to }, None)
            }
            Event::Enter => {
                *self = Rubber::Ready;
                (Drawn::Ended, None)
            }
            Event::Turn => (Drawn::Rubber { from, to }, None),
        }
    }

    /// The far end when an arrow key gives the direction: as long as before, at least a foot.
    fn pointed(self, facing: Facing, from: Pt, to: Pt) -> Pt {
        let len = distance(from, to).max(Len::inches(12));
        offset(from, facing.step(len)).unwrap_or(to)
    }

    /// Drawing on from a point.
    pub fn again(from: Pt) -> Rubber {
        Rubber::Drawing { from, to: from, held: false }
    }

    pub fn busy(self) -> bool {
        matches!(self, Rubber::Drawing { .. })
    }

    pub fn fields(self) -> &'static [DimensionId] {
        if self.busy() { &[DimensionId::Length] } else { &[] }
    }

    /// The length of the line as it would be now.
    pub fn dimensions(self, id: DimensionId, editable: bool) -> Vec<Dimension> {
        match self {
            Rubber::Drawing { from, to, .. } if from != to => {
                vec![Dimension { id, from, to, value: distance(from, to), editable, against: None }]
            }
            _ => Vec::new(),
        }
    }
}

/// The step of a tool that draws one element along a line: what it shows, adds or refuses.
pub(crate) fn step(
    cx: &Cx<'_>,
    (drawn, caught): (Drawn, Option<Snap>),
    label: impl Fn(Pt, Pt) -> String,
    draft: impl Fn(Pt, Pt) -> Draft,
) -> Step {
    let step = match drawn {
        Drawn::Nothing | Drawn::Ended => Step::default(),
        Drawn::Rubber { from, to } if from == to => Step::default(),
        Drawn::Rubber { from, to } => Step::preview(Edit::Add(draft(from, to)), None),
        Drawn::Refused(why) => Step::refuse(why),
        Drawn::Done { from, to, .. } => Step::add(cx, label(from, to), draft(from, to)),
    };
    Step { caught, ..step }
}

/// The far end with the pointer where it is; the near one again while the pointer is still on that.
fn far_end(cx: &Cx<'_>, from: Pt, pointer: &Pointer, marks: &[Pt]) -> (Pt, Option<Snap>) {
    if within(pointer.at, from, pointer.reach) {
        return (from, None);
    }
    cx.catch(&[]).from(from, pointer, marks)
}
