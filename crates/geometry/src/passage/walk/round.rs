//! Whether a round person has room along a leg and round a corner, in floats.

use super::angle::{Xy, is_reflex};
use super::leg::Leg;
use crate::Pt;

/// What a distance in units may be off by.
const HAIR: f64 = 1e-3;

/// Whether a leg stays `radius` away from a piece.
pub(super) fn is_free(leg: &Leg, ring: &[Pt], radius: f64, origin: Pt) -> bool {
    let room = radius - HAIR;
    let at = |i: usize| Xy::new(ring[i % ring.len()], origin);
    let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
    for i in 0..ring.len() {
        let off = leg.along.cross(at(i).minus(leg.from));
        (low, high) = (low.min(off), high.max(off));
    }
    if low >= room || high <= -room {
        return true;
    }
    (0..ring.len()).all(|i| {
        let (p, q) = (at(i), at(i + 1));
        // The nearest places of two segments that do not cross are at an end of one.
        let ends = to_segment(leg.from, p, q).min(to_segment(leg.to, p, q));
        ends >= room && to_segment(p, leg.from, leg.to) >= room && !cross(leg.from, leg.to, p, q)
    }) && !holds(ring, leg.from, origin)
}

/// Whether the arc round a corner, from the direction of one leg to that of another, stays `radius` away
/// from a piece. The ends of the arc are those of legs, so they are known to be free: then a piece
/// that is too near is nearest at a corner, or at the foot on an edge, seen from the arc's centre.
pub(super) fn arc_is_free(
    arc: (Xy, Xy, Xy),
    side: f64,
    ring: &[Pt],
    radius: f64,
    origin: Pt,
) -> bool {
    let (centre, u, v) = arc;
    // Outwards from the corner, where the arc is: to the right of a leg with the piece to its left.
    let (first, last) = (u.right().times(side), v.right().times(side));
    let too_near = |p: Xy| {
        let out = p.minus(centre);
        let far = out.norm();
        let between = |a: Xy, b: Xy| side * a.cross(out) > 0.0 && side * out.cross(b) > 0.0;
        let on_arc =
            if is_reflex(u, v, side) { !between(last, first) } else { between(first, last) };
        far > HAIR && far < 2.0 * radius - HAIR && on_arc
    };
    let at = |i: usize| Xy::new(ring[i % ring.len()], origin);
    (0..ring.len()).all(|i| {
        let (p, q) = (at(i), at(i + 1));
        !too_near(p) && !too_near(foot(centre, p, q))
    })
}

/// The point of a segment nearest to a point.
fn foot(p: Xy, a: Xy, b: Xy) -> Xy {
    let d = b.minus(a);
    let square = d.dot(d);
    let part = if square > 0.0 { (p.minus(a).dot(d) / square).clamp(0.0, 1.0) } else { 0.0 };
    a.plus(d, part)
}

fn to_segment(p: Xy, a: Xy, b: Xy) -> f64 {
    p.minus(foot(p, a, b)).norm()
}

fn cross(a: Xy, b: Xy, p: Xy, q: Xy) -> bool {
    let side = |a: Xy, b: Xy, p: Xy| b.minus(a).cross(p.minus(a)) > 0.0;
    side(a, b, p) != side(a, b, q) && side(p, q, a) != side(p, q, b)
}

/// Whether a counter-clockwise piece holds a point.
fn holds(ring: &[Pt], p: Xy, origin: Pt) -> bool {
    let at = |i: usize| Xy::new(ring[i % ring.len()], origin);
    ring.len() > 2 && (0..ring.len()).all(|i| at(i + 1).minus(at(i)).cross(p.minus(at(i))) > 0.0)
}
