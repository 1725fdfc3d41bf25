//! The peer: a segment Voronoi diagram, on which a widest way could be sought.

use boostvoronoi::prelude::{Builder, Line};
use geometry::{Bounds, Ring, edges, overlay};
use measure::Len;

pub type Segment = Line<i32>;

/// The border of the free floor within a frame: it crosses nothing, as the library asks.
pub fn segments(rings: &[Ring]) -> Vec<Segment> {
    let frame = Bounds::of(rings.iter().flatten()).grow(Len::feet_inches(10, 0)).ring();
    let free = overlay::difference(&[frame], rings);
    let borders = free.iter().flat_map(|s| std::iter::once(&s.outer).chain(&s.holes));
    borders
        .flat_map(|ring| edges(ring))
        .map(|e| Segment::from([e.a.x, e.a.y, e.b.x, e.b.y]))
        .collect()
}

/// Builds the diagram; gives its number of edges.
pub fn diagram(segments: &[Segment]) -> usize {
    let builder = Builder::<i32>::default().with_segments(segments.iter());
    let diagram = builder.and_then(Builder::build).expect("segments that do not cross");
    diagram.edges().len()
}
