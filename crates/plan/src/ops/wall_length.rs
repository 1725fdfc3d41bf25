//! Giving a wall a length.

use geometry::Seg;
use measure::Len;

use crate::element::End;
use crate::{Edit, EditError, ElementId, Plan, bounds};

use super::joint::{Wall, walls_at};
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

    let neighbour = Wall::of(plan, element).and_then(|me| {
        let corner = me.end(keep.other());
        walls_at(plan, corner).into_iter().find(|w| {
            w.element.id != id
                && w.shell == me.shell
                && w.element.stands() == me.element.stands()
                && !w.runs_with(&me)
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

#[cfg(test)]
mod tests {
    use geometry::Pt;

    use super::*;
    use crate::element::Body;
    use crate::{State, sample};

    fn line(plan: &Plan, id: ElementId) -> Seg {
        plan.get(id).and_then(|e| e.body.wall_line()).expect("a wall")
    }

    fn after(plan: &Plan, id: ElementId, length: Len, keep: End) -> Plan {
        let edit = set_wall_length(plan, id, length, keep).expect("a length");
        let next = plan.with(&edit).expect("accepted");
        assert_eq!(next.validate(), vec![]);
        next
    }

    #[test]
    fn a_free_end_moves_alone_and_openings_keep_to_the_kept_end() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (60, 0), (60, 80));
        let door = sample::add(&mut plan, State::New, sample::door(wall, 40, 30));
        let at = |plan: &Plan| match &plan.get(door).expect("there").body {
            Body::Opening(o) => o.at,
            _ => panic!("no opening"),
        };
        let next = after(&plan, wall, Len::inches(100), End::Start);
        assert_eq!(line(&next, wall), Seg::new(Pt::inches(60, 0), Pt::inches(60, 100)));
        assert_eq!(at(&next), Len::inches(40));
        let next = after(&plan, wall, Len::inches(75), End::Finish);
        assert_eq!(line(&next, wall), Seg::new(Pt::inches(60, 5), Pt::inches(60, 80)));
        assert_eq!(at(&next), Len::inches(35));
    }

    #[test]
    fn a_corner_of_the_shell_takes_its_neighbour_along() {
        let plan = sample::room();
        let next = after(&plan, ElementId(1), Len::inches(250), End::Start);
        assert_eq!(line(&next, ElementId(1)).b, Pt::inches(250, 0));
        assert_eq!(line(&next, ElementId(2)), Seg::new(Pt::inches(250, 0), Pt::inches(250, 120)));
        assert_eq!(line(&next, ElementId(3)).a, Pt::inches(250, 120));
        let next = after(&plan, ElementId(1), Len::inches(250), End::Finish);
        assert_eq!(line(&next, ElementId(1)).a, Pt::inches(-10, 0));
        assert_eq!(line(&next, ElementId(4)), Seg::new(Pt::inches(-10, 120), Pt::inches(-10, 0)));
    }

    #[test]
    fn the_typed_length_comes_true_within_rounding_on_skew_walls() {
        let mut plan = Plan::default();
        let ids = sample::shell(&mut plan, &[(0, 0), (120, 10), (160, 80), (0, 80)]);
        for (id, keep) in ids.iter().flat_map(|&id| [(id, End::Start), (id, End::Finish)]) {
            let want = Len::inches(101);
            let next = after(&plan, id, want, keep);
            let off = (line(&next, id).len() - want).abs();
            assert!(off <= Len::from_units(3), "{id:?} {off:?}");
        }
    }

    #[test]
    fn a_length_out_of_range_is_refused() {
        let plan = sample::room();
        for length in [Len::ZERO, Len::inches(-4), Len::from_units(i32::MAX)] {
            let e = set_wall_length(&plan, ElementId(1), length, End::Start).expect_err("refused");
            assert!(matches!(e, EditError::OutOfRange { .. }), "{e}");
        }
    }
}
