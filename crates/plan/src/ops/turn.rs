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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{State, sample};

    fn turned(plan: &Plan, ids: &[ElementId]) -> Plan {
        plan.with(&turn(plan, ids).expect("turns")).expect("accepted")
    }

    #[test]
    fn a_box_turns_about_its_middle_and_four_turns_give_it_back() {
        let mut plan = sample::room();
        let desk = sample::add(&mut plan, State::New, sample::desk((100, 50), Facing::NORTH));
        let next = turned(&plan, &[desk]);
        let Some(Body::Furnishing(f)) = next.get(desk).map(|e| &e.body) else { panic!("no desk") };
        // The middle was at 100, 65; it now looks west, its back 15 in to the east of the middle.
        assert_eq!((f.at, f.facing), (Pt::inches(115, 65), Facing::WEST));
        let odd = |x| match sample::desk((x, 50), Facing::NORTH) {
            Body::Furnishing(f) => Body::Furnishing(crate::element::Furnishing {
                depth: measure::Len::from_units(243_841),
                ..f
            }),
            other => other,
        };
        let odd = sample::add(&mut plan, State::New, odd(150));
        for id in [desk, odd] {
            let back = (0..4).fold(plan.clone(), |plan, _| turned(&plan, &[id]));
            assert!(back.says_the_same(&plan));
        }
    }

    #[test]
    fn several_keep_their_shape_and_doors_go_with_their_walls() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (20, 20), (80, 20));
        let other = sample::partition(&mut plan, (80, 20), (80, 60));
        let door = sample::add(&mut plan, State::New, sample::door(wall, 10, 30));
        let next = turned(&plan, &[wall, other, door]);
        let points = |id| next.get(id).expect("there").body.points();
        // About 50, 40.
        assert_eq!(points(wall), [Pt::inches(70, 10), Pt::inches(70, 70)]);
        assert_eq!(points(other), [Pt::inches(70, 70), Pt::inches(30, 70)]);
        assert_eq!(next.get(door), plan.get(door));
    }

    #[test]
    fn what_is_fixed_to_a_wall_does_not_turn_alone() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (20, 20), (80, 20));
        let door = sample::add(&mut plan, State::New, sample::door(wall, 10, 30));
        let e = turn(&plan, &[door]).expect_err("refused");
        assert_eq!(e.to_string(), "D6 can't be turned by itself; it is fixed to a wall.");
        assert_eq!(turn(&plan, &[]), Ok(Edit::Batch(vec![])));
    }
}
