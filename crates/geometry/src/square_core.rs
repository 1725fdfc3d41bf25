//! The part of a shape that a square can reach while it stays inside (a morphological opening).
//!
//! Erosion, then dilation, by a square. With a square `B` that has its corner at the origin:
//! * `S ⊖ B`, the places for the corner, is `S` less the sweep of `-B` along the boundary, because
//!   `p + B` is connected and so leaves `S` only across the boundary;
//! * `S ⊕ B` is `S` and the sweep of `B` along the boundary, because `B` holds the origin.
//!
//! The sweep of a square along an edge, their Minkowski sum, is a convex hexagon at most.
//!
//! Where a square of side `w` just fits, the places for its corner have no area. On the grid a square
//! of `w - 1` then has places one unit wide, and one of `w` none, so eroding and dilating by `w - 1`
//! tells a strip of `w` from one of `w - 1`; and for axis-parallel shapes the outcome is exactly the
//! union of the `w`-squares with corners on the grid.
//!
//! A skew facing is made an axis first: points are multiplied by its conjugate, as complex numbers,
//! which turns them and scales them by the length of the facing, all in exact integers, and the
//! result is divided back and rounded once. Corners of skew faces are themselves rounded, by up to
//! a unit each, so there the square is [`SKEW_SLACK`] smaller than asked for.

use std::slice;

use i_overlay::core::overlay::ShapeType;
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::i_float::int::point::IntPoint;
use i_overlay::i_shape::int::shape::IntShapes;
use measure::Len;

use crate::engine::{in_order, run};
use crate::{Facing, Pt, Ring, Shape, overlay, twice_area};

/// By how much a square at a skew facing is smaller than asked for, for the rounding of skew faces.
pub const SKEW_SLACK: Len = Len::from_units(2);

/// The part of `shape` that a square of this side, its sides along and across `facing`, can reach
/// while it stays inside. A facing along an axis is exact: a strip `side` wide is reached, one unit
/// less is not. At a skew facing a strip down to [`SKEW_SLACK`] less may be reached. A side of one
/// unit or less gives the shape itself.
pub fn square_core(shape: &Shape, facing: Facing, side: Len) -> Vec<Shape> {
    let frame = Frame::along(facing);
    let side = frame.side(side);
    if side <= 0 {
        return overlay::shape_union(slice::from_ref(shape), &[]);
    }
    let places = sweep(OverlayRule::Difference, &frame.contours(shape), -side);
    let contours: Vec<Contour> = places.into_iter().flatten().collect();
    let reached = sweep(OverlayRule::Union, &contours, side);
    in_order(reached, |p| frame.to_grid(p))
}

type Contour = Vec<IntPoint<i64>>;

/// The contours, with the square `[0, side]²` (or `[side, 0]²`) swept along them taken away or added.
fn sweep(rule: OverlayRule, contours: &[Contour], side: i64) -> IntShapes<i64> {
    run(rule, |overlay| {
        for contour in contours {
            overlay.add_contour(contour, ShapeType::Subject);
            let next = contour.iter().cycle().skip(1);
            for (&a, &b) in contour.iter().zip(next) {
                overlay.add_contour(&edge_and_square(a, b, side), ShapeType::Clip);
            }
        }
    })
}

/// The Minkowski sum of the segment `a b` and the square `[0, side]²` (or `[side, 0]²`),
/// counter-clockwise.
fn edge_and_square(a: IntPoint<i64>, b: IntPoint<i64>, side: i64) -> [IntPoint<i64>; 6] {
    let (low, high) = (side.min(0), side.max(0));
    let corner = |p: IntPoint<i64>, dx: i64, dy: i64| IntPoint::new(p.x + dx, p.y + dy);
    let (a, b) = if (a.x, a.y) <= (b.x, b.y) { (a, b) } else { (b, a) };
    if a.y <= b.y {
        [
            corner(a, low, low),
            corner(a, high, low),
            corner(b, high, low),
            corner(b, high, high),
            corner(b, low, high),
            corner(a, low, high),
        ]
    } else {
        [
            corner(a, low, low),
            corner(b, low, low),
            corner(b, high, low),
            corner(b, high, high),
            corner(a, high, high),
            corner(a, low, high),
        ]
    }
}

/// Coordinates in which the facing is the x axis: the plan times the conjugate of the facing.
struct Frame {
    x: i64,
    y: i64,
}

impl Frame {
    /// Components of a facing that are kept; more would not fit the products. The turn that is lost
    /// moves a point 16 m away by less than a unit.
    const LARGEST: i64 = 1 << 24;

