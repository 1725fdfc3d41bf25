//! Moving a wall along its normal.

use measure::Len;

use crate::{Edit, EditError, ElementId, Plan};

use super::moving::Moving;

/// Moves a wall along its left normal by `by` (negative: to the right, looking from `a` to `b`). Exact
/// for axis-parallel walls; rounded once to the grid for others.
///
/// - Walls that continue it in line from a shared end point move with it.
/// - Walls that end on it (on its line, a face, or in between) grow or shrink along their own line, so
///   that they stay straight and go on ending on it. Partitions give way to any wall, foundation walls
///   to foundation walls.
/// - Its own ends slide along the walls that it ends on, where those are not square to it.
/// - Openings and furring of all these keep their place; service points mounted on a face go along.
///
/// Refused with the follower's name where one would turn inside out or lose an opening.
pub fn move_wall(plan: &Plan, id: ElementId, by: Len) -> Result<Edit, EditError> {
    Moving::of(plan, id)?.edit(by)
}

/// How far [`move_wall`] may go before a follower turns inside out or loses an opening: the least
/// (zero or negative) and the most. Both zero for what is not a wall.
pub fn move_wall_range(plan: &Plan, id: ElementId) -> (Len, Len) {
    Moving::of(plan, id).map_or((Len::ZERO, Len::ZERO), |moving| moving.range())
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt, Seg};

    use super::*;
    use crate::element::{Body, Furring, Justify, Layer, Material, Partition, ServiceKind};
    use crate::{EditError, State, sample};

    fn line(plan: &Plan, id: ElementId) -> Seg {
        plan.get(id).and_then(|e| e.body.wall_line()).expect("a wall")
    }

    fn seg(a: (i32, i32), b: (i32, i32)) -> Seg {
        Seg::new(Pt::inches(a.0, a.1), Pt::inches(b.0, b.1))
    }

    fn at(plan: &Plan, id: ElementId) -> Len {
        match &plan.get(id).expect("there").body {
            Body::Opening(o) => o.at,
            _ => panic!("no opening"),
        }
    }

    fn after(plan: &Plan, id: ElementId, by: Len) -> Plan {
        let edit = move_wall(plan, id, by).expect("moves");
        let next = plan.with(&edit).expect("accepted");
        assert_eq!(next.validate(), vec![]);
        next
    }

    #[test]
    fn partitions_that_end_on_the_line_or_a_face_follow() {
        let mut plan = sample::room();
        // Runs east, so its left is north; its faces lie at 58 and 62 1/4.
        let wall = sample::partition(&mut plan, (0, 60), (240, 60));
        let on_line = sample::partition(&mut plan, (50, 60), (50, 120));
        let face = Len::inches(60) + Len::sixty_fourths(144);
        let (a, b) = (Pt::inches(90, 120), Pt::at(Len::inches(90), face));
        let on_face = Partition::two_by_four(a, b);
        let on_face = sample::add(&mut plan, State::New, Body::Partition(on_face));
        let short_of = sample::partition(&mut plan, (130, 70), (130, 120));
        let across = sample::partition(&mut plan, (170, 10), (170, 110));
        let next = after(&plan, wall, Len::inches(6));
        assert_eq!(line(&next, wall), seg((0, 66), (240, 66)));
        assert_eq!(line(&next, on_line), seg((50, 66), (50, 120)));
        let b = Pt::at(Len::inches(90), face + Len::inches(6));
        assert_eq!(line(&next, on_face), Seg::new(a, b));
        assert_eq!(line(&next, short_of), line(&plan, short_of));
        assert_eq!(line(&next, across), line(&plan, across));
    }

    #[test]
    fn openings_on_a_follower_stay_where_they_are() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (0, 60), (240, 60));
        let by_start = sample::partition(&mut plan, (50, 60), (50, 120));
        let by_finish = sample::partition(&mut plan, (90, 120), (90, 60));
        let first = sample::add(&mut plan, State::New, sample::door(by_start, 20, 32));
        let second = sample::add(&mut plan, State::New, sample::door(by_finish, 8, 32));
        let own = sample::add(&mut plan, State::New, sample::door(wall, 100, 32));
        let next = after(&plan, wall, Len::inches(-5));
        assert_eq!(at(&next, first), Len::inches(25));
        assert_eq!(at(&next, second), Len::inches(8));
        assert_eq!(at(&next, own), Len::inches(100));
    }

    #[test]
    fn a_closed_shell_stays_closed() {
        let mut plan = sample::room();
        let window = sample::add(&mut plan, State::Existing, sample::window(ElementId(1), 20, 32));
        // The west wall runs south, so its left is east.
        let next = after(&plan, ElementId(4), Len::inches(7));
        assert_eq!(line(&next, ElementId(4)), seg((7, 120), (7, 0)));
        assert_eq!(line(&next, ElementId(1)), seg((7, 0), (240, 0)));
        assert_eq!(line(&next, ElementId(3)), seg((240, 120), (7, 120)));
        assert_eq!(line(&next, ElementId(2)), line(&plan, ElementId(2)));
        assert_eq!(at(&next, window), Len::inches(13));
    }

    #[test]
    fn a_skew_neighbour_stretches_along_itself_and_the_corner_is_shared() {
        let mut plan = Plan::default();
        let ids = sample::shell(&mut plan, &[(0, 0), (120, 0), (160, 80), (0, 80)]);
        // The south wall moves north by 10 in: the corner slides up the slope 2 in to 1 in.
        let next = after(&plan, ids[0], Len::inches(10));
        assert_eq!(line(&next, ids[0]), seg((0, 10), (125, 10)));
        assert_eq!(line(&next, ids[1]), seg((125, 10), (160, 80)));
        assert_eq!(line(&next, ids[3]), seg((0, 80), (0, 10)));
    }

    #[test]
    fn a_skew_wall_keeps_its_direction_and_its_ends_slide_along_the_walls_it_ends_on() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (60, 0), (120, 120));
        let follower = sample::partition(&mut plan, (90, 60), (240, 60));
        let by = Len::inches(10);
        let next = after(&plan, wall, by);
        let (before, now) = (line(&plan, wall), line(&next, wall));
        // To the left is west; 10 in along the normal are 10 * sqrt(5) / 2 in = 11.18 in along the wall.
        assert_eq!((now.a.y, now.b.y), (0, Pt::inches(0, 120).y));
        let west = f64::from(before.a.x - now.a.x) / f64::from(Len::PER_INCH);
        assert!((west - 125f64.sqrt()).abs() < 1e-3, "{west}");
        assert!((now.dir().cross(before.dir()) as f64 / before.dir().norm()).abs() < 2.0);
        let met = line(&next, follower);
        assert_eq!((met.a.y, met.b), (Pt::inches(0, 60).y, Pt::inches(240, 60)));
        let off = now.dir().cross(met.a - now.a) as f64 / now.dir().norm();
        assert!(off.abs() < 2.0, "{off} units off the line");
    }

    #[test]
    fn walls_in_line_move_as_one() {
        let mut plan = Plan::default();
        let corners = [(0, 0), (100, 0), (200, 0), (200, 90), (0, 90)];
        let ids = sample::shell(&mut plan, &corners);
        let next = after(&plan, ids[1], Len::inches(12));
        assert_eq!(line(&next, ids[0]), seg((0, 12), (100, 12)));
        assert_eq!(line(&next, ids[1]), seg((100, 12), (200, 12)));
        assert_eq!(line(&next, ids[2]), seg((200, 12), (200, 90)));
        assert_eq!(line(&next, ids[4]), seg((0, 90), (0, 12)));
    }

    #[test]
    fn a_corner_of_partitions_stays_closed() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (40, 40), (100, 40));
        let other = sample::partition(&mut plan, (100, 40), (100, 90));
        let next = after(&plan, wall, Len::inches(3));
        assert_eq!(line(&next, wall), seg((40, 43), (100, 43)));
        assert_eq!(line(&next, other), seg((100, 43), (100, 90)));
        // A corner drawn by its faces: the end lies past the wall's end by less than the thickness.
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (40, 40), (98, 40));
        let other = sample::partition(&mut plan, (100, 38), (100, 90));
        let next = after(&plan, wall, Len::inches(3));
        assert_eq!(line(&next, other), seg((100, 41), (100, 90)));
    }

    #[test]
    fn partitions_on_the_furred_face_of_a_shell_wall_follow_it() {
        let mut plan = sample::room();
        let furring = Furring {
            host: ElementId(1),
            from: Len::ZERO,
            to: Len::inches(240),
            layers: vec![Layer::new(Material::Foam, Len::inches(4))],
            spacing: Len::inches(16),
        };
        sample::add(&mut plan, State::New, Body::Furring(furring));
        let wall = sample::partition(&mut plan, (50, 4), (50, 120));
        let next = after(&plan, ElementId(1), Len::inches(2));
        assert_eq!(line(&next, wall), seg((50, 6), (50, 120)));
    }

    #[test]
    fn furring_keeps_reaching_the_ends_of_its_wall() {
        let mut plan = sample::room();
        let furring = |from, to| {
            Body::Furring(Furring {
                host: ElementId(1),
                from: Len::inches(from),
                to: Len::inches(to),
                layers: vec![Layer::new(Material::Foam, Len::inches(4))],
                spacing: Len::inches(16),
            })
        };
        let whole = sample::add(&mut plan, State::New, furring(0, 240));
        let part = sample::add(&mut plan, State::New, furring(60, 100));
        let reach = |plan: &Plan, id| match &plan.get(id).expect("there").body {
            Body::Furring(f) => (f.from, f.to),
            _ => panic!("no furring"),
        };
        // The west wall moves out by a foot, to its right.
        let next = after(&plan, ElementId(4), Len::inches(-12));
        assert_eq!(reach(&next, whole), (Len::ZERO, Len::inches(252)));
        assert_eq!(reach(&next, part), (Len::inches(72), Len::inches(112)));
    }

    #[test]
    fn what_hangs_on_the_wall_goes_along_and_what_stands_before_it_does_not() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (0, 60), (240, 60));
        let place = |y| Pt::at(Len::inches(30), y);
        let face = Len::inches(60) + Len::sixty_fourths(144);
        let hang = |kind, y| {
            let s = crate::element::ServicePoint::usual(kind, place(y), Facing::NORTH);
            Body::Service(s)
        };
        let panel = sample::add(&mut plan, State::Existing, hang(ServiceKind::Panel, face));
        let furnace = sample::add(&mut plan, State::Existing, hang(ServiceKind::Furnace, face));
        let off = sample::add(
            &mut plan,
            State::Existing,
            hang(ServiceKind::Disconnect, face + Len::sixty_fourths(1)),
        );
        let shelf = sample::add(&mut plan, State::New, sample::desk((200, 62), Facing::NORTH));
        let next = after(&plan, wall, Len::inches(5));
        let point = |plan: &Plan, id| plan.get(id).expect("there").body.points()[0];
        assert_eq!(point(&next, panel), place(face + Len::inches(5)));
        for id in [furnace, off, shelf] {
            assert_eq!(point(&next, id), point(&plan, id));
        }
    }

    #[test]
    fn a_wall_to_be_torn_out_does_not_follow_new_work() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (0, 60), (240, 60));
        let old = Body::Partition(Partition::two_by_four(Pt::inches(50, 60), Pt::inches(50, 120)));
        let old = sample::add(&mut plan, State::Removed, old);
        let next = after(&plan, wall, Len::inches(5));
        assert_eq!(line(&next, old), line(&plan, old));
    }

    #[test]
    fn a_wall_drawn_by_its_face_follows_by_its_line() {
        let mut plan = sample::room();
        let mut wall = Partition::two_by_four(Pt::inches(0, 60), Pt::inches(240, 60));
        wall.justify = Justify::LeftFace;
        let wall = sample::add(&mut plan, State::New, Body::Partition(wall));
        // Its body lies south of the line, from 55 1/2 in to 60 in.
        let on_it = sample::partition(&mut plan, (50, 0), (50, 58));
        let beyond = sample::partition(&mut plan, (90, 61), (90, 120));
        let next = after(&plan, wall, Len::inches(4));
        assert_eq!(line(&next, on_it), seg((50, 0), (50, 62)));
        assert_eq!(line(&next, beyond), line(&plan, beyond));
    }

    #[test]
    fn a_move_that_turns_a_follower_inside_out_is_refused_by_name() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (0, 60), (240, 60));
        sample::partition(&mut plan, (50, 60), (50, 100));
        let least = crate::bounds::WALL_LENGTH.least;
        let (low, high) = move_wall_range(&plan, wall);
        assert_eq!(high, Len::inches(40) - least);
        assert!(low < Len::feet_inches(-900, 0));
        after(&plan, wall, high);
        let e = move_wall(&plan, wall, high + Len::UNIT).expect_err("too far");
        assert_eq!(
            e,
            EditError::FollowerInverts {
                wall: "W5".into(),
                follower: "W6".into(),
                least: low,
                most: high
            }
        );
        assert!(e.to_string().starts_with("W5 can't move so far: W6 "), "{e}");
    }

    #[test]
    fn the_range_keeps_openings_within_their_walls() {
        let mut plan = sample::room();
        let wall = sample::partition(&mut plan, (0, 60), (240, 60));
        let follower = sample::partition(&mut plan, (50, 60), (50, 120));
        sample::add(&mut plan, State::New, sample::door(follower, 12, 32));
        let (_, high) = move_wall_range(&plan, wall);
        assert_eq!(high, Len::inches(12));
        after(&plan, wall, high);
        assert!(move_wall(&plan, wall, high + Len::UNIT).is_err());
        assert_eq!(move_wall_range(&plan, ElementId(7)), (Len::ZERO, Len::ZERO));
    }

    #[test]
    fn what_is_no_wall_is_refused() {
        let mut plan = sample::room();
        let desk = sample::add(&mut plan, State::New, sample::desk((50, 50), Facing::NORTH));
        let e = move_wall(&plan, desk, Len::UNIT).expect_err("no wall");
        assert_eq!(e.to_string(), "B5 is not a foundation wall or a partition.");
        assert!(matches!(
            move_wall(&plan, ElementId(77), Len::UNIT),
            Err(EditError::Missing { .. })
        ));
    }

    proptest::proptest! {
        /// There and back is where it was, for walls on the grid's axes.
        #[test]
        fn moving_back_restores_the_plan(by in -300_000..300_000i32, pick in 0..6usize) {
            let mut plan = sample::room();
            let wall = sample::partition(&mut plan, (100, 0), (100, 120));
            sample::partition(&mut plan, (100, 50), (240, 50));
            sample::add(&mut plan, State::New, sample::door(wall, 70, 32));
            let ids: Vec<ElementId> = plan
                .elements()
                .iter()
                .filter(|e| e.body.wall_line().is_some())
                .map(|e| e.id)
                .collect();
            let (id, by) = (ids[pick], Len::from_units(by));
            let (low, high) = move_wall_range(&plan, id);
            let there = move_wall(&plan, id, by);
            proptest::prop_assert_eq!(there.is_ok(), low <= by && by <= high);
            if let Ok(edit) = there {
                let moved = plan.with(&edit).expect("accepted");
                let back = move_wall(&moved, id, -by).expect("moves back");
                proptest::prop_assert!(moved.with(&back).expect("accepted").says_the_same(&plan));
            }
        }
    }
}
