//! Draws the foundation walls, wall after wall, by the face that the tape touches. The room is kept on the left
//! of every wall: where the chain runs clockwise, the walls drawn so far are turned round with the new one.

use geometry::{Pt, twice_area};
use plan::element::End;
use plan::{Body, Draft, Edit, Element, ElementId, State, element};

use super::rubber::{Drawn, Rubber};
use super::{Commit, Cx, Event, Step, Tool};
use crate::pointer::distance;
use crate::{Dimension, DimensionId};

/// The shell tool.
#[derive(Clone, Debug, Default)]
pub(crate) struct Shell {
    rubber: Rubber,
    /// The corners fixed so far.
    corners: Vec<Pt>,
    /// The walls between them.
    walls: Vec<ElementId>,
}

impl Tool for Shell {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step {
        let marks: &[Pt] = if self.corners.len() > 1 { &self.corners[..1] } else { &[] };
        let (drawn, caught) = self.rubber.on(event, cx, marks);
        let step = match drawn {
            Drawn::Nothing => Step::default(),
            Drawn::Ended => {
                *self = Shell::default();
                Step::default()
            }
            Drawn::Rubber { from, to } if from == to => Step::default(),
            Drawn::Rubber { from, to } => Step::preview(self.edit(cx, from, to), None),
            Drawn::Refused(why) => Step::refuse(why),
            Drawn::Done { from, to, .. } => self.fix(cx, from, to),
        };
        Step { caught, ..step }
    }

    fn busy(&self) -> bool {
        self.rubber.busy()
    }

    fn expects(&self) -> &'static str {
        match (self.busy(), self.corners.len()) {
            (false, _) => {
                "Click the first corner of the foundation, at the inner face, or type x, y."
            }
            (true, 0..=2) => {
                "Point along the wall and type what the tape reads, or click the next corner."
            }
            (true, _) => "Next corner. Click the first corner to close, Enter to leave it open.",
        }
    }

    fn fields(&self) -> &'static [DimensionId] {
        self.rubber.fields()
    }

    fn takes_point(&self) -> bool {
        true
    }

    fn dimensions(&self) -> Vec<Dimension> {
        self.rubber.dimensions(DimensionId::Length, true)
    }
}

impl Shell {
    /// Fixes a wall; the chain goes on unless it has come back to its first corner or to
    /// another foundation wall's end.
    fn fix(&mut self, cx: &Cx<'_>, from: Pt, to: Pt) -> Step {
        let label = format!("Draw foundation wall {}", cx.say(distance(from, to)));
        let edit = self.edit(cx, from, to);
        let new: Vec<ElementId> = cx.plan.next_ids(1).collect();
        if self.corners.is_empty() {
            self.corners.push(from);
        }
        if to == self.corners[0] || self.continues(cx, to).is_some() {
            *self = Shell::default();
        } else {
            self.corners.push(to);
            self.walls.extend(&new);
            self.rubber = Rubber::again(to);
        }
        Step { commit: Some(Commit { label, edit, select: Some(new) }), ..Step::default() }
    }

    /// Adds the wall, with every wall of the chain turned so that the room is on its left.
    fn edit(&self, cx: &Cx<'_>, from: Pt, to: Pt) -> Edit {
        let clockwise = self.clockwise(cx, from, to);
        let (a, b) = if clockwise { (to, from) } else { (from, to) };
        let add = Edit::Add(Draft::new(
            State::Existing,
            Body::Shell(element::ShellWall {
                a,
                b,
                thickness: cx.options.shell_thickness,
                height: cx.options.shell_height,
            }),
        ));
        let turned: Vec<Edit> = self
            .walls
            .iter()
            .zip(self.corners.windows(2))
            .filter_map(|(id, ends)| {
                let (a, b) = if clockwise { (ends[1], ends[0]) } else { (ends[0], ends[1]) };
                let old = cx.plan.get(*id)?;
                let Body::Shell(wall) = &old.body else { return None };
                if (wall.a, wall.b) == (a, b) {
                    return None;
                }
                let body = Body::Shell(element::ShellWall { a, b, ..wall.clone() });
                Some(Edit::Replace(Element { body, ..old.clone() }))
            })
            .collect();
        if turned.is_empty() {
            return add;
        }
        Edit::Batch(turned.into_iter().chain([add]).collect())
    }

    /// Whether the chain with its next corner has the room on its right: as the foundation wall has that it
    /// continues, else by the way it turns.
    fn clockwise(&self, cx: &Cx<'_>, from: Pt, to: Pt) -> bool {
        let first = *self.corners.first().unwrap_or(&from);
        if let Some(end) = self.continues(cx, first) {
            return end == End::Start;
        }
        if let Some(end) = self.continues(cx, to) {
            return end == End::Finish;
        }
        let mut ring = self.corners.clone();
        ring.push(to);
        ring.len() > 2 && twice_area(&ring) < 0
    }

    /// The end of a standing foundation wall outside the chain that lies at a point.
    fn continues(&self, cx: &Cx<'_>, at: Pt) -> Option<End> {
        let outside =
            cx.plan.elements().iter().filter(|e| e.stands() && !self.walls.contains(&e.id));
        outside
            .filter_map(|e| match &e.body {
                Body::Shell(wall) => Some(wall),
                _ => None,
            })
            .find_map(|wall| match at {
                _ if wall.a == at => Some(End::Start),
                _ if wall.b == at => Some(End::Finish),
                _ => None,
            })
    }
}
