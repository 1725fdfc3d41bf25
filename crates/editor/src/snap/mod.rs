//! Snapping: points to ends, crossings, middles, faces and the grid; directions to square, 45° and the walls
//! near. A snapped point lies exactly on what caught it (on a skew line: on the grid point nearest to it).

mod direction;
mod flush;
mod points;

use geometry::{Pt, Seg};
use measure::Len;
use plan::element::{Body, OverheadShape};
use plan::{ElementId, Plan};
use space::Facts;

pub(crate) use flush::{face_near, flush};

use crate::Snap;
use crate::pointer::Pointer;

/// What there is to snap to.
#[derive(Clone, Copy)]
pub(crate) struct Catch<'a> {
    pub plan: &'a Plan,
    pub facts: &'a Facts,
    /// Elements that are being moved: nothing snaps to them.
    pub skip: &'a [ElementId],
    /// The grid; zero for none.
    pub grid: Len,
    pub on: bool,
}

/// A point and what caught it.
pub(crate) type Caught = (Pt, Option<Snap>);

impl Catch<'_> {
    /// Whether anything is caught at this moment: not while Ctrl or Cmd is held.
    pub fn active(&self, pointer: &Pointer) -> bool {
        self.on && !pointer.mods.command
    }

    /// The faces and drawn lines of the walls near a point: `(segment, is the drawn line)`.
    fn lines_near(&self, at: Pt, reach: Len) -> Vec<Seg> {
        let mut lines = Vec::new();
        for wall in self.facts.walls.iter().filter(|w| !self.skip.contains(&w.id)) {
            for seg in [wall.left, wall.right, wall.line] {
                if crate::pointer::box_reaches(seg, at, reach) && !lines.contains(&seg) {
                    lines.push(seg);
                }
            }
        }
        lines
    }

    /// The ends of overhead runs and the centres of columns near a point.
    fn marks_near(&self, pointer: &Pointer) -> Vec<(Pt, &'static str)> {
        let mut marks = Vec::new();
        for element in self.plan.elements().iter() {
            if self.skip.contains(&element.id) || !element.stands() {
                continue;
            }
            match &element.body {
                Body::Overhead(overhead) => match &overhead.shape {
                    OverheadShape::Run { a, b, .. } => marks.extend([(*a, "end"), (*b, "end")]),
                    OverheadShape::Outline(ring) => marks.extend(ring.iter().map(|p| (*p, "end"))),
                },
                Body::Column(column) => marks.push((column.at, "centre")),
                _ => {}
            }
        }
        marks.retain(|(p, _)| pointer.reaches(*p));
        marks
    }

    /// The nearest grid point.
    fn on_grid(&self, at: Pt) -> Pt {
        let round = |v: i32| Len::from_units(v).round_to(self.grid).units();
        let p = Pt::new(round(at.x), round(at.y));
        if p.in_bounds() { p } else { at }
    }
}

/// A snap at a point, by a word.
pub(crate) fn caught(word: &'static str, at: Pt) -> Option<Snap> {
    Some(Snap { word, at, guide: None })
}
