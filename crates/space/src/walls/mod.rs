//! Walls as they stand: faces, joined outline, layers, and the stretches left between openings.

mod body;
mod cap;
mod cut;
mod furring;
mod joins;
mod strips;

use geometry::{Bounds, Grid, Pt, Ring, Seg};
use measure::Len;
use plan::element::{BodyKind, Material};
use plan::{Element, ElementId, Plan};

use crate::standing::Standing;

pub(crate) use body::Body;
pub(crate) use cut::Cuts;

/// What a wall is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum WallKind {
    Shell,
    Partition,
    Furring,
}

/// One wall (foundation, partition or furring) with its thickness.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WallFacts {
    pub id: ElementId,
    pub kind: WallKind,
    /// The foundation wall that furring stands against.
    pub host: Option<ElementId>,
    /// The drawn line from `a` to `b` (for furring: the stretch of the host's face).
    pub line: Seg,
    /// The left and the right face, both running from `a` to `b`, before joining.
    pub left: Seg,
    pub right: Seg,
    pub thickness: Len,
    /// From the slab to its top: the height of a foundation wall, the joists for the others.
    pub top: Len,
    /// The body including the wedges that close its corners and tees with other walls, counter-clockwise, openings not cut.
    pub outline: Ring,
    /// The convex pieces left when its openings are cut out, in order along the line.
    pub pieces: Vec<[Pt; 4]>,
    /// The layers from left to right, one convex strip for each, openings not cut.
    pub layers: Vec<LayerStrip>,
}

/// One layer of a wall in the plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LayerStrip {
    pub material: Material,
    pub quad: [Pt; 4],
}

impl WallFacts {
    /// The box in which other walls join it.
    pub(crate) fn body_bounds(&self) -> Bounds {
        body::bounds(self.left, self.right)
    }

    /// Whether it runs along an axis.
    pub(crate) fn is_upright(&self) -> bool {
        self.line.a.x == self.line.b.x || self.line.a.y == self.line.b.y
    }

    /// Its face on a side.
    pub fn face(&self, side: plan::element::Side) -> Seg {
        match side {
            plan::element::Side::Left => self.left,
            plan::element::Side::Right => self.right,
        }
    }
}

/// Every standing wall, by id, and the boxes in which they join.
pub(crate) fn walls(plan: &Plan, standing: &Standing) -> (Vec<WallFacts>, Grid) {
    let walls = standing.of(plan, &[BodyKind::Shell, BodyKind::Partition, BodyKind::Furring]);
    let bodies: Vec<Body> = walls.filter_map(|e| body::one(plan, e)).collect();
    let cuts = Cuts::of(standing.of(plan, &[BodyKind::Door, BodyKind::Window]));
    let grid = Grid::new(bodies.iter().map(Body::bounds).collect());
    let caps = joined(&bodies, &grid, |_| true);
    let walls = bodies.iter().zip(&caps).map(|(body, caps)| one(body, caps, &cuts));
    (walls.collect(), grid)
}

/// The walls at some places of a list, where `among` holds their elements and those of every wall whose box meets
/// theirs, by id. `None` where one of those is no wall.
pub(crate) fn some<'a>(
    plan: &Plan,
    among: impl Iterator<Item = &'a Element>,
    wanted: &[usize],
    cuts: &Cuts,
) -> Option<Vec<WallFacts>> {
    let bodies: Vec<Body> = among.map(|e| body::one(plan, e)).collect::<Option<_>>()?;
    let grid = Grid::new(bodies.iter().map(Body::bounds).collect());
    let caps = joined(&bodies, &grid, |i| wanted.binary_search(&i).is_ok());
    Some(wanted.iter().map(|&i| one(&bodies[i], &caps[i], cuts)).collect())
}

/// The box in which other walls would join an element, where it is a wall.
pub(crate) fn bounds(plan: &Plan, element: &Element) -> Option<Bounds> {
    body::one(plan, element).map(|body| body.bounds())
}

/// The ends of walls, right for those that are wanted.
fn joined(bodies: &[Body], grid: &Grid, wanted: impl Fn(usize) -> bool) -> Vec<[cap::Cap; 2]> {
    let mut caps = joins::caps(bodies, grid, wanted);
    furring::join(bodies, &mut caps);
    caps
}

fn one(body: &Body, caps: &[cap::Cap; 2], cuts: &Cuts) -> WallFacts {
    let cuts = cut::along(body, cuts.along(body.host.unwrap_or(body.id)));
    WallFacts {
        id: body.id,
        kind: body.kind,
        host: body.host,
        line: body.line,
        left: body.left_face,
        right: body.right_face,
        thickness: body.left + body.right,
        top: body.top,
        outline: cap::outline(body, caps),
        pieces: cut::pieces(body, caps, &cuts),
        layers: strips::strips(body, caps),
    }
}

#[cfg(test)]
mod tests;
