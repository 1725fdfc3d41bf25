//! Closed rings and shapes with holes.

use measure::Area;

use crate::{Bounds, Pt, Seg};

/// A closed ring of points, without repeating the first; counter-clockwise is positive.
pub type Ring = Vec<Pt>;

/// A region: one outer ring (counter-clockwise) and the rings of its islands (clockwise).
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Shape {
    pub outer: Ring,
    pub holes: Vec<Ring>,
}

/// Twice the signed area of a ring, in square units.
pub fn twice_area(ring: &[Pt]) -> i128 {
    edges(ring)
        .map(|e| i128::from(e.a.x) * i128::from(e.b.y) - i128::from(e.b.x) * i128::from(e.a.y))
        .sum()
}

/// The edges of a ring in order, the closing one last.
pub fn edges(ring: &[Pt]) -> impl Iterator<Item = Seg> + Clone + '_ {
    let next = move |i: usize| if i + 1 == ring.len() { 0 } else { i + 1 };
    (0..ring.len()).map(move |i| Seg::new(ring[i], ring[next(i)]))
}

impl Shape {
    /// A shape without islands; a clockwise ring is reversed.
    pub fn solid(mut outer: Ring) -> Shape {
        if twice_area(&outer) < 0 {
            outer.reverse();
        }
        Shape { outer, holes: Vec::new() }
    }

    /// Area of the outer ring less the islands.
    pub fn area(&self) -> Area {
        let twice = twice_area(&self.outer).abs()
            - self.holes.iter().map(|h| twice_area(h).abs()).sum::<i128>();
        Area::from_square_units(twice / 2)
    }

    /// The outer ring, then the islands.
    pub fn rings(&self) -> impl Iterator<Item = &Ring> + Clone {
        std::iter::once(&self.outer).chain(&self.holes)
    }

    /// Every edge of every ring; the shape lies to the left.
    pub fn perimeter_edges(&self) -> impl Iterator<Item = Seg> + Clone + '_ {
        self.rings().flat_map(|ring| edges(ring))
    }

    /// The box round the outer ring.
    pub fn bounds(&self) -> Bounds {
        Bounds::of(&self.outer)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample::rect;

    #[test]
    fn area_is_the_outer_ring_less_the_islands() {
        let mut hole = rect(2, 2, 3, 3);
        hole.reverse();
        let shape = Shape { outer: rect(0, 0, 10, 10), holes: vec![hole] };
        assert_eq!(shape.area(), Area::from_square_units(91));
        assert_eq!(shape.perimeter_edges().count(), 8);
        assert_eq!(shape.bounds().max, Pt::new(10, 10));
    }

    #[test]
    fn a_solid_turns_counter_clockwise() {
        let mut clockwise = rect(0, 0, 10, 10);
        clockwise.reverse();
        assert_eq!(twice_area(&clockwise), -200);
        assert_eq!(twice_area(&Shape::solid(clockwise).outer), 200);
    }

    #[test]
    fn rings_of_no_and_one_and_two_points() {
        assert_eq!(edges(&[]).count(), 0);
        let p = Pt::new(3, 4);
        assert_eq!(edges(&[p]).collect::<Vec<_>>(), [Seg::new(p, p)]);
        let q = Pt::new(5, 6);
        assert_eq!(edges(&[p, q]).collect::<Vec<_>>(), [Seg::new(p, q), Seg::new(q, p)]);
        assert_eq!((twice_area(&[]), twice_area(&[p]), twice_area(&[p, q])), (0, 0, 0));
    }
}
