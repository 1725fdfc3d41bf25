//! Which way a thing faces, and boxes placed by it.

use measure::Len;
use serde::{Deserialize, Serialize};

use crate::{Pt, Vec2};

/// The direction that a thing faces: a grid vector of any length but zero. Kept as two integers, so
/// that a quarter turn is exact and no angle is ever stored.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(from = "(i32, i32)", into = "(i32, i32)")]
pub struct Facing {
    pub x: i32,
    pub y: i32,
}

impl From<(i32, i32)> for Facing {
    fn from((x, y): (i32, i32)) -> Facing {
        Facing { x, y }
    }
}

impl From<Facing> for (i32, i32) {
    fn from(f: Facing) -> (i32, i32) {
        (f.x, f.y)
    }
}

impl Default for Facing {
    fn default() -> Facing {
        Facing::SOUTH
    }
}

impl Facing {
    pub const NORTH: Facing = Facing { x: 0, y: 1 };
    pub const SOUTH: Facing = Facing { x: 0, y: -1 };
    pub const EAST: Facing = Facing { x: 1, y: 0 };
    pub const WEST: Facing = Facing { x: -1, y: 0 };

    /// The facing along a vector; axis-parallel vectors become unit ones. `None` for the zero vector.
    pub fn along(v: Vec2) -> Option<Facing> {
        match (v.x.signum(), v.y.signum()) {
            (0, 0) => None,
            (x, 0) => Some(Facing { x: x as i32, y: 0 }),
            (0, y) => Some(Facing { x: 0, y: y as i32 }),
            _ => Some(Facing { x: v.x as i32, y: v.y as i32 }),
        }
    }

    pub fn vec(self) -> Vec2 {
        Vec2::new(i64::from(self.x), i64::from(self.y))
    }

    /// A quarter turn counter-clockwise.
    pub fn left(self) -> Facing {
        Facing { x: -self.y, y: self.x }
    }

    /// A quarter turn clockwise.
    pub fn right(self) -> Facing {
        Facing { x: self.y, y: -self.x }
    }

    pub fn back(self) -> Facing {
        Facing { x: -self.x, y: -self.y }
    }

    /// A step of `len` in this direction.
    pub fn step(self, len: Len) -> Vec2 {
        self.vec().with_len(len)
    }
}

/// A box in the plan, placed by the middle of its back edge and the way it faces.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Placed {
    /// The middle of the back edge.
    pub back: Pt,
    pub facing: Facing,
    /// Across the facing.
    pub width: Len,
    /// Along the facing.
    pub depth: Len,
}

impl Placed {
    /// The four corners, counter-clockwise: back right, front right, front left, back left, as seen by
    /// one who stands in the box and looks the way it faces. Each is rounded once to the grid; an odd width keeps its
    /// exact sum.
    pub fn corners(self) -> [Pt; 4] {
        let left_half = self.width / 2;
        let right_half = self.width - left_half;
        let to_left = self.facing.left().step(left_half);
        let to_right = self.facing.right().step(right_half);
        let out = self.facing.step(self.depth);
        [
            self.back + to_right,
            self.back + to_right + out,
            self.back + to_left + out,
            self.back + to_left,
        ]
    }

    /// The middle of the front edge.
    pub fn front(self) -> Pt {
        self.back + self.facing.step(self.depth)
    }

    /// The centre, rounded.
    pub fn centre(self) -> Pt {
        self.back + self.facing.step(self.depth / 2)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::twice_area;
    use proptest::prelude::*;

    #[test]
    fn axis_parallel_vectors_give_unit_facings() {
        assert_eq!(Facing::along(Vec2::new(0, 77)), Some(Facing::NORTH));
        assert_eq!(Facing::along(Vec2::new(-5, 0)), Some(Facing::WEST));
        assert_eq!(Facing::along(Vec2::new(-5, 9)), Some(Facing { x: -5, y: 9 }));
        assert_eq!(Facing::along(Vec2::default()), None);
    }

    #[test]
    fn four_quarter_turns_come_back() {
        let facing = Facing { x: 7, y: -3 };
        assert_eq!(facing.left().left(), facing.back());
        assert_eq!(facing.left().right(), facing);
        assert_eq!((Facing::NORTH.left(), Facing::NORTH.right()), (Facing::WEST, Facing::EAST));
    }

    #[test]
    fn corners_go_round_from_the_back_right() {
        let placed = Placed {
            back: Pt::new(100, 100),
            facing: Facing::NORTH,
            width: Len::from_units(7),
            depth: Len::from_units(20),
        };
        let at = Pt::new;
        assert_eq!(placed.corners(), [at(104, 100), at(104, 120), at(97, 120), at(97, 100)]);
        assert_eq!((placed.front(), placed.centre()), (at(100, 120), at(100, 110)));
        let south = Placed { facing: Facing::SOUTH, ..placed };
        assert_eq!(south.corners(), [at(96, 100), at(96, 80), at(103, 80), at(103, 100)]);
    }

    proptest! {
        #[test]
        fn a_placed_box_keeps_its_size(
            x in -9_000..9_000i32, y in -9_000..9_000i32, width in 8_000..900_000, depth in 8_000..900_000,
        ) {
            prop_assume!((x, y) != (0, 0));
            let (width, depth) = (Len::from_units(width), Len::from_units(depth));
            let placed = Placed { back: Pt::new(5, 5), facing: Facing { x, y }, width, depth };
            let corners = placed.corners();
            let off = |a: Pt, b: Pt, len: Len| ((b - a).norm() - f64::from(len.units())).abs();
            prop_assert!(off(corners[0], corners[1], depth) <= 1.0);
            prop_assert!(off(corners[1], corners[2], width) <= 1.5);
            prop_assert!(twice_area(&corners) > 0);
        }
    }
}
