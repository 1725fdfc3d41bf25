//! Axis-parallel boxes round things.

use std::borrow::Borrow;

use measure::Len;

use crate::{Pt, Ring};

/// A closed axis-parallel box. [`Bounds::EMPTY`] holds no point and meets no box within a plan's bounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Bounds {
    pub min: Pt,
    pub max: Pt,
}

impl Default for Bounds {
    fn default() -> Bounds {
        Bounds::EMPTY
    }
}

impl Bounds {
    /// The box of nothing; the neutral element of [`Bounds::union`].
    pub const EMPTY: Bounds =
        Bounds { min: Pt::new(i32::MAX, i32::MAX), max: Pt::new(i32::MIN, i32::MIN) };

    /// The smallest box that holds all points; takes points or references to points.
    pub fn of<P: Borrow<Pt>>(points: impl IntoIterator<Item = P>) -> Bounds {
        points.into_iter().fold(Bounds::EMPTY, |b, p| {
            let p = *p.borrow();
            Bounds {
                min: Pt::new(b.min.x.min(p.x), b.min.y.min(p.y)),
                max: Pt::new(b.max.x.max(p.x), b.max.y.max(p.y)),
            }
        })
    }

    /// Whether the box holds no point.
    pub fn is_empty(self) -> bool {
        self.min.x > self.max.x || self.min.y > self.max.y
    }

    /// The box moved outwards by `by` on every side (negative: inwards). An empty box stays empty.
    pub fn grow(self, by: Len) -> Bounds {
        if self.is_empty() {
            return self;
        }
        let by = by.units();
        let (min, max) = (self.min, self.max);
        Bounds {
            min: Pt::new(min.x.saturating_sub(by), min.y.saturating_sub(by)),
            max: Pt::new(max.x.saturating_add(by), max.y.saturating_add(by)),
        }
    }

    /// Whether the two boxes have a point in common; touching counts.
    pub fn meets(self, other: Bounds) -> bool {
        self.min.x <= other.max.x
            && other.min.x <= self.max.x
            && self.min.y <= other.max.y
            && other.min.y <= self.max.y
    }

    /// Whether the box holds a point; its edge counts.
    pub fn contains(self, p: Pt) -> bool {
        self.min.x <= p.x && p.x <= self.max.x && self.min.y <= p.y && p.y <= self.max.y
    }

    /// The smallest box that holds both.
    pub fn union(self, other: Bounds) -> Bounds {
        Bounds {
            min: Pt::new(self.min.x.min(other.min.x), self.min.y.min(other.min.y)),
            max: Pt::new(self.max.x.max(other.max.x), self.max.y.max(other.max.y)),
        }
    }

    /// Size along x; zero when empty.
    pub fn width(self) -> Len {
        span(self.min.x, self.max.x)
    }

    /// Size along y; zero when empty.
    pub fn height(self) -> Len {
        span(self.min.y, self.max.y)
    }

    /// The middle, rounded towards negative infinity.
    pub fn centre(self) -> Pt {
        self.min.midway(self.max)
    }

    /// The box as a ring, counter-clockwise from its lowest leftmost corner.
    pub fn ring(self) -> Ring {
        let (min, max) = (self.min, self.max);
        vec![min, Pt::new(max.x, min.y), max, Pt::new(min.x, max.y)]
    }
}

fn span(min: i32, max: i32) -> Len {
    Len::from_units(max.saturating_sub(min).max(0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn of_points_and_of_references() {
        let points = [Pt::new(3, -1), Pt::new(-2, 5), Pt::new(0, 0)];
        let b = Bounds { min: Pt::new(-2, -1), max: Pt::new(3, 5) };
        assert_eq!(Bounds::of(points), b);
        assert_eq!(Bounds::of(points.iter()), b);
        assert_eq!((b.width(), b.height()), (Len::from_units(5), Len::from_units(6)));
        assert_eq!(crate::twice_area(&b.ring()), 60);
    }

    #[test]
    fn touching_boxes_meet_and_one_unit_apart_do_not() {
        let a = Bounds { min: Pt::new(0, 0), max: Pt::new(10, 10) };
        let at = |x| Bounds { min: Pt::new(x, 10), max: Pt::new(x + 5, 15) };
        assert!(a.meets(at(10)));
        assert!(!a.meets(at(11)));
        assert!(at(10).meets(a));
    }

    #[test]
    fn the_empty_box_meets_nothing_and_adds_nothing() {
        let far = Len::COORD_LIMIT.units();
        let all = Bounds { min: Pt::new(-far, -far), max: Pt::new(far, far) };
        let none = Bounds::of::<Pt>([]);
        assert!(none.is_empty() && !none.meets(all) && !all.meets(none));
        assert!(none.grow(Len::mm(1)).is_empty());
        assert_eq!(none.union(all), all);
        assert_eq!((none.width(), none.height()), (Len::ZERO, Len::ZERO));
    }

    #[test]
    fn growing_by_a_negative_length_shrinks() {
        let a = Bounds { min: Pt::new(0, 0), max: Pt::new(10, 10) };
        assert_eq!(a.grow(Len::from_units(2)).min, Pt::new(-2, -2));
        assert_eq!(a.grow(Len::from_units(-2)).max, Pt::new(8, 8));
        assert!(a.grow(Len::from_units(-6)).is_empty());
    }
}
