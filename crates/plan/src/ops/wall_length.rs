//! Giving a wall a length.

use geometry::Seg;
use measure::Len;

use crate::element::End;
use crate::{Edit, EditError, ElementId, Plan, bounds};

use super::joint::walls;
use super::moving::Moving;
use super::{along, moved, stretch, wall};

/// Gives a wall the length `length` and keeps the end `keep` where it is (exact for axis-parallel
/// walls; rounded once to the grid for others).
///
/// Where the other end is a corner shared with a wall of the same kind, that wall moves along its
/// normal with all that follows it, so that the corner stays closed. Otherwise the end moves alone.
/// Openings and furring keep their distance from the end that is kept.
pub fn set_wall_length(
    plan: &Plan,
    id: ElementId,
    length: Len,
    keep: End,
) -> Result<Edit, EditError> {
    let (element, line) = wall(plan, id)?;
    if !bounds::WALL_LENGTH.holds(length) {
        let (who, bound) = (element.name(), bounds::WALL_LENGTH);
        return Err(EditError::OutOfRange { who, bound, value: length });
    }
    let new_line = match keep {
        End::Start => Seg::new(line.a, moved(element, line.a, line.dir().with_len(length))?),
        End::Finish => Seg::new(moved(element, line.b, line.dir().with_len(-length))?, line.b),
    };
    let step = match keep {
        End::Start => new_line.b - line.b,
        End::Finish => new_line.a - line.a,
    };

    let all = walls(plan);
    let me = all.iter().find(|w| w.element.id == id);
    let neighbour = me.and_then(|me| {
        let corner = me.end(keep.other());
        all.iter().find(|w| {
            w.element.id != id
                && w.shell == me.shell
                && w.element.stands() == me.element.stands()
                && !w.runs_with(me)
                && [w.line.a, w.line.b].contains(&corner)
        })
    });
    if let Some(neighbour) = neighbour {
        let by = along(step, neighbour.line.dir().left());
        let by = i32::try_from(by).map_err(|_| EditError::TooFarOut { who: element.name() })?;
        return Moving::of(plan, neighbour.element.id)?.edit(Len::from_units(by));
    }
    let shift = match keep {
        End::Start => 0,
        End::Finish => stretch::by_length(line, new_line),
    };
    let fixed = stretch::fixed_to(plan, element);
    Ok(Edit::Batch(stretch::edits(element, &fixed, line, new_line, shift)))
}
