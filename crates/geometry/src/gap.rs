//! The distance between two convex pieces, and the places where they are nearest.
//!
//! The squared distance of a point from a segment is a ratio of integers: `cross² / length²` where
//! the foot of the perpendicular falls on the segment, else the squared distance to an end. Ratios
//! are compared exactly (see [`crate::reach`]), so the least one is the least one.
//!
//! Degenerate pieces: one point is a point, two are a segment; an empty piece is infinitely far.

use std::cmp::Ordering;

use measure::Len;

use crate::reach::Reach;
use crate::{Bounds, Pt, Seg, Where, line_crossing, locate, nearest_on, ring::edges, segs_touch};

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
    // Corner and edge of the other piece, for all pairs that are equally near.
    let mut best = Reach::of(a[0], Seg::new(b[0], b[0]));
    let mut ties: Vec<(Pt, Seg, bool)> = Vec::new();
    for (p, e, of_a) in corners_and_edges(a, b) {
        let reach = Reach::of(p, e);
        let order = reach.cmp(&best);
        if order == Ordering::Less {
            best = reach;
            ties.clear();
        }
        if order != Ordering::Greater {
            ties.push((p, e, of_a));
        }
    }
    let places = ties.into_iter().map(|(p, e, of_a)| {
        let foot = nearest_on(e, p);
        if of_a { (p, foot) } else { (foot, p) }
    });
    let (from, to) = middle(places);
    Gap { from, to, len: best.len() }
}

/// Every corner of one piece with every edge of the other, and whether the corner is of `a`.
fn corners_and_edges<'a>(a: &'a [Pt], b: &'a [Pt]) -> impl Iterator<Item = (Pt, Seg, bool)> + 'a {
    let of_a = a.iter().flat_map(move |&p| edges(b).map(move |e| (p, e, true)));
    let of_b = b.iter().flat_map(move |&p| edges(a).map(move |e| (p, e, false)));
    of_a.chain(of_b)
}

/// Whether the distance of two convex pieces is less than `limit`. Exact; a distance of just `limit`
/// is not closer. Pieces that touch are closer than any positive limit.
pub fn closer_than(a: &[Pt], b: &[Pt], limit: Len) -> bool {
    if limit <= Len::ZERO || a.is_empty() || b.is_empty() {
        return false;
    }
    if !Bounds::of(a).grow(limit).meets(Bounds::of(b)) {
        return false;
    }
    corners_and_edges(a, b).any(|(p, e, _)| Reach::of(p, e).is_below(limit))
        || common_point(a, b).is_some()
}

