//! Union, difference and common part of rings and shapes.
//!
//! The kernel is the integer engine of `i_overlay` (a plane sweep that snaps crossings to the grid).
//! Corners of the input stay where they are; a crossing of two skew edges is rounded to the grid, so
//! an edge may move by up to one unit. Axis-parallel input gives an exact result.
//!
//! Convention: rings may have either winding; each counts as its inside, and rings of one list count
//! as their union. Shapes keep their islands. Results have outer rings counter-clockwise and islands
//! clockwise, no collinear points, and a fixed order: every ring starts at its lowest, then leftmost
//! point, and islands and shapes go by that point. Shapes that meet in a corner only are apart.
//!
//! Degenerate input: rings without area and empty lists are allowed; results without area are left out.

use i_overlay::core::overlay::{Overlay, ShapeType};
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::i_float::int::point::IntPoint;

use crate::engine::{in_order, run};
use crate::{Pt, Ring, Shape, twice_area};

/// What lies in `subject` and not in `clip`.
pub fn difference(subject: &[Ring], clip: &[Ring]) -> Vec<Shape> {
    combine(OverlayRule::Difference, Operand::Rings(subject), clip)
}

/// What lies in one ring and in no other.
pub fn without<'a>(ring: &[Pt], others: impl Iterator<Item = &'a [Pt]>) -> Vec<Shape> {
    let shapes = run(OverlayRule::Difference, |overlay| {
        add(overlay, ring, ShapeType::Subject, true);
        others.for_each(|other| add(overlay, other, ShapeType::Clip, true));
    });
    in_order(shapes, |p| Pt::new(p.x, p.y))
}

/// What lies in either.
pub fn union(a: &[Ring], b: &[Ring]) -> Vec<Shape> {
    combine(OverlayRule::Union, Operand::Rings(a), b)
}

/// What lies in both.
pub fn intersect(a: &[Ring], b: &[Ring]) -> Vec<Shape> {
    combine(OverlayRule::Intersect, Operand::Rings(a), b)
}

/// What lies in the shapes and not in `clip`.
pub fn shape_difference(subject: &[Shape], clip: &[Ring]) -> Vec<Shape> {
    combine(OverlayRule::Difference, Operand::Shapes(subject), clip)
}

/// What lies in the shapes and in `clip`.
pub fn shape_intersect(subject: &[Shape], clip: &[Ring]) -> Vec<Shape> {
    combine(OverlayRule::Intersect, Operand::Shapes(subject), clip)
}

/// What lies in the shapes or in `more`.
pub fn shape_union(subject: &[Shape], more: &[Ring]) -> Vec<Shape> {
    combine(OverlayRule::Union, Operand::Shapes(subject), more)
}

