//! Getting a thing down the stairs: a box carried from where people come in to each room.
//!
//! The box stands upright on one of its sides while it is carried, slides and turns, and passes under nothing that hangs
//! lower than its top. Doors stand open 90°. The flight of the stair itself, and turning at its head, are not decided:
//! nothing above the basement is drawn.

use geometry::carry::{Carry, carry as slide};
use geometry::{Bounds, Pt, Ring, Shape};
use measure::Len;
use plan::ElementId;

use crate::ways::{self, STEP};
use crate::{Facts, RoomIndex};

/// A place to stand at an arrival is a square of this side at least (common practice, no source).
const LANDING: Len = Len::inches(36);

/// How a box is held: its footprint and its height.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pose {
    pub length: Len,
    pub width: Len,
    pub height: Len,
}

/// Whether a box gets to a room.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// Held so.
    Fits(Pose),
    /// In no pose; where it comes nearest.
    Sticks(Pt),
    /// The method can't tell; how far it certainly comes.
    Verify(Pt),
    /// It does not stand at any arrival in any pose.
    NoStart,
}

/// A room and whether a box gets there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Carried {
    pub room: RoomIndex,
    pub verdict: Verdict,
    /// The opening nearest to where it sticks.
    pub near: Option<ElementId>,
}

/// Carries a box of three sizes from the best of the arrivals to every room.
pub fn carry(facts: &Facts, size: [Len; 3]) -> Vec<Carried> {
    let arrivals = ways::ways(facts).arrivals;
    let poses = poses(size);
    let scenes: Vec<(Pose, Vec<Ring>)> = poses
        .into_iter()
        .map(|pose| (pose, ways::obstacles_up_to(facts, STEP, pose.height)))
        .collect();
    let rooms = facts.rooms.iter();
    let one = |room: &crate::Room| {
        let mut best = Verdict::NoStart;
        for (pose, pieces) in &scenes {
            let starts: Vec<Shape> =
                arrivals.iter().map(|a| landing(facts, a.at, pose.length)).collect();
            let frame = frame(facts, pieces);
            let size = (pose.length, pose.width);
            let found = match slide(pieces, frame, size, &starts, &room.shape) {
                Carry::Fits => Verdict::Fits(*pose),
                Carry::Unsure(at) => Verdict::Verify(at),
                Carry::Sticks(at) => Verdict::Sticks(at),
                Carry::NoStart => Verdict::NoStart,
            };
            if rank(found) < rank(best) {
                best = found;
            }
            if matches!(best, Verdict::Fits(_)) {
                break;
            }
        }
        let near = match best {
            Verdict::Sticks(at) | Verdict::Verify(at) => nearest_opening(facts, at),
            Verdict::Fits(_) | Verdict::NoStart => None,
        };
        Carried { room: room.index, verdict: best, near }
    };
    rooms.map(one).collect()
}

fn rank(verdict: Verdict) -> u8 {
    match verdict {
        Verdict::Fits(_) => 0,
        Verdict::Verify(_) => 1,
        Verdict::Sticks(_) => 2,
        Verdict::NoStart => 3,
    }
}

/// Each side upright once, the longest first: that has the smallest footprint.
fn poses(size: [Len; 3]) -> Vec<Pose> {
    let [mut a, mut b, mut c] = size;
    let order = |x: &mut Len, y: &mut Len| {
        if *x < *y {
            std::mem::swap(x, y);
        }
    };
    order(&mut a, &mut b);
    order(&mut b, &mut c);
    order(&mut a, &mut b);
    let mut poses = vec![
        Pose { length: b, width: c, height: a },
        Pose { length: a, width: c, height: b },
        Pose { length: a, width: b, height: c },
    ];
    poses.dedup();
    poses
}

