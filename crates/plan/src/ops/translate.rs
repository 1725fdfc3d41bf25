//! Moving elements by a vector.

use geometry::Vec2;
use measure::Len;

use crate::element::{Body, Opening};
use crate::{Edit, EditError, Element, ElementId, Plan};

use super::points::map_points;
use super::{along, element, elements, move_wall, moved, replace, shifted};

/// Moves elements rigidly by `by`; nothing else follows. What is fixed to a wall goes with its wall; an
/// opening whose wall is not among the elements slides along it by the part of `by` in its direction.
pub fn translate(plan: &Plan, ids: &[ElementId], by: Vec2) -> Result<Edit, EditError> {
    let chosen = elements(plan, ids)?;
    let mut edits = Vec::new();
    for &e in &chosen {
        let body = match &e.body {
            Body::Opening(o) if !chosen.iter().any(|c| c.id == o.host) => {
                Body::Opening(Opening { at: slide_by(plan, e, o, by)?, ..o.clone() })
            }
            body => map_points(body, |p| moved(e, p, by))?,
        };
        if body != e.body {
            edits.push(replace(e, body));
        }
    }
    Ok(Edit::Batch(edits))
}

/// Moves elements by a small step, as an arrow key does. One axis-parallel wall that is nudged along its
/// normal moves as by [`move_wall`], with all that follows; anything else as by [`translate`].
pub fn nudge(plan: &Plan, ids: &[ElementId], by: Vec2) -> Result<Edit, EditError> {
    let chosen = elements(plan, ids)?;
    let mut walls = chosen.iter().filter_map(|e| Some((e, e.body.wall_line()?)));
    if let (Some((wall, line)), None) = (walls.next(), walls.next()) {
        let dir = line.dir();
        let alone = chosen.iter().all(|e| e.id == wall.id || e.body.host() == Some(wall.id));
        let square = (dir.y == 0 && by.x == 0) || (dir.x == 0 && by.y == 0);
        if alone && square {
            let by = i32::try_from(along(by, dir.left()));
            let by = by.map_err(|_| EditError::TooFarOut { who: wall.name() })?;
            return move_wall(plan, wall.id, Len::from_units(by));
        }
    }
    translate(plan, ids, by)
}

/// Where an opening comes to lie that slides along its wall by the part of `by` in its direction.
pub(crate) fn slide_by(plan: &Plan, e: &Element, o: &Opening, by: Vec2) -> Result<Len, EditError> {
    let line = element(plan, o.host)?.body.wall_line();
    let by = line.map_or(0, |line| along(by, line.dir()));
    shifted(o.at, by).ok_or_else(|| EditError::TooFarOut { who: e.name() })
}
