//! The distance between two convex pieces, and the places where they are nearest.
//!
//! The squared distance of a point from a segment is a ratio of integers: `cross² / length²` where
//! the foot of the perpendicular falls on the segment, else the squared distance to an end. Ratios
//! are compared exactly (see [`crate::wide`]), so the least one is the least one.
//!
//! Degenerate pieces: one point is a point, two are a segment; an empty piece is infinitely far.

use std::cmp::Ordering;

use measure::Len;

use crate::wide::cmp_ratios;
use crate::{Pt, Seg, Where, line_crossing, locate, nearest_on, ring::edges, segs_touch};

/// The narrowest place between two pieces.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Gap {
    /// A nearest point of the first piece, rounded to the grid.
    pub from: Pt,
    /// A nearest point of the second piece, rounded to the grid.
    pub to: Pt,
    /// The distance, rounded down: never more than the true one. Zero when the pieces touch or
    /// overlap; [`Gap::FAR`]'s when a piece is empty.
    pub len: Len,
}

impl Gap {
    /// The gap to an empty piece.
    pub const FAR: Gap =
        Gap { from: Pt::new(0, 0), to: Pt::new(0, 0), len: Len::from_units(i32::MAX) };
}

/// The gap between two convex pieces. Where the nearest places form a stretch (parallel faces), the
/// middle of the stretch is given.
pub fn gap(a: &[Pt], b: &[Pt]) -> Gap {
    if a.is_empty() || b.is_empty() {
        return Gap::FAR;
    }
    if let Some(p) = common_point(a, b) {
        return Gap { from: p, to: p, len: Len::ZERO };
    }
    let mut best: Option<Reach> = None;
    let mut ties: Vec<(Pt, Pt)> = Vec::new();
    let mut offer = |reach: Reach, from: Pt, to: Pt| {
        let order = best.map_or(Ordering::Less, |b| reach.cmp(b));
        if order == Ordering::Less {
            best = Some(reach);
            ties.clear();
        }
        if order != Ordering::Greater {
            ties.push((from, to));
        }
    };
    for &p in a {
        for e in edges(b) {
            offer(Reach::of(p, e), p, nearest_on(e, p));
        }
    }
    for &p in b {
        for e in edges(a) {
            offer(Reach::of(p, e), nearest_on(e, p), p);
        }
    }
    let (from, to) = middle(&ties);
    Gap { from, to, len: best.map_or(Gap::FAR.len, Reach::len) }
}

/// Whether the distance of two convex pieces is less than `limit`. Exact; a distance of just `limit`
/// is not closer. Pieces that touch are closer than any positive limit.
pub fn closer_than(a: &[Pt], b: &[Pt], limit: Len) -> bool {
    if limit <= Len::ZERO || a.is_empty() || b.is_empty() {
        return false;
    }
    let below = |p: Pt, e: Seg| Reach::of(p, e).is_below(limit);
    a.iter().any(|&p| edges(b).any(|e| below(p, e)))
        || b.iter().any(|&p| edges(a).any(|e| below(p, e)))
        || common_point(a, b).is_some()
}

/// A point that both closed pieces hold, if they have one: crossings are rounded to the grid.
fn common_point(a: &[Pt], b: &[Pt]) -> Option<Pt> {
    for s in edges(a) {
        for t in edges(b) {
            if segs_touch(s, t) {
                return Some(touch_point(s, t));
            }
        }
    }
    // No edges meet, so one piece lies wholly inside the other, or they are apart.
    if locate(a[0], b) == Where::Inside {
        Some(a[0])
    } else if locate(b[0], a) == Where::Inside {
        Some(b[0])
    } else {
        None
    }
}

/// A common point of two segments that touch: an end where an end lies on the other, else the crossing.
fn touch_point(s: Seg, t: Seg) -> Pt {
    let on = |p: Pt, e: Seg| segs_touch(Seg::new(p, p), e);
    if on(t.a, s) {
        t.a
    } else if on(t.b, s) {
        t.b
    } else if on(s.a, t) {
        s.a
    } else if on(s.b, t) {
        s.b
    } else {
        line_crossing(s, t).unwrap_or(s.a)
    }
}

/// The middle of the pairs that are equally near: of the two that lie farthest apart.
fn middle(ties: &[(Pt, Pt)]) -> (Pt, Pt) {
    let Some(&first) = ties.first() else { return (Gap::FAR.from, Gap::FAR.to) };
    let low = ties.iter().copied().min().unwrap_or(first);
    let high = ties.iter().copied().max().unwrap_or(first);
    (low.0.midway(high.0), low.1.midway(high.1))
}

/// A squared distance, `num / den` square units.
#[derive(Clone, Copy)]
struct Reach {
    num: u128,
    den: u128,
}

impl Reach {
    fn of(p: Pt, e: Seg) -> Reach {
        let (d, from_a) = (e.dir(), p - e.a);
        let (along, length2) = (from_a.dot(d), d.norm2());
        if along <= 0 {
            Reach::whole(from_a.norm2())
        } else if along >= length2 {
            Reach::whole((p - e.b).norm2())
        } else {
            let off = u128::from(d.cross(from_a).unsigned_abs());
            Reach { num: off * off, den: u128::from(length2.unsigned_abs()) }
        }
    }

    fn whole(square: i64) -> Reach {
        Reach { num: u128::from(square.unsigned_abs()), den: 1 }
    }

    fn cmp(self, other: Reach) -> Ordering {
        cmp_ratios((self.num, self.den), (other.num, other.den))
    }

    /// Whether the distance is less than a positive limit.
    fn is_below(self, limit: Len) -> bool {
        let limit = u128::from(limit.units().unsigned_abs());
        // At most 2^62 * 2^63.
        self.num < limit * limit * self.den
    }

    /// The distance, rounded down.
    fn len(self) -> Len {
        let root = (self.num / self.den).isqrt();
        Len::from_units(i32::try_from(root).unwrap_or(i32::MAX))
    }
}
