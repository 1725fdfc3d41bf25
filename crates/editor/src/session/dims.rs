//! Live dimensions of the selected element, and typing into them.

use std::collections::BTreeSet;
use std::sync::Arc;

use geometry::{Seg, Vec2};
use measure::{Len, Precision};
use plan::element::{End, Furring, Overhead, OverheadShape, Side};
use plan::{Body, Edit, Element, ElementId, Plan, ops};
use space::{Facts, clear_to_next};

use super::{Session, boxes};
use crate::outline::placed;
use crate::tools::{Event, to_ends};
use crate::{Dimension, DimensionId, ToolKind};

/// The live dimensions of the selected element, where there is just one.
pub(super) fn of_selection(facts: &Facts, selection: &BTreeSet<ElementId>) -> Vec<Dimension> {
    let mut selected = selection.iter();
    let (Some(id), None) = (selected.next(), selected.next()) else { return Vec::new() };
    let Some(element) = facts.plan.get(*id) else { return Vec::new() };
    match &element.body {
        Body::Shell(_) | Body::Partition(_) => wall(facts, element),
        Body::Opening(opening) => {
            match facts.plan.get(opening.host).and_then(|e| e.body.wall_line()) {
                Some(line) => to_ends(opening.host, line, opening.at, opening.width()),
                None => Vec::new(),
            }
        }
        Body::Furring(furring) => match host_line(&facts.plan, furring) {
            Some(line) => {
                let to = furring.to.min(line.len());
                let own = Seg::new(line.point_at(furring.from), line.point_at(to));
                let mut all = vec![length(own, to - furring.from)];
                all.extend(to_ends(furring.host, line, furring.from, to - furring.from));
                all
            }
            None => Vec::new(),
        },
        Body::Overhead(Overhead { shape: OverheadShape::Run { a, b, .. }, .. }) => {
            let line = Seg::new(*a, *b);
            vec![length(line, line.len())]
        }
        Body::Section(section) => {
            let line = section.line();
            vec![length(line, line.len())]
        }
        Body::Overhead(_) | Body::RoomTag(_) | Body::Note(_) => Vec::new(),
        body => placed(body).map_or(Vec::new(), |placed| boxes::dimensions(facts, placed)),
    }
}

/// The distances around a thing that is being placed: the first that the shown plan has and the committed one
/// has not. They are read, not typed into.
pub(super) fn of_ghost(facts: &Facts, committed: &Plan) -> Vec<Dimension> {
    let ghost = committed.next_ids(1).find_map(|id| facts.plan.get(id));
    let Some(placed) = ghost.and_then(|e| placed(&e.body)) else { return Vec::new() };
    let all = boxes::dimensions(facts, placed);
    all.into_iter().map(|d| Dimension { editable: false, ..d }).collect()
}

fn host_line(plan: &Plan, furring: &Furring) -> Option<Seg> {
    plan.get(furring.host)?.body.wall_line()
}

fn length(line: Seg, value: Len) -> Dimension {
    Dimension {
        id: DimensionId::Length,
        from: line.a,
        to: line.b,
        value,
        editable: true,
        against: None,
    }
}

/// The clear distances on both sides of a wall, and its length.
fn wall(facts: &Facts, element: &Element) -> Vec<Dimension> {
    let mut all: Vec<Dimension> = [Side::Left, Side::Right]
        .into_iter()
        .filter_map(|side| clear(facts, element.id, side))
        .collect();
    all.extend(element.body.wall_line().map(|line| length(line, line.len())));
    all
}

fn clear(facts: &Facts, id: ElementId, side: Side) -> Option<Dimension> {
    let gap = clear_to_next(facts, id, side)?;
    Some(Dimension {
        id: match side {
            Side::Left => DimensionId::ClearLeft,
            Side::Right => DimensionId::ClearRight,
        },
        from: gap.from,
        to: gap.to,
        value: gap.distance,
        editable: true,
        against: Some(gap.against),
    })
}

/// How often a typed clear distance is measured again and put right.
const TRIES: usize = 4;

/// A skew wall can't always meet a figure to the unit.
const ROUNDING: Len = Len::from_units(2);

impl Session {
    /// Types a value into a live dimension: the element moves or grows so that it becomes true.
    pub fn type_dimension(&mut self, id: DimensionId, value: Len) -> Result<(), String> {
        self.status.refused = None;
        self.lasting = None;
        if self.active.tool().fields().contains(&id) {
            self.event(&Event::Length(id, value));
            return match &self.status.refused {
                Some(why) => Err(why.clone()),
                None => Ok(()),
            };
        }
        if self.tool != ToolKind::Select {
            return Err(format!("The {} can't be typed now.", id.word()));
        }
        let plan = Arc::clone(self.history.now());
        let facts = self.memo.facts(&plan);
        let now = of_selection(&facts, &self.selection).into_iter().find(|d| d.id == id);
        let (Some(now), Some(element)) = (now, self.selection.first().and_then(|id| plan.get(*id)))
        else {
            return Err(format!("What is selected has no {}.", id.word()));
        };
        if value < Len::ZERO {
            return Err("A distance is zero or more.".to_owned());
        }
        let (label, edit) = self.meet(&facts, element, &now, value)?;
        self.apply(&label, &edit).map_err(|error| error.to_string())
    }

