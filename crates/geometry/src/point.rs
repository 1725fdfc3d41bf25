//! Points, vectors and segments on the grid, and the orientation test.

use std::ops::{Add, Neg, Sub};

use measure::Len;
use serde::{Deserialize, Serialize};

/// A point on the grid, in [`Len`] units. Coordinates of a plan stay within ±[`Len::COORD_LIMIT`].
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(from = "(i32, i32)", into = "(i32, i32)")]
pub struct Pt {
    pub x: i32,
    pub y: i32,
}

impl From<(i32, i32)> for Pt {
    fn from((x, y): (i32, i32)) -> Pt {
        Pt { x, y }
    }
}

impl From<Pt> for (i32, i32) {
    fn from(p: Pt) -> (i32, i32) {
        (p.x, p.y)
    }
}

impl Pt {
    /// A point from two coordinates in grid units.
    pub const fn new(x: i32, y: i32) -> Pt {
        Pt { x, y }
    }

    /// A point from two lengths.
    pub const fn at(x: Len, y: Len) -> Pt {
        Pt { x: x.units(), y: y.units() }
    }

    /// A point in whole inches.
    pub const fn inches(x: i32, y: i32) -> Pt {
        Pt { x: x * Len::PER_INCH, y: y * Len::PER_INCH }
    }

    /// The point midway, rounded towards negative infinity.
    pub fn midway(self, other: Pt) -> Pt {
        Pt {
            x: ((i64::from(self.x) + i64::from(other.x)) >> 1) as i32,
            y: ((i64::from(self.y) + i64::from(other.y)) >> 1) as i32,
        }
    }

    /// Coordinates in inches, for painting and reports.
    pub fn to_inches(self) -> (f64, f64) {
        let inch = f64::from(Len::PER_INCH);
        (f64::from(self.x) / inch, f64::from(self.y) / inch)
    }

    /// Whether both coordinates lie within ±[`Len::COORD_LIMIT`].
    pub fn in_bounds(self) -> bool {
        let limit = Len::COORD_LIMIT.units();
        (-limit..=limit).contains(&self.x) && (-limit..=limit).contains(&self.y)
    }
}

/// A displacement in grid units; wide enough for products with another displacement in `i128`.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Vec2 {
    pub x: i64,
    pub y: i64,
}

impl Vec2 {
    pub const fn new(x: i64, y: i64) -> Vec2 {
        Vec2 { x, y }
    }

    /// Dot product. Exact: plan coordinates keep it under 2^62.
    pub fn dot(self, other: Vec2) -> i64 {
        self.x * other.x + self.y * other.y
    }

    /// Cross product; positive when `other` lies counter-clockwise of `self`.
    pub fn cross(self, other: Vec2) -> i64 {
        self.x * other.y - self.y * other.x
    }

    /// Squared length.
    pub fn norm2(self) -> i64 {
        self.dot(self)
    }

    /// Length in grid units, rounded to a float; the square root of IEEE 754 is the same everywhere.
    pub fn norm(self) -> f64 {
        (self.norm2() as f64).sqrt()
    }

    /// The vector turned a quarter counter-clockwise.
    pub fn left(self) -> Vec2 {
        Vec2 { x: -self.y, y: self.x }
    }

    /// `self` scaled to the length `len` (may be negative), each coordinate rounded once to the grid.
    /// A zero vector stays zero. Axis-parallel vectors are exact.
    pub fn with_len(self, len: Len) -> Vec2 {
        let l = i64::from(len.units());
        if self.y == 0 {
            return Vec2 { x: self.x.signum() * l, y: 0 };
        }
        if self.x == 0 {
            return Vec2 { x: 0, y: self.y.signum() * l };
        }
        let scale = l as f64 / self.norm();
        Vec2 {
            x: (self.x as f64 * scale).round() as i64,
            y: (self.y as f64 * scale).round() as i64,
        }
    }
}

impl Sub for Pt {
    type Output = Vec2;
    fn sub(self, other: Pt) -> Vec2 {
        Vec2 {
            x: i64::from(self.x) - i64::from(other.x),
            y: i64::from(self.y) - i64::from(other.y),
        }
    }
}

