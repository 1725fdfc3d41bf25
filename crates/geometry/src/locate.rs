//! On which side of a ring a point lies.

use crate::{Pt, Shape, orient};

/// A point against a region.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Where {
    Inside,
    /// On an edge or a corner.
    OnEdge,
    Outside,
}

/// Where a point lies against a simple ring of either winding. A ring of one or two points has an
/// edge and no inside; an empty one has neither. Exact.
///
/// Crossings of the ray to the right, an edge counting from its lower end up to but without its
/// upper one, so a corner counts once.
pub fn locate(p: Pt, ring: &[Pt]) -> Where {
    let mut inside = false;
    let Some(mut a) = ring.last().copied() else { return Where::Outside };
    for &b in ring {
        let start = std::mem::replace(&mut a, b);
        let (low, high) = (start.y.min(b.y), start.y.max(b.y));
        // Neither on the edge nor crossed by the ray.
        if p.y < low || p.y > high || p.x > start.x.max(b.x) {
            continue;
        }
        let side = orient(start, b, p);
        if side == 0 && p.x >= start.x.min(b.x) {
            return Where::OnEdge;
        }
        let crossed = p.y < high && if start.y < b.y { side > 0 } else { side < 0 };
        inside ^= crossed;
    }
    if inside { Where::Inside } else { Where::Outside }
}

impl Shape {
    /// Where a point lies against the shape; the inside of an island is outside.
    pub fn locate(&self, p: Pt) -> Where {
        match locate(p, &self.outer) {
            Where::Inside => {}
            other => return other,
        }
        for hole in &self.holes {
            match locate(p, hole) {
                Where::Inside => return Where::Outside,
                Where::OnEdge => return Where::OnEdge,
                Where::Outside => {}
            }
        }
        Where::Inside
    }

    /// Whether a point lies in the shape or on its edge.
    pub fn contains(&self, p: Pt) -> bool {
        self.locate(p) != Where::Outside
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample::{FAR, laid, point, polygon, rect, skyline};
    use geo::coordinate_position::{CoordPos, CoordinatePosition};
    use geo::{Coord, Polygon};
    use proptest::prelude::*;

    #[test]
    fn corners_edges_and_the_unit_beside_them() {
        let ring = rect(0, 0, 10, 10);
        for (p, expected) in [
            (Pt::new(0, 0), Where::OnEdge),
            (Pt::new(10, 4), Where::OnEdge),
            (Pt::new(9, 4), Where::Inside),
            (Pt::new(11, 4), Where::Outside),
            (Pt::new(11, 10), Where::Outside),
            (Pt::new(-1, 0), Where::Outside),
        ] {
            assert_eq!(locate(p, &ring), expected, "{p:?}");
        }
    }

    #[test]
    fn points_segments_and_nothing() {
        let (p, q) = (Pt::new(0, 0), Pt::new(4, 4));
        assert_eq!(locate(p, &[]), Where::Outside);
        assert_eq!(locate(p, &[p]), Where::OnEdge);
        assert_eq!(locate(Pt::new(2, 2), &[p, q]), Where::OnEdge);
        assert_eq!(locate(Pt::new(2, 3), &[p, q]), Where::Outside);
    }

    #[test]
    fn the_inside_of_an_island_is_outside() {
        let mut hole = rect(3, 3, 4, 4);
        hole.reverse();
        let shape = Shape { outer: rect(0, 0, 10, 10), holes: vec![hole] };
        assert_eq!(shape.locate(Pt::new(5, 5)), Where::Outside);
        assert_eq!(shape.locate(Pt::new(3, 5)), Where::OnEdge);
        assert_eq!(shape.locate(Pt::new(2, 5)), Where::Inside);
        assert!(shape.contains(Pt::new(7, 7)) && !shape.contains(Pt::new(6, 6)));
    }

    /// The same question asked of the `geo` crate, whose orientation test is robust.
    fn by_geo(p: Pt, ring: &[Pt]) -> Where {
        let coord = |p: &Pt| Coord { x: f64::from(p.x), y: f64::from(p.y) };
        let polygon = Polygon::new(ring.iter().map(coord).collect(), vec![]);
        match polygon.coordinate_position(&coord(&p)) {
            CoordPos::Inside => Where::Inside,
            CoordPos::OnBoundary => Where::OnEdge,
            CoordPos::Outside => Where::Outside,
        }
    }

    proptest! {
        #[test]
        fn concave_rings_agree_with_geo(ring in skyline(), way in 0u8..8, p in point(7)) {
            let ring = laid(&ring, way, (0, 0));
            prop_assert_eq!(locate(p, &ring), by_geo(p, &ring));
        }

        #[test]
        fn far_convex_rings_agree_with_geo(ring in polygon(FAR), p in point(FAR)) {
            prop_assert_eq!(locate(p, &ring), by_geo(p, &ring));
        }

        #[test]
        fn near_points_agree_with_geo(ring in polygon(6), p in point(6)) {
            prop_assert_eq!(locate(p, &ring), by_geo(p, &ring));
        }
    }
}
