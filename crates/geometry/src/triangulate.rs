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
