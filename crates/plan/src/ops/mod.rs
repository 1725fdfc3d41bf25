//! Operations on a plan: each works out the [`Edit`] that does it, and changes nothing itself.
//!
//! The edit still has to be made with [`Plan::with`], which refuses it where the result would not be
//! sound, such as an opening that no longer fits its wall.

mod duplicate;
mod gaps;
mod joint;
mod move_end;
mod move_wall;
mod moving;
mod opening;
mod points;
mod state;
mod stretch;
mod translate;
mod turn;
mod wall_length;

use std::collections::BTreeSet;

use geometry::{Pt, Seg, Vec2};
use measure::Len;

use crate::element::Body;
use crate::{Edit, EditError, Element, ElementId, Plan, bounds};

pub use duplicate::duplicate;
pub use gaps::{free_place, slide_range};
pub use move_end::move_end;
pub use move_wall::{move_wall, move_wall_range};
pub use opening::{flip_hinge, flip_swing, slide_opening};
pub(crate) use points::map_points;
pub use state::set_state;
pub(crate) use translate::slide_by;
pub use translate::{nudge, translate};
pub use turn::turn;
pub use wall_length::set_wall_length;

fn element(plan: &Plan, id: ElementId) -> Result<&Element, EditError> {
    plan.get(id).ok_or(EditError::Missing { id })
}

/// The elements with these ids, in the order of their ids.
fn elements<'p>(plan: &'p Plan, ids: &[ElementId]) -> Result<Vec<&'p Element>, EditError> {
    let ids: BTreeSet<ElementId> = ids.iter().copied().collect();
    ids.into_iter().map(|id| element(plan, id)).collect()
}

fn wall(plan: &Plan, id: ElementId) -> Result<(&Element, Seg), EditError> {
    let element = element(plan, id)?;
    let needed = "a foundation wall or a partition";
    let line = element.body.wall_line();
    let line = line.ok_or_else(|| EditError::WrongKind { who: element.name(), needed })?;
    Ok((element, line))
}

/// A point moved by `by`; refused where it would leave the range of coordinates.
pub(crate) fn moved(e: &Element, p: Pt, by: Vec2) -> Result<Pt, EditError> {
    let coordinate = |c: i32, by: i64| {
        let sum = i32::try_from(i64::from(c).checked_add(by)?).ok()?;
        bounds::COORDINATE.holds(Len::from_units(sum)).then_some(sum)
    };
    match (coordinate(p.x, by.x), coordinate(p.y, by.y)) {
        (Some(x), Some(y)) => Ok(Pt::new(x, y)),
        _ => Err(EditError::TooFarOut { who: e.name() }),
    }
}

/// The edit that replaces the body of an element.
fn replace(e: &Element, body: Body) -> Edit {
    Edit::Replace(Element { body, ..e.clone() })
}

/// The scalar part of `v` along `dir`, rounded to the grid (exact where `dir` is axis-parallel).
fn along(v: Vec2, dir: Vec2) -> i64 {
    let dot = i128::from(v.x) * i128::from(dir.x) + i128::from(v.y) * i128::from(dir.y);
    if dir.x == 0 || dir.y == 0 {
        let unit = i128::from(dir.x.abs().max(dir.y.abs()).max(1));
        return i64::try_from(dot / unit).unwrap_or(i64::MAX);
    }
    (dot as f64 / dir.norm()).round() as i64
}

/// `at` moved by a count of units; `None` where that leaves the range of a length.
fn shifted(at: Len, by: i64) -> Option<Len> {
    i32::try_from(i64::from(at.units()).checked_add(by)?).ok().map(Len::from_units)
}