    /// The edit that makes a dimension's figure true, with its name.
    fn meet(
        &self,
        facts: &Facts,
        element: &Element,
        now: &Dimension,
        value: Len,
    ) -> Result<(String, Edit), String> {
        let plan = &facts.plan;
        let (id, name) = (element.id, element.name());
        let say = |len: Len| self.system.len(len.abs(), Precision::Tape);
        let moved = format!("Move {name} by {}", say(now.value - value));
        let made = format!("Make {name} {} long", say(value));
        let words = |error: plan::EditError| error.to_string();
        match (&element.body, now.id) {
            (Body::Shell(_) | Body::Partition(_), DimensionId::Length) => {
                Ok((made, ops::set_wall_length(plan, id, value, End::Start).map_err(words)?))
            }
            (Body::Shell(_) | Body::Partition(_), DimensionId::ClearLeft) => {
                Ok((moved, meet_clear(facts, id, Side::Left, now.value, value)?))
            }
            (Body::Shell(_) | Body::Partition(_), DimensionId::ClearRight) => {
                Ok((moved, meet_clear(facts, id, Side::Right, now.value, value)?))
            }
            (Body::Opening(opening), DimensionId::ToStart | DimensionId::ToFinish) => {
                let by = match now.id {
                    DimensionId::ToStart => value - now.value,
                    _ => now.value - value,
                };
                let edit = ops::slide_opening(plan, id, opening.at + by).map_err(words)?;
                Ok((format!("Slide {name} by {}", say(by)), edit))
            }
            (Body::Furring(furring), field) => {
                let line = host_line(plan, furring).ok_or("Its wall is not in the plan.")?;
                let mut next = furring.clone();
                match field {
                    DimensionId::ToStart => next.from = value,
                    DimensionId::ToFinish => next.to = line.len() - value,
                    _ => next.to = next.from + value,
                }
                let long = say(next.to.min(line.len()) - next.from);
                Ok((format!("Make {name} {long} long"), replace(element, Body::Furring(next))))
            }
            (Body::Overhead(overhead), DimensionId::Length) => {
                let mut next = overhead.clone();
                if let OverheadShape::Run { a, b, .. } = &mut next.shape {
                    *b = Seg::new(*a, *b).point_at(value);
                }
                Ok((made, replace(element, Body::Overhead(next))))
            }
            (body, _) => {
                let placed = placed(body).ok_or("It can't be moved that way.")?;
                let out = match now.id {
                    DimensionId::BoxLeft => placed.facing.left(),
                    DimensionId::BoxRight => placed.facing.right(),
                    DimensionId::BoxBack => placed.facing.back(),
                    _ => placed.facing,
                };
                let v: Vec2 = out.step(now.value - value);
                Ok((moved, ops::translate(plan, &[id], v).map_err(words)?))
            }
        }
    }
}

fn replace(old: &Element, body: Body) -> Edit {
    Edit::Replace(Element { body, ..old.clone() })
}

/// Moves a wall along its normal until the clear distance on a side is `value`. What follows the wall can change
/// what it is measured to, so it is measured again and put right.
fn meet_clear(
    facts: &Facts,
    id: ElementId,
    side: Side,
    now: Len,
    value: Len,
) -> Result<Edit, String> {
    let sign = match side {
        Side::Left => 1,
        Side::Right => -1,
    };
    let mut by = (now - value) * sign;
    let mut reached = now;
    for _ in 0..TRIES {
        let edit = ops::move_wall(&facts.plan, id, by).map_err(|error| error.to_string())?;
        let next = Arc::new(facts.plan.with(&edit).map_err(|error| error.to_string())?);
        let measured = clear_to_next(&space::derive(&next), id, side);
        reached = measured.map_or(reached, |gap| gap.distance);
        if reached == value || ((reached - value).abs() <= ROUNDING && !square(&facts.plan, id)) {
            return Ok(edit);
        }
        by += (reached - value) * sign;
    }
    Err("The wall would meet something else there first.".to_owned())
}

/// Whether a wall is parallel to an axis, so that every figure can be met to the unit.
fn square(plan: &Plan, id: ElementId) -> bool {
    let dir = plan.get(id).and_then(|e| e.body.wall_line()).map(Seg::dir);
    dir.is_some_and(|dir| dir.x == 0 || dir.y == 0)
}
