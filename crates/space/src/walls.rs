//! Walls as they stand: faces, joined outline, layers, and the stretches left between openings.

use geometry::{Pt, Ring, Seg};
use measure::Len;
use plan::ElementId;
use plan::element::Material;

/// One wall (foundation, partition or furring) with its thickness.
#[derive(Clone, Debug)]
pub struct WallFacts {
    pub id: ElementId,
    /// The drawn line from `a` to `b` (for furring: the stretch of the host's face).
    pub line: Seg,
    /// The left and the right face, both running from `a` to `b`, before joining.
    pub left: Seg,
    pub right: Seg,
    pub thickness: Len,
    /// The body including the wedges that close its corners and tees with other walls, counter-clockwise, openings not cut.
    pub outline: Ring,
    /// The convex pieces left when its openings are cut out, in order along the line.
    pub pieces: Vec<[Pt; 4]>,
    /// The layers from left to right, one convex strip for each, openings not cut.
    pub layers: Vec<LayerStrip>,
}

/// One layer of a wall in the plan.
#[derive(Clone, Debug)]
pub struct LayerStrip {
    pub material: Material,
    pub quad: [Pt; 4],
}
