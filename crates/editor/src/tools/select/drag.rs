//! What a drag moves, and the edit that it comes to.

use std::collections::BTreeSet;

use geometry::{Facing, Pt, Seg, Vec2};
use measure::Len;
use plan::element::{End, Furring, Overhead, OverheadShape, SectionLine};
use plan::{Body, Edit, Element, ElementId, ops};
use rules::room_to_move::Course;

use super::super::Cx;
use super::snap;
use crate::outline::placed;
use crate::pointer::{Pointer, along, distance, offset};
use crate::snap::caught;
use crate::stops;
use crate::{Dimension, DimensionId, Snap};

/// What is dragged.
#[derive(Clone, Debug)]
pub(super) enum Drag {
    /// A wall along its normal, between the limits at which a wall that follows it would turn inside out.
    Wall { id: ElementId, line: Seg, limits: (Len, Len) },
    /// An end of a wall; `base` is the other end.
    End { id: ElementId, end: End, base: Pt },
    /// An end of a straight overhead.
    RunEnd { id: ElementId, end: End, base: Pt },
    /// An opening along its wall.
    Opening { id: ElementId, at: Len, line: Seg },
    /// Furring along its wall, or one end of it.
    Furring { id: ElementId, line: Seg, from: Len, to: Len, end: Option<End> },
    /// One thing that snaps to faces.
    Thing { id: ElementId },
    /// Several elements together.
    Many { ids: Vec<ElementId> },
}

/// How far a drag has come.
#[derive(Clone, Copy, Debug)]
pub(super) enum Shift {
    /// Along the one direction that the element can move in.
    By(Len),
    /// A thing by a vector, and the way it faces then where a face decides.
    Vector(Vec2, Option<Facing>),
    /// An end to a point.
    To { base: Pt, to: Pt },
}

impl Drag {
    /// The handle of the one selected element that is within reach.
    pub fn handle(cx: &Cx<'_>, pointer: &Pointer) -> Option<Drag> {
        let mut selected = cx.selection.iter();
        let (Some(id), None) = (selected.next(), selected.next()) else { return None };
        let id = *id;
        let ends = |a: Pt, b: Pt| {
            let nearer_a = (pointer.at - a).norm2() <= (pointer.at - b).norm2();
            let (end, at, base) = if nearer_a { (End::Start, a, b) } else { (End::Finish, b, a) };
            pointer.reaches(at).then_some((end, base))
        };
        match &cx.plan.get(id)?.body {
            Body::Furring(furring) => {
                let (line, from, to) = stretch(cx, furring)?;
                let (end, _) = ends(line.point_at(from), line.point_at(to))?;
                Some(Drag::Furring { id, line, from, to, end: Some(end) })
            }
            Body::Overhead(Overhead { shape: OverheadShape::Run { a, b, .. }, .. }) => {
                let (end, base) = ends(*a, *b)?;
                Some(Drag::RunEnd { id, end, base })
            }
            Body::Section(section) => {
                let (end, base) = ends(section.a, section.b)?;
                Some(Drag::RunEnd { id, end, base })
            }
            body => {
                let line = body.wall_line()?;
                let (end, base) = ends(line.a, line.b)?;
                Some(Drag::End { id, end, base })
            }
        }
    }

    /// The drag of a selection; `None` for an empty one.
    pub fn of(cx: &Cx<'_>, selection: &BTreeSet<ElementId>) -> Option<Drag> {
        let first = *selection.first()?;
        if selection.len() > 1 {
            return Some(Drag::Many { ids: selection.iter().copied().collect() });
        }
        Some(match &cx.plan.get(first)?.body {
            Body::Opening(opening) => Drag::Opening {
                id: first,
                at: opening.at,
                line: cx.plan.get(opening.host)?.body.wall_line()?,
            },
            Body::Furring(furring) => {
                let (line, from, to) = stretch(cx, furring)?;
                Drag::Furring { id: first, line, from, to, end: None }
            }
            body => match body.wall_line() {
                Some(line) => {
                    Drag::Wall { id: first, line, limits: ops::move_wall_range(cx.plan, first) }
                }
                None => Drag::Thing { id: first },
            },
        })
    }

