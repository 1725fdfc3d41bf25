//! Moving one end of a wall to a point.

use geometry::{Pt, Seg, Vec2};

use crate::element::{Body, End};
use crate::{Edit, EditError, ElementId, Plan};

use super::joint::walls_at;
use super::{moved, stretch, wall};

/// Moves an end of a wall to the point `to`; the wall turns about its other end. Walls of the same kind
/// that share exactly that end point come along, so that a corner stays closed. Openings and furring
/// keep their distance from the end that stays.
pub fn move_end(plan: &Plan, id: ElementId, end: End, to: Pt) -> Result<Edit, EditError> {
    let (element, line) = wall(plan, id)?;
    let to = moved(element, to, Vec2::default())?;
    let corner = match end {
        End::Start => line.a,
        End::Finish => line.b,
    };
    let shell = matches!(element.body, Body::Shell(_));
    let mut edits = Vec::new();
    for w in walls_at(plan, corner)
        .iter()
        .filter(|w| w.shell == shell && w.element.stands() == element.stands())
    {
        let line = Seg::new(
            if w.line.a == corner { to } else { w.line.a },
            if w.line.b == corner { to } else { w.line.b },
        );
        if line == w.line {
            continue;
        }
        let shift = if line.a == w.line.a { 0 } else { stretch::by_length(w.line, line) };
        let fixed = stretch::fixed_to(plan, w.element);
        edits.extend(stretch::edits(w.element, &fixed, w.line, line, shift));
    }
    Ok(Edit::Batch(edits))
}

#[cfg(test)]
mod tests {
    use measure::Len;

    use super::*;
    use crate::{State, sample};

    #[test]
    fn a_shared_corner_moves_whole_and_openings_keep_to_the_other_end() {
        let mut plan = sample::room();
        let window = sample::add(&mut plan, State::Existing, sample::window(ElementId(4), 60, 32));
        let to = Pt::inches(0, 130);
        let edit = move_end(&plan, ElementId(3), End::Finish, to).expect("moves");
        let next = plan.with(&edit).expect("accepted");
        let line = |id| next.get(id).and_then(|e| e.body.wall_line()).expect("a wall");
        assert_eq!(line(ElementId(3)), Seg::new(Pt::inches(240, 120), to));
        assert_eq!(line(ElementId(4)), Seg::new(to, Pt::inches(0, 0)));
        let Some(Body::Opening(o)) = next.get(window).map(|e| &e.body) else { panic!("no window") };
        assert_eq!(o.at, Len::inches(70));
    }

    #[test]
    fn partitions_that_end_on_a_shell_corner_stay() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (0, 0), (50, 50));
        let edit = move_end(&plan, ElementId(1), End::Start, Pt::inches(-5, -5)).expect("moves");
        let next = plan.with(&edit).expect("accepted");
        assert_eq!(next.get(wall), plan.get(wall));
        let far = Pt::new(i32::MIN, 0);
        let e = move_end(&plan, ElementId(1), End::Start, far).expect_err("too far");
        assert!(matches!(e, EditError::TooFarOut { .. }));
    }
}
