//! Convex pieces: hull, overlap and clip.
//!
//! Convention: a convex piece is a slice of its corners in order, clockwise or counter-clockwise;
//! repeated and collinear points are allowed. One point is a point, two are a segment.

use crate::{Pt, Ring, Seg, line_crossing, locate, orient, ring::edges, twice_area};

/// The convex hull: counter-clockwise, from the leftmost lowest point, without collinear points.
/// Fewer than three points come back when all lie on one line.
///
/// Andrew's monotone chain (A. M. Andrew, 1979), with exact orientation tests.
pub fn convex_hull(points: &[Pt]) -> Ring {
    let mut sorted = points.to_vec();
    sorted.sort_unstable();
    sorted.dedup();
    if sorted.len() < 3 {
        return sorted;
    }
    let mut hull: Ring = Vec::with_capacity(sorted.len() + 1);
    extend_chain(&mut hull, 0, sorted.iter());
    let lower = hull.len() - 1;
    hull.pop();
    extend_chain(&mut hull, lower, sorted.iter().rev());
    hull.pop();
    hull
}

/// Appends points while keeping left turns in `hull[from..]`.
fn extend_chain<'a>(hull: &mut Ring, from: usize, points: impl Iterator<Item = &'a Pt>) {
    for &p in points {
        while hull.len() >= from + 2 && orient(hull[hull.len() - 2], hull[hull.len() - 1], p) <= 0 {
            hull.pop();
        }
        hull.push(p);
    }
}

/// Whether the interiors of two convex pieces meet. Touching does not count; a piece without area
/// has no interior.
///
/// Separating axes: two convex polygons are apart when an edge of one has all of the other on its
/// outer side or on itself.
pub fn convex_overlap(a: &[Pt], b: &[Pt]) -> bool {
    let (turn_a, turn_b) = (twice_area(a).signum() as i64, twice_area(b).signum() as i64);
    turn_a != 0 && turn_b != 0 && !parted(a, turn_a, b) && !parted(b, turn_b, a)
}

/// Whether an edge of `a` has all of `b` outside or on it. `turn` is +1 for a counter-clockwise `a`.
fn parted(a: &[Pt], turn: i64, b: &[Pt]) -> bool {
    edges(a).filter(|e| e.a != e.b).any(|e| b.iter().all(|&p| orient(e.a, e.b, p) * turn <= 0))
}

/// The common part of two convex pieces, counter-clockwise; empty when it has no area.
///
/// Its corners are corners of one piece inside the other, and crossings of edges, each rounded once
/// to the grid; the hull of them is the result, so it is convex whatever the rounding did.
pub fn convex_clip(a: &[Pt], b: &[Pt]) -> Ring {
    if !convex_overlap(a, b) {
        return Ring::new();
    }
    let inside = |p: &&Pt, ring: &[Pt]| locate(**p, ring) != crate::Where::Outside;
    let mut corners: Ring = a.iter().filter(|p| inside(p, b)).copied().collect();
    corners.extend(b.iter().filter(|p| inside(p, a)));
    for s in edges(a) {
        corners
            .extend(edges(b).filter(|&t| cross_inside(s, t)).filter_map(|t| line_crossing(s, t)));
    }
    let hull = convex_hull(&corners);
    if hull.len() < 3 { Ring::new() } else { hull }
}

/// Whether two segments cross at a point that is an end of neither.
fn cross_inside(s: Seg, t: Seg) -> bool {
    let opposite = |p: i64, q: i64| (p > 0 && q < 0) || (p < 0 && q > 0);
    opposite(orient(s.a, s.b, t.a), orient(s.a, s.b, t.b))
        && opposite(orient(t.a, t.b, s.a), orient(t.a, t.b, s.b))
}
