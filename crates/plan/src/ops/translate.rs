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

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};

    use super::*;
    use crate::element::{Overhead, OverheadKind, OverheadShape};
    use crate::{State, sample};

    fn inches(x: i64, y: i64) -> Vec2 {
        Vec2::new(x * i64::from(Len::PER_INCH), y * i64::from(Len::PER_INCH))
    }

    fn done(plan: &Plan, edit: Result<Edit, EditError>) -> Plan {
        plan.with(&edit.expect("an edit")).expect("accepted")
    }

    fn opening(plan: &Plan, id: ElementId) -> Len {
        match &plan.get(id).expect("there").body {
            Body::Opening(o) => o.at,
            _ => panic!("no opening"),
        }
    }

    #[test]
    fn everything_with_points_moves_and_nothing_follows() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (10, 20), (80, 20));
        let other = sample::partition(&mut plan, (40, 20), (40, 80));
        let door = sample::add(&mut plan, State::New, sample::door(wall, 10, 30));
        let desk = sample::add(&mut plan, State::New, sample::desk((100, 50), Facing::NORTH));
        let ring = [(0, 0), (9, 0), (0, 9)].map(|(x, y)| Pt::inches(x, y)).to_vec();
        let soffit = Overhead {
            kind: OverheadKind::Soffit,
            shape: OverheadShape::Outline(ring),
            underside: Len::inches(80),
        };
        let soffit = sample::add(&mut plan, State::New, Body::Overhead(soffit));
        let by = inches(3, 4);
        let next = done(&plan, translate(&plan, &[wall, desk, door, soffit], by));
        for id in [wall, desk, soffit] {
            let points = |plan: &Plan| plan.get(id).expect("there").body.points();
            let moved: Vec<Pt> = points(&plan).into_iter().map(|p| p + by).collect();
            assert_eq!(points(&next), moved);
        }
        assert_eq!(next.get(other), plan.get(other));
        // The door is on a wall that moves too.
        assert_eq!(next.get(door), plan.get(door));
    }

    #[test]
    fn an_opening_alone_slides_along_its_wall() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (100, 0), (100, 120));
        let door = sample::add(&mut plan, State::New, sample::door(wall, 40, 30));
        let next = done(&plan, translate(&plan, &[door], inches(50, -7)));
        assert_eq!(opening(&next, door), Len::inches(33));
        let skew = sample::partition(&mut plan, (110, 0), (170, 80));
        let door = sample::add(&mut plan, State::New, sample::door(skew, 40, 30));
        let next = done(&plan, translate(&plan, &[door], inches(3, 4)));
        assert_eq!(opening(&next, door), Len::inches(45));
    }

    #[test]
    fn a_step_out_of_the_plan_is_refused_without_overflow() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (100, 0), (100, 120));
        let door = sample::add(&mut plan, State::New, sample::door(wall, 40, 30));
        for far in [i64::MAX, i64::MIN, 1 << 40, -(1 << 30)] {
            for id in [wall, door] {
                let edit = translate(&plan, &[id], Vec2::new(far, far));
                assert!(edit.and_then(|edit| plan.with(&edit)).is_err(), "{far}");
            }
        }
    }

    #[test]
    fn a_nudge_of_one_wall_takes_its_followers_along() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (0, 60), (240, 60));
        let follower = sample::partition(&mut plan, (50, 60), (50, 120));
        let end = |plan: &Plan| plan.get(follower).expect("there").body.points()[0];
        let next = done(&plan, nudge(&plan, &[wall], inches(0, 1)));
        assert_eq!(end(&next), Pt::inches(50, 61));
        let next = done(&plan, nudge(&plan, &[wall], inches(0, -1)));
        assert_eq!(end(&next), Pt::inches(50, 59));
        // Along itself, and together with something else, nothing follows.
        for (ids, by) in [(vec![wall], inches(1, 0)), (vec![wall, ElementId(1)], inches(0, 1))] {
            let next = done(&plan, nudge(&plan, &ids, by));
            assert_eq!(end(&next), Pt::inches(50, 60));
        }
        // The west wall of the shell, which runs south.
        let next = done(&plan, nudge(&plan, &[ElementId(4)], inches(-2, 0)));
        assert_eq!(next.get(ElementId(1)).expect("there").body.points()[0], Pt::inches(-2, 0));
    }
}
