//! Furs out a foundation wall: a click takes the whole wall, a drag a stretch of it.

use geometry::{Seg, Where, locate, nearest_on};
use measure::Len;
use plan::{Body, Draft, Edit, ElementId, State, element};

use super::hosted::catch_along;
use super::{Cx, Event, Step, Tool};
use crate::pointer::{Pointer, along};
use crate::snap::caught;
use crate::{Dimension, DimensionId};

/// How far from a wall a typed point may lie.
const NEAR: Len = Len::inches(24);

/// The furring tool.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) enum Furring {
    #[default]
    Ready,
    /// The button is down on a wall; `to` differs from `from` once a stretch is dragged.
    Pressed { host: ElementId, line: Seg, from: Len, to: Len },
}

impl Tool for Furring {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        match (*self, event) {
            (Furring::Ready, Event::Move(pointer)) => {
                match shell_near(cx, pointer, pointer.reach) {
                    Some((host, line)) => Step {
                        hovered: Some(host),
                        ..Step::preview(Edit::Add(draft(cx, host, Len::ZERO, line.len())), None)
                    },
                    None => Step::default(),
                }
            }
            (Furring::Ready, Event::Press(pointer)) => {
                let Some((host, line)) = shell_near(cx, pointer, pointer.reach) else {
                    return Step::refuse("Furring stands against a foundation wall: click on one.");
                };
                let (from, word) = place(cx, pointer, line);
                *self = Furring::Pressed { host, line, from, to: from };
                let snap = word.and_then(|word| caught(word, line.point_at(from)));
                let edit = Edit::Add(draft(cx, host, Len::ZERO, line.len()));
                Step::preview(edit, snap)
            }
            (Furring::Ready, Event::Point(p)) => {
                let pointer = Pointer { at: *p, ..Pointer::default() };
                match shell_near(cx, &pointer, NEAR) {
                    Some((host, line)) => self.fur(cx, host, Len::ZERO, line.len(), line),
                    None => Step::refuse("There is no foundation wall within 2 ft of that point."),
                }
            }
            (Furring::Pressed { host, line, from, .. }, Event::Move(pointer)) => {
                let (to, word) = place(cx, pointer, line);
                let to = if (to - from).abs() <= pointer.reach { from } else { to };
                *self = Furring::Pressed { host, line, from, to };
                let snap = word.and_then(|word| caught(word, line.point_at(to)));
                let (from, to) = stretch(from, to, line);
                Step::preview(Edit::Add(draft(cx, host, from, to)), snap)
            }
            (Furring::Pressed { host, line, from, .. }, Event::Release(pointer)) => {
                let (to, _) = place(cx, pointer, line);
                let to = if (to - from).abs() <= pointer.reach { from } else { to };
                let (from, to) = stretch(from, to, line);
                self.fur(cx, host, from, to, line)
            }
            (Furring::Pressed { host, line, from, to }, Event::Length(_, len)) => {
                let to = if to < from { from - *len } else { from + *len };
                self.fur(cx, host, from.min(to), from.max(to), line)
            }
            (Furring::Pressed { host, line, from, to }, Event::Enter) => {
                let (from, to) = stretch(from, to, line);
                self.fur(cx, host, from, to, line)
            }
            (Furring::Pressed { host, line, from, to }, _) => {
                let (from, to) = stretch(from, to, line);
                Step::preview(Edit::Add(draft(cx, host, from, to)), None)
            }
            (Furring::Ready, _) => Step::default(),
        }
    }

    fn busy(&self) -> bool {
        matches!(self, Furring::Pressed { .. })
    }

    fn expects(&self) -> &'static str {
        if self.busy() {
            "Release to fur out the whole wall, or drag along it for a stretch."
        } else {
            "Click a foundation wall, drag along it for a stretch, or type x, y."
        }
    }

    fn fields(&self) -> &'static [DimensionId] {
        if self.busy() { &[DimensionId::Length] } else { &[] }
    }

    fn takes_point(&self) -> bool {
        !self.busy()
    }

    fn dimensions(&self) -> Vec<Dimension> {
        match *self {
            Furring::Pressed { host, line, from, to } if from != to => vec![Dimension {
                id: DimensionId::Length,
                from: line.point_at(from),
                to: line.point_at(to),
                value: (to - from).abs(),
                editable: true,
                against: Some(host),
            }],
            _ => Vec::new(),
        }
    }
}

impl Furring {
    fn fur(&mut self, cx: &Cx<'_>, host: ElementId, from: Len, to: Len, line: Seg) -> Step {
        *self = Furring::Ready;
        let whole = from <= Len::ZERO && to >= line.len();
        let name = cx.name(host);
        let taken = cx.plan.elements().iter().find(
            |e| matches!(&e.body, Body::Furring(f) if f.host == host && f.from < to && from < f.to),
        );
        if let Some(other) = taken {
            let other = other.name();
            return Step::refuse(format!("{name} is furred out there already, by {other}."));
        }
        let label = if whole {
            format!("Fur out {name}")
        } else {
            format!("Fur out {} of {name}", cx.say(to - from))
        };
        Step::add(cx, label, draft(cx, host, from, to))
    }
}

/// The stretch between two places in order; the whole wall when they are one.
fn stretch(from: Len, to: Len, line: Seg) -> (Len, Len) {
    if from == to { (Len::ZERO, line.len()) } else { (from.min(to), from.max(to)) }
}

fn place(cx: &Cx<'_>, pointer: &Pointer, line: Seg) -> (Len, Option<&'static str>) {
    catch_along(cx, pointer, along(pointer.at - line.a, line.dir()), (Len::ZERO, line.len()))
}

/// The foundation wall at the pointer, with its drawn line.
fn shell_near(cx: &Cx<'_>, pointer: &Pointer, reach: Len) -> Option<(ElementId, Seg)> {
    let r = i64::from(reach.units());
    cx.facts
        .walls
        .iter()
        .filter(|w| matches!(cx.plan.get(w.id).map(|e| &e.body), Some(Body::Shell(_))))
        .map(|wall| {
            let inside = locate(pointer.at, &wall.outline) != Where::Outside;
            let off = (pointer.at - nearest_on(wall.line, pointer.at)).norm2();
            (if inside { 0 } else { off }, wall)
        })
        .filter(|(off, _)| *off <= r * r)
        .min_by_key(|(off, _)| *off)
        .map(|(_, wall)| (wall.id, wall.line))
}

fn draft(cx: &Cx<'_>, host: ElementId, from: Len, to: Len) -> Draft {
    let body = Body::Furring(element::Furring {
        host,
        from,
        to,
        layers: cx.options.furring_layers.clone(),
        spacing: cx.options.stud_spacing,
    });
    Draft::new(State::New, body)
}