/// A point that both closed pieces hold, if they have one: crossings are rounded to the grid.
fn common_point(a: &[Pt], b: &[Pt]) -> Option<Pt> {
    if !Bounds::of(a).meets(Bounds::of(b)) {
        return None;
    }
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

/// The middle of the pairs that are equally near: of the two that lie farthest apart. The nearest
/// places of convex pieces form one stretch, along which pairs go in order.
fn middle(pairs: impl Iterator<Item = (Pt, Pt)>) -> (Pt, Pt) {
    let ends = pairs.fold(None, |ends: Option<((Pt, Pt), (Pt, Pt))>, pair| match ends {
        None => Some((pair, pair)),
        Some((low, high)) => Some((low.min(pair), high.max(pair))),
    });
    let (low, high) = ends.unwrap_or_default();
    (low.0.midway(high.0), low.1.midway(high.1))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample::{FAR, any_piece, laid, piece, polygon, rect};
    use crate::{Ring, Vec2};
    use geo::{Coord, Distance, Euclidean, LineString, Polygon};
    use proptest::prelude::*;

    fn inches_rect(x: i32, y: i32, w: i32, h: i32) -> Ring {
        rect(x * Len::PER_INCH, y * Len::PER_INCH, w * Len::PER_INCH, h * Len::PER_INCH)
    }

    fn moved(ring: &[Pt], x: i32, y: i32) -> Ring {
        laid(ring, 0, (x, y))
    }

    #[test]
    fn a_gap_of_just_the_limit_is_not_closer_and_one_unit_less_is() {
        let (wall, limit) = (inches_rect(0, 0, 4, 120), Len::inches(36));
        let at_36 = inches_rect(40, 30, 30, 30);
        assert!(!closer_than(&wall, &at_36, limit));
        assert!(closer_than(&wall, &moved(&at_36, -1, 0), limit));
        assert!(closer_than(&wall, &inches_rect(39, 30, 30, 30), limit));
        assert_eq!(gap(&wall, &at_36).len, limit);
        assert_eq!(gap(&wall, &moved(&at_36, -1, 0)).len, limit - Len::UNIT);
        assert_eq!(gap(&wall, &inches_rect(39, 30, 30, 30)).len, Len::inches(35));
    }

    #[test]
    fn the_limit_is_met_exactly_in_a_skew_direction_too() {
        // Corner to corner along 3-4-5.
        let (a, unit) = (rect(-10, -10, 10, 10), 8_128);
        let b = rect(3 * unit, 4 * unit, 10, 10);
        let limit = Len::from_units(5 * unit);
        assert_eq!(gap(&a, &b), Gap { from: Pt::new(0, 0), to: b[0], len: limit });
        assert!(!closer_than(&a, &b, limit) && closer_than(&a, &b, limit + Len::UNIT));
        assert!(closer_than(&a, &moved(&b, -1, 0), limit));
        // Corner to a skew face: the line 3x + 4y = 25 u is 5 u from the origin.
        let face = [Pt::new(-5 * unit, 10 * unit), Pt::new(15 * unit, -5 * unit)];
        assert!(!closer_than(&[Pt::new(0, 0)], &face, limit));
        assert!(closer_than(&[Pt::new(1, 0)], &face, limit));
        assert_eq!(gap(&[Pt::new(1, 0)], &face).len, limit - Len::UNIT);
    }

    #[test]
    fn pieces_that_touch_or_overlap_have_no_gap() {
        let a = rect(0, 0, 10, 10);
        for b in
            [rect(10, 3, 5, 5), rect(10, 10, 5, 5), rect(2, 2, 3, 3), rect(5, -5, 2, 40), a.clone()]
        {
            let g = gap(&a, &b);
            assert_eq!((g.len, g.from), (Len::ZERO, g.to), "{b:?}");
            assert!(locate(g.from, &a) != Where::Outside && locate(g.from, &b) != Where::Outside);
            assert!(closer_than(&a, &b, Len::UNIT) && closer_than(&b, &a, Len::UNIT));
            assert!(!closer_than(&a, &b, Len::ZERO));
        }
    }

    #[test]
    fn between_parallel_faces_the_middle_is_given() {
        let (a, b) = (rect(0, 0, 10, 100), rect(50, 20, 10, 40));
        let g = gap(&a, &b);
        assert_eq!((g.from, g.to), (Pt::new(10, 40), Pt::new(50, 40)));
    }

    #[test]
    fn points_segments_and_nothing() {
        let (p, q) = (Pt::new(0, 0), Pt::new(0, 7));
        assert_eq!(gap(&[p], &[q]), Gap { from: p, to: q, len: Len::from_units(7) });
        assert_eq!(gap(&[p, q], &[Pt::new(4, 3)]).len, Len::from_units(4));
        assert_eq!(gap(&[], &[p]), Gap::FAR);
        assert!(!closer_than(&[], &[p], Len::from_units(i32::MAX)));
    }

    /// The same question asked of the `geo` crate, in floats.
    fn by_geo(a: &[Pt], b: &[Pt]) -> f64 {
        let line = |ring: &[Pt]| -> LineString {
            ring.iter().map(|p| Coord { x: f64::from(p.x), y: f64::from(p.y) }).collect()
        };
        let polygon = |ring: &[Pt]| Polygon::new(line(ring), vec![]);
        Euclidean.distance(&polygon(a), &polygon(b))
    }

    fn any_polygon() -> impl Strategy<Value = Ring> {
        prop_oneof![polygon(6), polygon(1_000), polygon(40_000_000), polygon(FAR)]
    }

    /// The least distance of points sampled along the edges, an upper bound.
    fn by_sampling(a: &[Pt], b: &[Pt]) -> f64 {
        let points = |ring: &[Pt]| -> Vec<(f64, f64)> {
            let along = |e: Seg| {
                let Vec2 { x, y } = e.dir();
                (0..=40).map(move |i| {
                    let part = f64::from(i) / 40.0;
                    (f64::from(e.a.x) + x as f64 * part, f64::from(e.a.y) + y as f64 * part)
                })
            };
            edges(ring).flat_map(along).collect()
        };
        let (p, q) = (points(a), points(b));
        let apart =
            |u: &(f64, f64), v: &(f64, f64)| ((u.0 - v.0).powi(2) + (u.1 - v.1).powi(2)).sqrt();
        p.iter().flat_map(|u| q.iter().map(move |v| apart(u, v))).fold(f64::INFINITY, f64::min)
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(400))]

        /// The rounded-down length and the exact test agree to the unit, on all sizes.
        #[test]
        fn the_exact_test_flips_at_the_length(a in any_piece(), b in any_piece()) {
            let len = gap(&a, &b).len;
            prop_assert!(!closer_than(&a, &b, len));
            prop_assert!(closer_than(&a, &b, len + Len::UNIT));
        }

        #[test]
        fn the_length_agrees_with_geo(a in any_polygon(), b in any_polygon()) {
            let (len, reference) = (f64::from(gap(&a, &b).len.units()), by_geo(&a, &b));
            prop_assert!(len <= reference + 1e-3 && reference < len + 1.001, "{} {}", len, reference);
        }

        #[test]
        fn no_sampled_pair_is_nearer(a in piece(200), b in piece(200), dx in -400..400, dy in -400..400) {
            let b = moved(&b, dx, dy);
            let len = gap(&a, &b).len;
            let sampled = by_sampling(&a, &b);
            prop_assert!(f64::from(len.units()) <= sampled + 1e-9);
            if len > Len::ZERO {
                // A side is at most 566 units, so a sample lies within 7.1 of the nearest place on each.
                prop_assert!(sampled <= f64::from(len.units()) + 1.0 + 15.0);
            }
        }

        #[test]
        fn the_places_lie_on_the_pieces_at_that_distance(a in any_piece(), b in any_piece()) {
            let g = gap(&a, &b);
            prop_assert!(gap(&[g.from], &a).len <= Len::UNIT);
            prop_assert!(gap(&[g.to], &b).len <= Len::UNIT);
            let apart = (g.to - g.from).norm();
            prop_assert!((apart - f64::from(g.len.units())).abs() <= 2.5, "{:?} {}", g, apart);
        }

        #[test]
        fn the_length_does_not_depend_on_order_or_on_how_the_plan_lies(
            a in piece(3_000), b in piece(3_000), way in 0u8..8, dx in -900_000..900_000, dy in -900_000..900_000,
        ) {
            let there = |r: &[Pt]| laid(r, way, (dx, dy));
            let len = gap(&a, &b).len;
            prop_assert_eq!(gap(&b, &a).len, len);
            prop_assert_eq!(gap(&there(&a), &there(&b)).len, len);
        }
    }
}
