//! The pointer in plan space.

use geometry::{Pt, Seg, Vec2};
use measure::Len;

use crate::Mods;

/// Where the pointer is, and how near counts as "on".
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Pointer {
    pub at: Pt,
    pub reach: Len,
    pub mods: Mods,
}

impl Pointer {
    /// A pointer with its position kept within the bounds of a plan and its reach sane.
    pub fn new(at: Pt, reach: Len, mods: Mods) -> Pointer {
        let limit = Len::COORD_LIMIT.units();
        let at = Pt::new(at.x.clamp(-limit, limit), at.y.clamp(-limit, limit));
        let reach = Len::from_units(reach.units().clamp(0, Len::feet_inches(20, 0).units()));
        Pointer { at, reach, mods }
    }

    /// Whether a point lies within reach.
    pub fn reaches(&self, p: Pt) -> bool {
        within(self.at, p, self.reach)
    }
}

/// Whether two points are at most `reach` apart.
pub(crate) fn within(a: Pt, b: Pt, reach: Len) -> bool {
    let r = i64::from(reach.units());
    (a - b).norm2() <= r * r
}

/// Distance between two points, rounded.
pub(crate) fn distance(a: Pt, b: Pt) -> Len {
    Seg::new(a, b).len()
}

/// How far `v` goes along `dir`, rounded; zero for a zero direction. Exact for an axis-parallel direction.
pub(crate) fn along(v: Vec2, dir: Vec2) -> Len {
    let units = match (dir.x, dir.y) {
        (0, 0) => 0,
        (x, 0) => v.x * x.signum(),
        (0, y) => v.y * y.signum(),
        _ => (v.dot(dir) as f64 / dir.norm()).round() as i64,
    };
    Len::from_units(i32::try_from(units).unwrap_or(0))
}

/// `a` plus a displacement, or `None` where that leaves the bounds of a plan.
pub(crate) fn offset(a: Pt, v: Vec2) -> Option<Pt> {
    let x = i32::try_from(i64::from(a.x) + v.x).ok()?;
    let y = i32::try_from(i64::from(a.y) + v.y).ok()?;
    let p = Pt::new(x, y);
    p.in_bounds().then_some(p)
}

/// The bounding box of two points reaches a third, grown by `reach`.
pub(crate) fn box_reaches(seg: Seg, p: Pt, reach: Len) -> bool {
    let r = reach.units();
    p.x >= seg.a.x.min(seg.b.x) - r
        && p.x <= seg.a.x.max(seg.b.x) + r
        && p.y >= seg.a.y.min(seg.b.y) - r
        && p.y <= seg.a.y.max(seg.b.y) + r
}