    /// How far the drag has come with the pointer where it is, snapped.
    pub fn aim(&self, cx: &Cx<'_>, grab: Pt, pointer: &Pointer) -> (Shift, Option<Snap>) {
        let v = pointer.at - grab;
        match self {
            Drag::Wall { id, line, limits: (least, most) } => {
                let to = along(v, line.dir().left());
                let (by, snap) = limit(cx, Course::Wall(*id), to, pointer)
                    .unwrap_or_else(|| snap::wall(cx, *id, *line, to, pointer));
                if by < *least || by > *most {
                    let stop = caught("stop", pointer.at);
                    return (Shift::By(by.clamp(*least, *most)), stop);
                }
                (Shift::By(by), snap)
            }
            Drag::End { id, base, .. } | Drag::RunEnd { id, base, .. } => {
                let (to, snap) = cx.catch(&[*id]).from(*base, pointer, &[]);
                (Shift::To { base: *base, to }, snap)
            }
            Drag::Opening { id, at, line } => {
                // It stops at its neighbours.
                let limits = ops::slide_range(cx.plan, *id).unwrap_or((*at, *at));
                let by = along(v, line.dir());
                if let Some((by, snap)) = limit(cx, Course::Opening(*id), by, pointer) {
                    return (Shift::By(by), snap);
                }
                let (to, snap) = snap::along_wall(cx, pointer, *line, *at + by, limits);
                (Shift::By(to - *at), snap)
            }
            Drag::Furring { line, from, to, end, .. } => {
                let by = along(v, line.dir());
                let (start, room) = match end {
                    Some(End::Start) => (*from, line.len()),
                    Some(End::Finish) => (*to, line.len()),
                    None => (*from, (line.len() - (*to - *from)).max(Len::ZERO)),
                };
                let limits = (Len::ZERO, room);
                let (at, snap) = snap::along_wall(cx, pointer, *line, start + by, limits);
                (Shift::By(at - start), snap)
            }
            Drag::Thing { id } => {
                let (snapped, facing, snap) = snap::thing(cx, *id, v, pointer);
                let sticks = facing.is_none() && cx.catch(&[]).active(pointer);
                match stops::thing(cx.stops, *id, v, pointer.reach, pointer.at).filter(|_| sticks) {
                    Some((v, snap)) => (Shift::Vector(v, None), snap),
                    None => (Shift::Vector(snapped, facing), snap),
                }
            }
            Drag::Many { .. } => {
                let (v, snap) = snap::step(cx, grab, v, pointer);
                (Shift::Vector(v, None), snap)
            }
        }
    }

    /// The same drag when its distance (for an end: the length) is typed; `None` without a direction.
    pub fn typed(&self, shift: &Shift, len: Len) -> Option<Shift> {
        match *shift {
            Shift::By(by) if by == Len::ZERO => None,
            Shift::By(by) => Some(Shift::By(if by < Len::ZERO { -len } else { len })),
            Shift::Vector(v, _) if v == Vec2::default() => None,
            Shift::Vector(v, facing) => Some(Shift::Vector(v.with_len(len), facing)),
            Shift::To { base, to } if base == to => None,
            Shift::To { base, to } => {
                Some(Shift::To { base, to: offset(base, (to - base).with_len(len))? })
            }
        }
    }

    /// The edit with its name; the error says why it can't be.
    pub fn edit(&self, cx: &Cx<'_>, shift: &Shift) -> Result<(String, Edit), String> {
        let say = |error: plan::EditError| error.to_string();
        let by = match *shift {
            Shift::By(by) => by,
            Shift::Vector(v, _) => length(v),
            Shift::To { base, to } => distance(base, to),
        };
        let far = cx.say(by.abs());
        match (self, *shift) {
            (Drag::Wall { id, .. }, Shift::By(by)) => {
                let edit = ops::move_wall(cx.plan, *id, by).map_err(say)?;
                Ok((format!("Move {} by {far}", cx.name(*id)), edit))
            }
            (Drag::Opening { id, at, .. }, Shift::By(by)) => {
                let edit = ops::slide_opening(cx.plan, *id, *at + by).map_err(say)?;
                Ok((format!("Slide {} by {far}", cx.name(*id)), edit))
            }
            (Drag::End { id, end, .. }, Shift::To { to, .. }) => {
                let edit = ops::move_end(cx.plan, *id, *end, to).map_err(say)?;
                Ok((format!("Move an end of {}, now {far} long", cx.name(*id)), edit))
            }
            (Drag::RunEnd { id, end, .. }, Shift::To { to, .. }) => {
                let label = format!("Move an end of {}, now {far} long", cx.name(*id));
                Ok((label, run_end(cx, *id, *end, to)?))
            }
            (Drag::Furring { id, line, from, to, end }, Shift::By(by)) => {
                let (from, to) = match end {
                    Some(End::Start) => (*from + by, *to),
                    Some(End::Finish) => (*from, *to + by),
                    None => (*from + by, *to + by),
                };
                let from = from.max(Len::ZERO);
                let edit = furring(cx, *id, from, to.min(line.len()))?;
                Ok((format!("Slide {} by {far}", cx.name(*id)), edit))
            }
            (Drag::Thing { id }, Shift::Vector(v, facing)) => {
                let edit = thing(cx, *id, v, facing)?;
                Ok((format!("Move {} by {far}", cx.name(*id)), edit))
            }
            (Drag::Many { ids }, Shift::Vector(v, _)) => {
                let edit = ops::translate(cx.plan, ids, v).map_err(say)?;
                Ok((format!("Move {} elements by {far}", ids.len()), edit))
            }
            _ => Err("It can't be moved that way.".to_owned()),
        }
    }