    fn along(facing: Facing) -> Frame {
        let (mut x, mut y) = (i64::from(facing.x), i64::from(facing.y));
        let common = gcd(x.abs(), y.abs());
        if common == 0 {
            return Frame { x: 1, y: 0 };
        }
        (x, y) = (x / common, y / common);
        // A square looks the same after a quarter turn: take the one with x > 0, y >= 0.
        while x <= 0 || y < 0 {
            (x, y) = (y, -x);
        }
        while x.abs().max(y.abs()) > Frame::LARGEST {
            (x, y) = (x / 2, y / 2);
        }
        Frame { x, y }
    }

    fn norm2(&self) -> i64 {
        self.x * self.x + self.y * self.y
    }

    /// The side of the square to sweep, in frame units.
    fn side(&self, side: Len) -> i64 {
        let slack = if self.norm2() == 1 { Len::UNIT } else { SKEW_SLACK };
        let side = i128::from(side.units()) - i128::from(slack.units());
        if side <= 0 {
            return 0;
        }
        // Below 2^31 * 2^24.5.
        (side * side * i128::from(self.norm2())).isqrt() as i64
    }

    /// The outer ring counter-clockwise, the islands clockwise.
    fn contours(&self, shape: &Shape) -> Vec<Contour> {
        let turned = |ring: &Ring, positive: bool| {
            let points = ring.iter().map(|p| self.of_grid(*p));
            if (twice_area(ring) > 0) == positive {
                points.collect()
            } else {
                points.rev().collect()
            }
        };
        std::iter::once(turned(&shape.outer, true))
            .chain(shape.holes.iter().map(|hole| turned(hole, false)))
            .collect()
    }

    fn of_grid(&self, p: Pt) -> IntPoint<i64> {
        let (x, y) = (i64::from(p.x), i64::from(p.y));
        IntPoint::new(x * self.x + y * self.y, y * self.x - x * self.y)
    }

    /// Back to the plan, rounded once.
    fn to_grid(&self, p: IntPoint<i64>) -> Pt {
        let (x, y) = (i128::from(p.x), i128::from(p.y));
        let (fx, fy) = (i128::from(self.x), i128::from(self.y));
        let n = i128::from(self.norm2());
        let part = |v: i128| (2 * v + n).div_euclid(2 * n) as i32;
        Pt::new(part(x * fx - y * fy), part(x * fy + y * fx))
    }
}

