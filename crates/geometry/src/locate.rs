//! On which side of a ring a point lies.

use crate::{Pt, Shape, orient, ring::edges};

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
    for e in edges(ring) {
        let side = orient(e.a, e.b, p);
        if side == 0
            && (e.a.x.min(e.b.x)..=e.a.x.max(e.b.x)).contains(&p.x)
            && (e.a.y.min(e.b.y)..=e.a.y.max(e.b.y)).contains(&p.y)
        {
            return Where::OnEdge;
        }
        let up = e.a.y <= p.y && p.y < e.b.y;
        let down = e.b.y <= p.y && p.y < e.a.y;
        if (up && side > 0) || (down && side < 0) {
            inside = !inside;
        }
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