enum Operand<'a> {
    Rings(&'a [Ring]),
    Shapes(&'a [Shape]),
}

fn combine(rule: OverlayRule, subject: Operand<'_>, clip: &[Ring]) -> Vec<Shape> {
    let shapes = run(rule, |overlay| {
        match subject {
            Operand::Rings(rings) => {
                rings.iter().for_each(|ring| add(overlay, ring, ShapeType::Subject, true));
            }
            Operand::Shapes(shapes) => {
                for shape in shapes {
                    add(overlay, &shape.outer, ShapeType::Subject, true);
                    shape.holes.iter().for_each(|h| add(overlay, h, ShapeType::Subject, false));
                }
            }
        }
        clip.iter().for_each(|ring| add(overlay, ring, ShapeType::Clip, true));
    });
    in_order(shapes, |p| Pt::new(p.x, p.y))
}

/// Adds a ring, turned counter-clockwise or clockwise: with the non-zero rule that makes it a part
/// or an island.
fn add(overlay: &mut Overlay<i32>, ring: &[Pt], role: ShapeType, counter_clockwise: bool) {
    let points = ring.iter().map(|p| IntPoint::new(p.x, p.y));
    if (twice_area(ring) >= 0) == counter_clockwise {
        overlay.add_path_iter(points, role);
    } else {
        overlay.add_path_iter(points.rev(), role);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample::rect;
    use measure::Area;

    fn reversed(mut ring: Ring) -> Ring {
        ring.reverse();
        ring
    }

    #[test]
    fn winding_of_the_input_does_not_matter() {
        let (a, b) = (rect(0, 0, 10, 10), rect(5, 5, 10, 10));
        let far = rect(40, 0, 3, 3);
        let expected = union(&[a.clone(), far.clone()], std::slice::from_ref(&b));
        assert_eq!(expected.len(), 2);
        assert_eq!(expected[0].area(), Area::from_square_units(175));
        let turned = union(&[reversed(a.clone()), far], &[reversed(b.clone())]);
        assert_eq!(turned, expected);
        let left = difference(std::slice::from_ref(&a), std::slice::from_ref(&b));
        assert_eq!(without(&reversed(a), [b.as_slice()].into_iter()), left);
    }

    #[test]
    fn a_ring_of_walls_leaves_a_room_and_an_island_stays_a_hole() {
        let frame = rect(0, 0, 100, 100);
        let column = rect(40, 40, 10, 10);
        let room = difference(&[frame], &[column]);
        assert_eq!(room.len(), 1);
        assert_eq!(room[0].outer, rect(0, 0, 100, 100));
        assert_eq!(
            room[0].holes,
            [vec![Pt::new(40, 40), Pt::new(40, 50), Pt::new(50, 50), Pt::new(50, 40),]]
        );
        assert_eq!(room[0].area(), Area::from_square_units(9_900));
        // The island stays when the shape goes in again.
        let left = shape_intersect(&room, &[rect(0, 0, 45, 100)]);
        assert_eq!(left.len(), 1);
        assert_eq!(left[0].area(), Area::from_square_units(4_500 - 50));
        let filled = shape_union(&room, &[column_of(40, 40, 10)]);
        assert_eq!(filled[0].holes.len(), 0);
    }

    fn column_of(x: i32, y: i32, side: i32) -> Ring {
        reversed(rect(x, y, side, side))
    }

    #[test]
    fn shapes_that_meet_in_a_corner_are_apart() {
        let both = union(&[rect(0, 0, 5, 5)], &[rect(5, 5, 5, 5)]);
        assert_eq!(both.len(), 2);
        // Two rooms that meet in the corner of two walls.
        let rooms = difference(&[rect(0, 0, 10, 10)], &[rect(0, 5, 5, 5), rect(5, 0, 5, 5)]);
        assert_eq!(rooms.len(), 2);
        assert_eq!(
            (rooms[0].area(), rooms[1].area()),
            (Area::from_square_units(25), Area::from_square_units(25))
        );
    }

    #[test]
    fn an_island_that_touches_the_edge_in_a_corner() {
        let frame = rect(0, 0, 20, 20);
        let diamond = vec![Pt::new(0, 10), Pt::new(5, 5), Pt::new(10, 10), Pt::new(5, 15)];
        let room = difference(&[frame], &[diamond]);
        assert_eq!(room.len(), 1);
        assert_eq!(room[0].area(), Area::from_square_units(350));
        assert!(room[0].contains(Pt::new(1, 1)) && !room[0].contains(Pt::new(5, 10)));
    }

    #[test]
    fn order_is_lowest_then_leftmost() {
        let rings = [rect(50, 0, 5, 5), rect(0, 20, 5, 5), rect(0, 0, 5, 5)];
        let shapes = union(&rings, &[]);
        let starts: Vec<Pt> = shapes.iter().map(|s| s.outer[0]).collect();
        assert_eq!(starts, [Pt::new(0, 0), Pt::new(50, 0), Pt::new(0, 20)]);
    }

    #[test]
    fn rings_without_area_and_empty_lists() {
        let a = rect(0, 0, 10, 10);
        let line = vec![Pt::new(-5, 5), Pt::new(20, 5)];
        let spike = vec![Pt::new(-5, 5), Pt::new(20, 5), Pt::new(3, 5)];
        let kept =
            difference(std::slice::from_ref(&a), &[line, spike, vec![], vec![Pt::new(1, 1)]]);
        assert_eq!(kept, [Shape::solid(a.clone())]);
        assert_eq!(union(&[], &[]), []);
        assert_eq!(intersect(std::slice::from_ref(&a), &[]), []);
        assert_eq!(difference(std::slice::from_ref(&a), std::slice::from_ref(&a)), []);
        // Pieces that only touch have nothing in common.
        assert_eq!(intersect(&[a], &[rect(10, 0, 5, 5)]), []);
    }

    #[test]
    fn collinear_points_go() {
        let joined = union(&[rect(0, 0, 5, 5)], &[rect(5, 0, 5, 5)]);
        assert_eq!(joined, [Shape::solid(rect(0, 0, 10, 5))]);
    }
}