fn gcd(a: i64, b: i64) -> i64 {
    if b == 0 { a } else { gcd(b, a % b) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample::{laid, rect, skyline};
    use measure::Area;
    use proptest::prelude::*;

    fn area(shapes: &[Shape]) -> i128 {
        shapes.iter().map(|s| s.area().square_units()).sum()
    }

    fn core(shape: &Shape, side: i32) -> Vec<Shape> {
        square_core(shape, Facing::NORTH, Len::from_units(side))
    }

    #[test]
    fn a_strip_of_just_the_side_is_reached_and_one_unit_less_is_not() {
        let side = Len::feet_inches(7, 0).units();
        let strip = Shape::solid(rect(0, 0, side, 3 * side));
        assert_eq!(core(&strip, side), slice::from_ref(&strip));
        let thin = Shape::solid(rect(0, 0, side - 1, 3 * side));
        assert_eq!(core(&thin, side), []);
        let square = Shape::solid(rect(-7, 11, side, side));
        assert_eq!(core(&square, side), [square]);
    }

    #[test]
    fn the_arm_of_an_ell_counts_by_its_own_width() {
        let (wide, side) = (1_000, 300);
        let ell = |arm: i32| {
            let outer = vec![
                Pt::new(0, 0),
                Pt::new(wide, 0),
                Pt::new(wide, arm),
                Pt::new(400, arm),
                Pt::new(400, wide),
                Pt::new(0, wide),
            ];
            Shape::solid(outer)
        };
        assert_eq!(core(&ell(side), side), [ell(side)]);
        assert_eq!(core(&ell(side - 1), side), [Shape::solid(rect(0, 0, 400, wide))]);
    }

    #[test]
    fn an_island_leaves_a_passage_or_not() {
        let (side, room) = (300, 1_000);
        let with_column = |gap: i32| {
            let mut hole = rect(gap, gap, room - gap - 500, room - gap - 300);
            hole.reverse();
            Shape { outer: rect(0, 0, room, room), holes: vec![hole] }
        };
        assert_eq!(area(&core(&with_column(side), side)), area(&[with_column(side)]));
        // The strips left of the column and under it are a unit too narrow.
        let lost = area(&[with_column(side - 1)]) - area(&core(&with_column(side - 1), side));
        assert_eq!(lost, 299 * (1_000 - 300) + (500 - 299) * 299);
    }

    #[test]
    fn two_rooms_joined_by_a_neck_fall_apart() {
        let outer = vec![
            Pt::new(0, 0),
            Pt::new(500, 0),
            Pt::new(500, 200),
            Pt::new(600, 200),
            Pt::new(600, 0),
            Pt::new(1_100, 0),
            Pt::new(1_100, 500),
            Pt::new(600, 500),
            Pt::new(600, 300),
            Pt::new(500, 300),
            Pt::new(500, 500),
            Pt::new(0, 500),
        ];
        let shape = Shape::solid(outer);
        assert_eq!(core(&shape, 100), slice::from_ref(&shape));
        let parts = core(&shape, 101);
        assert_eq!(parts.len(), 2);
        assert_eq!(area(&parts), 2 * 500 * 500);
    }

    #[test]
    fn a_turned_strip_is_reached_and_a_narrower_one_is_not() {
        let (width, length) = (Len::feet_inches(7, 0), Len::feet_inches(30, 0));
        for facing in [(3, 4), (-5, 12), (20, -21), (1_234_567, 7_654_321), (7, 1), (-1, -1)] {
            let facing = Facing::from(facing);
            let strip = |w: Len| {
                let back = Pt::inches(100, -50);
                let placed = crate::Placed { back, facing, width: w, depth: length };
                Shape::solid(placed.corners().to_vec())
            };
            let reached = square_core(&strip(width), facing, width);
            let whole = strip(width).area().square_units();
            assert_eq!(reached.len(), 1, "{facing:?}");
            let lost = whole - area(&reached);
            // At most about a unit along the perimeter.
            let rim = 2 * i128::from((width + length).units());
            assert!(lost.abs() <= rim, "{facing:?}: {lost}");
            let less = width - SKEW_SLACK - Len::from_units(2);
            assert_eq!(square_core(&strip(less), facing, width), [], "{facing:?}");
            // The square stands along the facing: across the diagonal there is no room.
            assert_eq!(square_core(&strip(width), facing, width + Len::inches(1)), []);
        }
    }

    #[test]
    fn quarter_turns_agree() {
        let ell = vec![
            Pt::new(0, 0),
            Pt::new(900, 0),
            Pt::new(900, 250),
            Pt::new(400, 250),
            Pt::new(333, 700),
            Pt::new(0, 700),
        ];
        let shape = Shape::solid(ell);
        let side = Len::from_units(260);
        let first = square_core(&shape, Facing::NORTH, side);
        assert!(area(&first) > 0 && shape.area() > Area::from_square_units(area(&first)));
        for facing in [Facing::SOUTH, Facing::EAST, Facing::WEST, Facing { x: 0, y: 9 }] {
            assert_eq!(square_core(&shape, facing, side), first);
        }
    }

    #[test]
    fn sides_of_nothing_give_the_shape_and_vast_ones_nothing() {
        let shape = Shape::solid(rect(0, 0, 10, 10));
        for side in [-5, 0, 1] {
            assert_eq!(core(&shape, side), slice::from_ref(&shape));
        }
        assert_eq!(core(&shape, i32::MAX), []);
        assert_eq!(core(&Shape::default(), 10), []);
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(150))]

        /// Turned by 3-4-5 and made five times larger, exactly: the core does the same, but for the
        /// rounding along its edge. No passage is within the slack of the side.
        #[test]
        fn turned_shapes_have_turned_cores(ring in skyline(), side in 1..4i32, way in 0u8..8) {
            let coarse = |r: &Ring, f: &dyn Fn(i32, i32) -> (i32, i32)| -> Shape {
                Shape::solid(r.iter().map(|p| f(p.x * 1_000, p.y * 1_000).into()).collect())
            };
            let ring = laid(&ring, way, (3, -8));
            let straight = core(&coarse(&ring, &|x, y| (x, y)), side * 1_000);
            let turned = coarse(&ring, &|x, y| (3 * x - 4 * y, 4 * x + 3 * y));
            for facing in [(3, 4), (-4, 3), (6, 8), (-300, -400)] {
                let reached = square_core(&turned, facing.into(), Len::from_units(side * 5_000));
                prop_assert_eq!(reached.len(), straight.len());
                let rim: f64 = reached.iter().flat_map(Shape::perimeter_edges).map(|e| e.dir().norm()).sum();
                let differ = (area(&reached) - 25 * area(&straight)).abs() as f64;
                prop_assert!(differ <= rim + 100.0, "{} {}", differ, rim);
            }
        }
    }
}