    /// How far it has come, as a live measurement.
    pub fn dimensions(&self, grab: Pt, shift: &Shift) -> Vec<Dimension> {
        let (id, from, to) = match (self, *shift) {
            (_, Shift::To { base, to }) => (DimensionId::Length, base, Some(to)),
            (_, Shift::Vector(v, _)) => (DimensionId::Distance, grab, offset(grab, v)),
            (Drag::Wall { line, .. }, Shift::By(by)) => {
                (DimensionId::Distance, grab, offset(grab, line.dir().left().with_len(by)))
            }
            (Drag::Opening { line, .. } | Drag::Furring { line, .. }, Shift::By(by)) => {
                (DimensionId::Distance, grab, offset(grab, line.dir().with_len(by)))
            }
            _ => return Vec::new(),
        };
        let Some(to) = to.filter(|to| *to != from) else { return Vec::new() };
        let value = distance(from, to);
        vec![Dimension { id, from, to, value, editable: true, against: None }]
    }
}

/// The limit that an offset sticks to, where one is within reach.
fn limit(cx: &Cx<'_>, course: Course, by: Len, pointer: &Pointer) -> Option<(Len, Option<Snap>)> {
    let sticks = cx.catch(&[]).active(pointer);
    let at = stops::near(cx.stops, course, by, pointer.reach).filter(|_| sticks)?;
    Some((at, caught("limit", pointer.at)))
}

fn length(v: Vec2) -> Len {
    Len::from_units(v.norm().round() as i32)
}

/// The wall's line and the stretch of it that furring takes.
fn stretch(cx: &Cx<'_>, furring: &Furring) -> Option<(Seg, Len, Len)> {
    let line = cx.plan.get(furring.host)?.body.wall_line()?;
    Some((line, furring.from, furring.to.min(line.len())))
}

fn replace(cx: &Cx<'_>, id: ElementId, change: impl FnOnce(&mut Body)) -> Result<Edit, String> {
    let old = cx.plan.get(id).ok_or("It is not in the plan any more.")?;
    let mut body = old.body.clone();
    change(&mut body);
    Ok(Edit::Replace(Element { body, ..old.clone() }))
}

fn run_end(cx: &Cx<'_>, id: ElementId, end: End, to: Pt) -> Result<Edit, String> {
    replace(cx, id, |body| {
        if let Body::Overhead(Overhead { shape: OverheadShape::Run { a, b, .. }, .. })
        | Body::Section(SectionLine { a, b }) = body
        {
            match end {
                End::Start => *a = to,
                End::Finish => *b = to,
            }
        }
    })
}

fn furring(cx: &Cx<'_>, id: ElementId, from: Len, to: Len) -> Result<Edit, String> {
    replace(cx, id, |body| {
        if let Body::Furring(furring) = body {
            (furring.from, furring.to) = (from, to);
        }
    })
}

/// Moves a thing by a vector, and turns it to face a way first where a face decides.
fn thing(cx: &Cx<'_>, id: ElementId, v: Vec2, facing: Option<Facing>) -> Result<Edit, String> {
    let far = || "That would lie too far out.".to_owned();
    match facing {
        None => ops::translate(cx.plan, &[id], v).map_err(|error| error.to_string()),
        Some(facing) => {
            let old = cx.plan.get(id).and_then(|e| placed(&e.body)).ok_or_else(far)?;
            let to = offset(old.back, v).ok_or_else(far)?;
            replace(cx, id, |body| match body {
                Body::Service(s) => (s.at, s.facing) = (to, facing),
                Body::Furnishing(f) => (f.at, f.facing) = (to, facing),
                _ => {}
            })
        }
    }
}