impl Add<Vec2> for Pt {
    type Output = Pt;
    /// Stops at the ends of the `i32` grid, far outside a plan's bounds, so that
    /// [`Pt::in_bounds`] afterwards tells.
    fn add(self, v: Vec2) -> Pt {
        let on_grid = |a: i32, d: i64| {
            i64::from(a).saturating_add(d).clamp(i64::from(i32::MIN), i64::from(i32::MAX)) as i32
        };
        Pt { x: on_grid(self.x, v.x), y: on_grid(self.y, v.y) }
    }
}

impl Sub<Vec2> for Pt {
    type Output = Pt;
    fn sub(self, v: Vec2) -> Pt {
        self + -v
    }
}

impl Add for Vec2 {
    type Output = Vec2;
    fn add(self, v: Vec2) -> Vec2 {
        Vec2 { x: self.x + v.x, y: self.y + v.y }
    }
}

impl Neg for Vec2 {
    type Output = Vec2;
    fn neg(self) -> Vec2 {
        Vec2 { x: -self.x, y: -self.y }
    }
}

/// Which side of the directed line `a → b` the point `c` lies on: positive left, negative right,
/// zero on the line. Exact.
pub fn orient(a: Pt, b: Pt, c: Pt) -> i64 {
    (b - a).cross(c - a)
}

/// A directed segment.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Seg {
    pub a: Pt,
    pub b: Pt,
}

impl Seg {
    pub const fn new(a: Pt, b: Pt) -> Seg {
        Seg { a, b }
    }

    /// From `a` to `b`.
    pub fn dir(self) -> Vec2 {
        self.b - self.a
    }

    /// Length, rounded to the nearest grid unit (exact on an axis-parallel segment).
    pub fn len(self) -> Len {
        Len::from_units(self.dir().norm().round() as i32)
    }

    /// The point at `distance` from `a` towards `b`, rounded once to the grid.
    pub fn point_at(self, distance: Len) -> Pt {
        self.a + self.dir().with_len(distance)
    }

    /// The segment moved to its left by `distance` (negative: right), rounded once to the grid.
    pub fn offset_left(self, distance: Len) -> Seg {
        let v = self.dir().left().with_len(distance);
        Seg { a: self.a + v, b: self.b + v }
    }

    pub fn reversed(self) -> Seg {
        Seg { a: self.b, b: self.a }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample::{FAR, point, segment};
    use proptest::prelude::*;

    #[test]
    fn axis_parallel_steps_are_exact() {
        let seg = Seg::new(Pt::new(5, 5), Pt::new(5, 1_000));
        let by = Len::from_units(77);
        assert_eq!(seg.len(), Len::from_units(995));
        assert_eq!(seg.point_at(by), Pt::new(5, 82));
        assert_eq!(seg.offset_left(by), Seg::new(Pt::new(-72, 5), Pt::new(-72, 1_000)));
        assert_eq!(seg.offset_left(-by).a, Pt::new(82, 5));
        assert_eq!(Vec2::default().with_len(by), Vec2::default());
    }

    #[test]
    fn a_step_off_the_grid_stops_at_its_end_and_is_out_of_bounds() {
        let p = Pt::new(FAR, -FAR);
        assert!(p.in_bounds());
        assert!(!(p + Vec2::new(1, 0)).in_bounds());
        assert_eq!(p + Vec2::new(i64::MAX, i64::MIN), Pt::new(i32::MAX, i32::MIN));
        assert!(!Pt::new(i32::MIN, 0).in_bounds());
    }

    proptest! {
        #[test]
        fn orientation_agrees_with_wide_integers(a in point(FAR), b in point(FAR), c in point(FAR)) {
            let w = |n: i32| i128::from(n);
            let det = w(a.x) * (w(b.y) - w(c.y)) + w(b.x) * (w(c.y) - w(a.y)) + w(c.x) * (w(a.y) - w(b.y));
            prop_assert_eq!(i128::from(orient(a, b, c)), det);
            prop_assert_eq!(orient(b, c, a), orient(a, b, c));
            prop_assert_eq!(orient(b, a, c), -orient(a, b, c));
        }

        #[test]
        fn a_scaled_vector_is_within_a_unit(s in segment(1_000_000), len in -1_000_000..1_000_000i32) {
            prop_assume!(s.a != s.b);
            let v = s.dir().with_len(Len::from_units(len));
            prop_assert!((v.norm() - f64::from(len.abs())).abs() <= 0.71);
            prop_assert!(v.dot(s.dir()) * i64::from(len.signum()) >= 0);
        }
    }
}
