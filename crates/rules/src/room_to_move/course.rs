//! The lines along which an element moves, and the edit of each offset.

use geometry::{Facing, Vec2};
use measure::Len;
use plan::element::Body;
use plan::{Edit, EditError, ElementId, Plan, ops};

use super::FARTHEST;

/// A line along which an element moves; offsets count along its direction.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Course {
    /// A wall towards the left of its line, with all that follows it.
    Wall(ElementId),
    /// An opening along its wall, away from the start of the wall.
    Opening(ElementId),
    /// A thing by itself towards a facing.
    Thing(ElementId, Facing),
}

impl Course {
    /// The lines of an element; none for what doesn't move by itself.
    pub fn of(plan: &Plan, id: ElementId) -> Vec<Course> {
        let Some(element) = plan.get(id).filter(|e| e.stands()) else { return Vec::new() };
        let along =
            |facing: Facing| vec![Course::Thing(id, facing.right()), Course::Thing(id, facing)];
        match &element.body {
            Body::Shell(_) | Body::Partition(_) => vec![Course::Wall(id)],
            Body::Opening(_) => vec![Course::Opening(id)],
            Body::Service(s) => along(s.facing),
            Body::Furnishing(f) => along(f.facing),
            Body::Stair(s) => along(s.up),
            Body::Column(_) | Body::Overhead(_) => along(Facing::NORTH),
            Body::Furring(_) | Body::RoomTag(_) | Body::Note(_) | Body::Section(_) => Vec::new(),
        }
    }

    pub fn element(self) -> ElementId {
        match self {
            Course::Wall(id) | Course::Opening(id) | Course::Thing(id, _) => id,
        }
    }

    /// The direction of the line.
    pub fn facing(self, plan: &Plan) -> Option<Facing> {
        match self {
            Course::Wall(id) => {
                Facing::along(plan.get(id)?.body.wall_line()?.dir()).map(Facing::left)
            }
            Course::Opening(id) => {
                let Body::Opening(opening) = &plan.get(id)?.body else { return None };
                Facing::along(plan.get(opening.host)?.body.wall_line()?.dir())
            }
            Course::Thing(_, facing) => Some(facing),
        }
    }

    /// The vector of an offset, for a picture.
    pub fn vector(self, plan: &Plan, by: Len) -> Vec2 {
        self.facing(plan).map_or_else(Vec2::default, |facing| facing.step(by))
    }

    /// How far it can go: until something that follows would turn inside out, a neighbour on the wall, or
    /// [`FARTHEST`].
    pub fn reach(self, plan: &Plan) -> (Len, Len) {
        let (least, most) = match self {
            Course::Wall(id) => ops::move_wall_range(plan, id),
            Course::Opening(id) => {
                let at = match plan.get(id).map(|e| &e.body) {
                    Some(Body::Opening(opening)) => opening.at,
                    _ => Len::ZERO,
                };
                ops::slide_range(plan, id)
                    .map_or((Len::ZERO, Len::ZERO), |(from, to)| (from - at, to - at))
            }
            Course::Thing(..) => (-FARTHEST, FARTHEST),
        };
        (least.clamp(-FARTHEST, Len::ZERO), most.clamp(Len::ZERO, FARTHEST))
    }

    /// The edit that a drag by this offset makes.
    pub fn edit(self, plan: &Plan, by: Len) -> Result<Edit, EditError> {
        match self {
            Course::Wall(id) => ops::move_wall(plan, id, by),
            Course::Opening(id) => {
                let at = match plan.get(id).map(|e| &e.body) {
                    Some(Body::Opening(opening)) => opening.at,
                    _ => Len::ZERO,
                };
                ops::slide_opening(plan, id, at + by)
            }
            Course::Thing(id, facing) => ops::translate(plan, &[id], facing.step(by)),
        }
    }
}
