//! Triangles that fill a polygon with holes, for painting only: ear clipping in floats, by `geo`.

use geo::{Coord, LineString, Polygon, TriangulateEarcut};

/// The triangles that fill a polygon: `rings[0]` is the outer ring, the others are holes; any winding,
/// first points not repeated. Gives the vertices, and three indices into them for every triangle.
/// A polygon with fewer than three points, or with a coordinate that is not finite, gives none;
/// so does a hole with fewer than three points, which is left out.
pub fn triangulate(rings: &[Vec<[f64; 2]>]) -> (Vec<[f64; 2]>, Vec<[u32; 3]>) {
    let none = (Vec::new(), Vec::new());
    let Some((outer, holes)) = rings.split_first() else { return none };
    let finite = rings.iter().flatten().flatten().all(|v| v.is_finite());
    if outer.len() < 3 || !finite {
        return none;
    }
    let line = |ring: &Vec<[f64; 2]>| -> LineString {
        ring.iter().map(|&[x, y]| Coord { x, y }).collect()
    };
    let holes = holes.iter().filter(|hole| hole.len() >= 3).map(line).collect();
    let raw = Polygon::new(line(outer), holes).earcut_triangles_raw();
    let triangles = raw.triangle_indices.chunks_exact(3);
    let triangles = triangles.map(|t| [t[0] as u32, t[1] as u32, t[2] as u32]).collect();
    (raw.vertices, triangles)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::overlay;
    use crate::sample::{laid, skyline};
    use crate::{Ring, Shape};
    use proptest::prelude::*;

    fn floats(ring: &Ring) -> Vec<[f64; 2]> {
        ring.iter().map(|p| [f64::from(p.x), f64::from(p.y)]).collect()
    }

    fn filled(rings: &[Vec<[f64; 2]>]) -> f64 {
        let (vertices, triangles) = triangulate(rings);
        let area = |t: &[u32; 3]| {
            let [a, b, c] = t.map(|i| vertices[i as usize]);
            ((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])).abs() / 2.0
        };
        triangles.iter().map(area).sum()
    }

    #[test]
    fn what_cannot_be_filled_gives_no_triangles() {
        let square = vec![[0.0, 0.0], [1.0, 0.0], [1.0, 1.0], [0.0, 1.0]];
        assert_eq!(triangulate(&[]).1.len(), 0);
        assert_eq!(triangulate(&[vec![[0.0, 0.0], [1.0, 1.0]]]).1.len(), 0);
        assert_eq!(triangulate(&[square.clone(), vec![[f64::NAN, 0.0]]]).1.len(), 0);
        assert_eq!(triangulate(std::slice::from_ref(&square)).1.len(), 2);
        assert_eq!(triangulate(&[square, vec![[0.5, 0.5]]]).1.len(), 2);
    }

    proptest! {
        /// The triangles cover the polygon: their areas sum to its area.
        #[test]
        fn triangles_fill_shapes_with_islands(a in skyline(), b in skyline(), way in 0u8..8) {
            let big = vec![(-20, -20), (20, -20), (20, 20), (-20, 20)];
            let big: Ring = big.into_iter().map(Into::into).collect();
            let holes = [laid(&a, way, (-5, -3)), laid(&b, way ^ 5, (6, 7))];
            for shape in overlay::difference(&[big], &holes) {
                let Shape { outer, holes } = &shape;
                let rings: Vec<_> = std::iter::once(outer).chain(holes).map(floats).collect();
                let area = shape.area().square_units() as f64;
                prop_assert!((filled(&rings) - area).abs() < 1e-6);
            }
        }
    }
}
