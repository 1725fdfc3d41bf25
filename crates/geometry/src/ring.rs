//! Closed rings and shapes with holes.

use measure::Area;

use crate::Pt;

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
    let mut sum = 0i128;
    for (i, &p) in ring.iter().enumerate() {
        let q = ring[(i + 1) % ring.len()];
        sum += i128::from(p.x) * i128::from(q.y) - i128::from(q.x) * i128::from(p.y);
    }
    sum
}

impl Shape {
    /// Area of the outer ring less the islands.
    pub fn area(&self) -> Area {
        let twice = twice_area(&self.outer).abs()
            - self.holes.iter().map(|h| twice_area(h).abs()).sum::<i128>();
        Area::from_square_units(twice / 2)
    }
}