/// The floor at an arrival on which the middle of the box may begin: a square round it, within its room where it has one.
fn landing(facts: &Facts, at: Pt, length: Len) -> Shape {
    let half = LANDING.max(length) / 2;
    let square = Bounds::of([at]).grow(half).ring();
    let Some(room) = facts.room_at(at) else { return Shape::solid(square) };
    let within = geometry::overlay::shape_intersect(
        std::slice::from_ref(&facts.room(room).shape),
        std::slice::from_ref(&square),
    );
    let holds = |shape: &Shape| shape.contains(at);
    within.iter().find(|s| holds(s)).or(within.first()).cloned().unwrap_or(Shape::solid(square))
}

/// A box round everything, with room to walk round the house.
fn frame(facts: &Facts, pieces: &[Ring]) -> Bounds {
    let all = pieces.iter().flatten().copied();
    let rooms = facts.rooms.iter().flat_map(|room| room.shape.outer.iter().copied());
    Bounds::of(all.chain(rooms)).grow(Len::feet_inches(12, 0))
}

fn nearest_opening(facts: &Facts, at: Pt) -> Option<ElementId> {
    let doors = facts.openings.iter().filter(|o| facts.is_door(o.id));
    let far = |o: &&crate::OpeningFacts| (o.line.a.midway(o.line.b) - at).norm2();
    doors.min_by_key(far).map(|o| o.id)
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Body;
    use plan::element::{Door, DoorOperation, End, Opening, OpeningKind, RoomUse, Side, Stair};

    use super::*;
    use crate::derive;
    use crate::testing::Sketch;

    fn inch(n: i32) -> Len {
        Len::inches(n)
    }

    #[test]
    fn poses_are_the_three_sides_up_once_each() {
        let heights: Vec<Len> =
            poses([inch(34), inch(84), inch(36)]).iter().map(|p| p.height).collect();
        assert_eq!(heights, [inch(84), inch(36), inch(34)]);
        assert_eq!(poses([inch(20); 3]).len(), 1);
    }

    /// Two rooms of 10 x 10 ft with an opening of this clear width, people coming in to the western one.
    fn two_rooms(width: i32) -> Facts {
        let mut s = Sketch::new();
        s.rectangle(240, 120);
        let host = s.partition((120, 0), (120, 120));
        let door = Door {
            operation: DoorOperation::Cased,
            leaf_width: inch(width),
            leaf_height: inch(80),
            hinge: End::Start,
            swing: Side::Left,
        };
        s.add(Body::Opening(Opening { host, at: inch(40), kind: OpeningKind::Door(door) }));
        // A stair that comes down from the south.
        s.add(Body::Stair(Stair {
            foot: Pt::inches(60, 0),
            up: Facing::SOUTH,
            width: inch(36),
            risers: 13,
            rise: inch(7),
            run: inch(10),
            headroom: inch(80),
        }));
        s.tag(60, 60, RoomUse::Unfinished);
        s.tag(180, 60, RoomUse::Den);
        derive(&s.shared())
    }

    fn verdict(facts: &Facts, size: [i32; 3]) -> Verdict {
        let east = facts.rooms.iter().find(|r| r.room_use == RoomUse::Den).expect("a room").index;
        let all = carry(facts, size.map(inch));
        all.iter().find(|c| c.room == east).expect("carried").verdict
    }

    #[test]
    fn a_sofa_goes_through_an_opening_as_wide_as_its_smaller_side() {
        assert!(matches!(verdict(&two_rooms(34), [84, 36, 34]), Verdict::Fits(_)));
        assert!(matches!(verdict(&two_rooms(28), [84, 36, 34]), Verdict::Sticks(_)));
        // A heater of 22 in stands upright, if the opening is high enough, or lies.
        assert!(matches!(verdict(&two_rooms(28), [22, 22, 60]), Verdict::Fits(_)));
    }

    #[test]
    fn a_board_goes_on_edge() {
        let Verdict::Fits(pose) = verdict(&two_rooms(28), [96, 48, 1]) else { panic!("it fits") };
        assert_eq!(pose.width, inch(1));
    }
}
