//! Turning elements by a quarter.

use geometry::{Facing, Placed, Pt, Vec2};

use crate::element::Body;
use crate::{Edit, EditError, Element, ElementId, Plan};

use super::points::map_points;
use super::{elements, moved, replace};

/// Turns elements a quarter counter-clockwise: one alone about its own middle, several about the middle
/// of the box around them. What is fixed to a wall turns with its wall; refused for such a thing alone.
/// Shapes are kept exactly; the middle is rounded to the grid.
pub fn turn(plan: &Plan, ids: &[ElementId]) -> Result<Edit, EditError> {
    let chosen = elements(plan, ids)?;
    let free: Vec<&Element> = chosen.iter().copied().filter(|e| e.body.host().is_none()).collect();
    if let ([], Some(fixed)) = (&free[..], chosen.first()) {
        return Err(EditError::FixedToWall { who: fixed.name() });
    }
    if let [alone] = &free[..]
        && let Some(placed) = placed(&alone.body)
    {
        return Ok(Edit::Batch(vec![replace(alone, turned_in_place(alone, placed)?)]));
    }
    let Some((low, high)) = around(&free) else { return Ok(Edit::Batch(Vec::new())) };
    let edits = free.into_iter().map(|e| {
        let body = map_points(&e.body, |p| {
            // Twice the way from the point to the middle.
            let to = (low - p) + (high - p);
            moved(e, p, Vec2::new((to.x + to.y) >> 1, (to.y - to.x) >> 1))
        })?;
        Ok(replace(e, faced_left(body)))
    });
    Ok(Edit::Batch(edits.collect::<Result<_, EditError>>()?))
}

/// Turns a box about its middle. Halves are cut towards zero, so that four turns give the box back.
fn turned_in_place(e: &Element, placed: Placed) -> Result<Body, EditError> {
    let to = placed.facing.step(placed.depth);
    let by = Vec2::new((to.x + to.y) / 2, (to.y - to.x) / 2);
    Ok(faced_left(map_points(&e.body, |p| moved(e, p, by))?))
}

/// The box of an element that is placed by the middle of its back edge.
fn placed(body: &Body) -> Option<Placed> {
    match body {
        Body::Stair(s) => Some(s.placed()),
        Body::Service(s) => Some(s.placed()),
        Body::Furnishing(f) => Some(f.placed()),
        _ => None,
    }
}

fn faced_left(mut body: Body) -> Body {
    let left = |facing: &mut Facing| *facing = facing.left();
    match &mut body {
        Body::Column(c) => left(&mut c.facing),
        Body::Stair(s) => left(&mut s.up),
        Body::Service(s) => left(&mut s.facing),
        Body::Furnishing(f) => left(&mut f.facing),
        _ => {}
    }
    body
}

/// The lower left and upper right corner of the box around all points.
fn around(elements: &[&Element]) -> Option<(Pt, Pt)> {
    let points: Vec<Pt> = elements.iter().flat_map(|e| e.body.points()).collect();
    let low = Pt::new(points.iter().map(|p| p.x).min()?, points.iter().map(|p| p.y).min()?);
    let high = Pt::new(points.iter().map(|p| p.x).max()?, points.iter().map(|p| p.y).max()?);
    Some((low, high))
}
