//! A point well inside a shape, for its label.
//!
//! Horizontal lines midway between neighbouring corner heights cut the shape into stretches; the
//! middles of the longest stretches of the tallest bands are tried, and the one that is farthest from
//! the edge wins. Integers but for the comparison of distances; the first of equals is taken.

use crate::{Pt, Seg, Shape, Where, nearest_on, ring::edges};

/// How many bands are tried: the tallest.
const BANDS: usize = 12;

impl Shape {
    /// A point inside the shape, as far from its edge as a few tries give. For a shape too thin to hold
    /// a grid point, its first corner; for an empty shape, the origin.
    pub fn label_point(&self) -> Pt {
        let (mut least, mut best) = (f64::NEG_INFINITY, None);
        for y in self.band_middles() {
            let Some(p) = self.longest_stretch_middle(y) else { continue };
            if self.locate(p) != Where::Inside {
                continue;
            }
            if let Some(clear) = self.clearance2(p, least) {
                (least, best) = (clear, Some(p));
            }
        }
        best.or(self.outer.first().copied()).unwrap_or_default()
    }

    /// The middles of the bands between corner heights, the tallest band first.
    fn band_middles(&self) -> Vec<i32> {
        let mut heights: Vec<i32> = self.rings().flatten().map(|p| p.y).collect();
        heights.sort_unstable();
        heights.dedup();
        let mut bands: Vec<(i64, i32)> = heights
            .windows(2)
            .map(|pair| {
                let (low, high) = (i64::from(pair[0]), i64::from(pair[1]));
                (high - low, ((low + high) >> 1) as i32)
            })
            .collect();
        bands.sort_by_key(|&(height, middle)| (-height, middle));
        bands.truncate(BANDS);
        bands.into_iter().map(|(_, middle)| middle).collect()
    }

    /// The middle of the longest stretch of the line at height `y` that lies in the shape.
    fn longest_stretch_middle(&self, y: i32) -> Option<Pt> {
        let crossing = |e: Seg| {
            let d = e.dir();
            if d.x == 0 {
                return i64::from(e.a.x);
            }
            let off = i128::from(d.x) * i128::from(i64::from(y) - i64::from(e.a.y));
            i64::from(e.a.x) + off.div_euclid(i128::from(d.y)) as i64
        };
        let mut crossings: Vec<i64> = Vec::with_capacity(8);
        for ring in self.rings() {
            let crossed = edges(ring).filter(|e| (e.a.y <= y) != (e.b.y <= y));
            crossings.extend(crossed.map(crossing));
        }
        crossings.sort_unstable();
        let longest = crossings.chunks_exact(2).max_by_key(|pair| pair[1] - pair[0])?;
        Some(Pt::new(((longest[0] + longest[1]) >> 1) as i32, y))
    }

    /// How far the edge is from a point, squared; `None` where that is no more than `least`.
    fn clearance2(&self, p: Pt, least: f64) -> Option<f64> {
        self.perimeter_edges()
            .map(|e| (nearest_on(e, p) - p).norm2() as f64)
            .try_fold(f64::INFINITY, |near, far| (far > least).then(|| near.min(far)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::overlay;
    use crate::sample::{laid, rect, skyline};
    use proptest::prelude::*;

    #[test]
    fn the_label_of_a_rectangle_is_in_its_middle() {
        assert_eq!(Shape::solid(rect(0, 0, 100, 60)).label_point(), Pt::new(50, 30));
    }

    #[test]
    fn the_label_of_a_ring_shaped_room_is_not_in_the_island() {
        let shapes = overlay::difference(&[rect(0, 0, 100, 100)], &[rect(20, 20, 60, 60)]);
        assert_eq!(shapes[0].locate(shapes[0].label_point()), Where::Inside);
    }

    #[test]
    fn the_label_of_an_ell_is_in_its_wide_part() {
        let ell = [(0, 0), (100, 0), (100, 10), (40, 10), (40, 80), (0, 80)];
        let shape = Shape::solid(ell.map(Pt::from).to_vec());
        let p = shape.label_point();
        assert!((15..=25).contains(&p.x) && (20..=60).contains(&p.y), "{p:?}");
    }

    #[test]
    fn thin_and_empty_shapes_have_one_too() {
        assert_eq!(Shape::default().label_point(), Pt::new(0, 0));
        assert_eq!(Shape::solid(rect(7, 7, 1, 1)).label_point(), Pt::new(7, 7));
    }

    proptest! {
        #[test]
        fn the_label_lies_inside(a in skyline(), b in skyline(), way in 0u8..8, dx in -5..5, dy in -5..5) {
            let large = |r: &[Pt]| r.iter().map(|p| Pt::new(p.x * 100, p.y * 100)).collect::<Vec<_>>();
            let (a, b) = (large(&a), large(&laid(&b, way, (dx, dy))));
            let shapes = overlay::difference(std::slice::from_ref(&a), std::slice::from_ref(&b));
            for shape in shapes {
                prop_assert_eq!(shape.locate(shape.label_point()), Where::Inside);
            }
        }
    }
}
