//! Convex pieces: hull, overlap and clip.
//!
//! Convention: a convex piece is a slice of its corners in order, clockwise or counter-clockwise;
//! repeated and collinear points are allowed. One point is a point, two are a segment.

use crate::{Bounds, Pt, Ring, Seg, line_crossing, locate, orient, ring::edges, twice_area};

/// The convex hull: counter-clockwise, from the leftmost lowest point, without collinear points.
/// Fewer than three points come back when all lie on one line.
///
/// Andrew's monotone chain (A. M. Andrew, 1979), with exact orientation tests.
pub fn convex_hull(points: &[Pt]) -> Ring {
    if let Some(first) = start_of_convex(points) {
        return [&points[first..], &points[..first]].concat();
    }
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

/// Where the leftmost lowest corner of a ring is that is convex and counter-clockwise, without collinear points; `None`
/// for other points. A ring that turns left at each corner goes round once where it has one leftmost corner.
fn start_of_convex(points: &[Pt]) -> Option<usize> {
    let n = points.len();
    let mut first = None;
    for i in 0..n {
        let (before, p, after) = (points[(i + n - 1) % n], points[i], points[(i + 1) % n]);
        if orient(before, p, after) <= 0 {
            return None;
        }
        if p < before && p < after && first.replace(i).is_some() {
            return None;
        }
    }
    first
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
    match (upright_box(a), upright_box(b)) {
        (Some(a), Some(b)) => common_box(a, b).is_some(),
        _ => pieces_overlap(a, b),
    }
}

fn pieces_overlap(a: &[Pt], b: &[Pt]) -> bool {
    let (turn_a, turn_b) = (twice_area(a).signum() as i64, twice_area(b).signum() as i64);
    turn_a != 0 && turn_b != 0 && !parted(a, turn_a, b) && !parted(b, turn_b, a)
}

/// The box that a ring of four corners is, where its sides run along the axes and it has an area: most pieces of plans
/// are such.
fn upright_box(ring: &[Pt]) -> Option<Bounds> {
    let [a, b, c, d] = ring else { return None };
    let across = a.x == b.x && b.y == c.y && c.x == d.x && d.y == a.y;
    let along = a.y == b.y && b.x == c.x && c.y == d.y && d.x == a.x;
    ((across || along) && a.x != c.x && a.y != c.y).then(|| Bounds::of([a, c]))
}

/// What two boxes have in common, if that has an area.
fn common_box(a: Bounds, b: Bounds) -> Option<Bounds> {
    let min = Pt::new(a.min.x.max(b.min.x), a.min.y.max(b.min.y));
    let max = Pt::new(a.max.x.min(b.max.x), a.max.y.min(b.max.y));
    (min.x < max.x && min.y < max.y).then_some(Bounds { min, max })
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
    match (upright_box(a), upright_box(b)) {
        (Some(a), Some(b)) => common_box(a, b).map_or_else(Ring::new, Bounds::ring),
        _ => clip_pieces(a, b),
    }
}

fn clip_pieces(a: &[Pt], b: &[Pt]) -> Ring {
    if !pieces_overlap(a, b) {
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Where;
    use crate::sample::{any_piece, laid, piece, point, polygon, rect};
    use proptest::prelude::*;

    #[test]
    fn touching_is_no_overlap_and_one_unit_is() {
        let a = rect(0, 0, 10, 10);
        assert!(!convex_overlap(&a, &rect(10, 0, 10, 10)));
        assert!(!convex_overlap(&a, &rect(10, 10, 10, 10)));
        assert!(convex_overlap(&a, &rect(9, 9, 10, 10)));
        assert!(convex_overlap(&a, &rect(2, 2, 3, 3)));
        assert!(convex_overlap(&a, &a));
    }

    #[test]
    fn what_has_no_area_overlaps_nothing() {
        let a = rect(0, 0, 10, 10);
        assert!(!convex_overlap(&a, &[Pt::new(5, 5)]));
        assert!(!convex_overlap(&a, &[Pt::new(-5, 5), Pt::new(50, 5)]));
        assert!(!convex_overlap(&[], &a));
        assert_eq!(convex_clip(&a, &[Pt::new(-5, 5), Pt::new(50, 5)]), []);
    }

    #[test]
    fn repeated_and_collinear_points_do_not_matter() {
        let plain = rect(0, 0, 10, 10);
        let rich = vec![
            Pt::new(0, 0),
            Pt::new(5, 0),
            Pt::new(5, 0),
            Pt::new(10, 0),
            Pt::new(10, 10),
            Pt::new(0, 10),
        ];
        for b in [rect(9, 9, 5, 5), rect(10, 0, 5, 5), rect(3, 3, 1, 1)] {
            assert_eq!(convex_overlap(&plain, &b), convex_overlap(&rich, &b));
            assert_eq!(convex_clip(&plain, &b), convex_clip(&rich, &b));
        }
    }

    #[test]
    fn clip_of_boxes_is_exact() {
        assert_eq!(convex_clip(&rect(0, 0, 10, 10), &rect(6, 7, 10, 10)), rect(6, 7, 4, 3));
        assert_eq!(convex_clip(&rect(0, 0, 10, 10), &rect(2, -5, 3, 30)), rect(2, 0, 3, 10));
        assert_eq!(convex_clip(&rect(0, 0, 10, 10), &rect(10, 0, 3, 3)), []);
    }

    #[test]
    fn hull_leaves_out_what_is_inside_or_on_an_edge() {
        let mut points = rect(0, 0, 4, 4);
        points.extend([Pt::new(2, 0), Pt::new(2, 2), Pt::new(4, 4), Pt::new(0, 3)]);
        assert_eq!(convex_hull(&points), rect(0, 0, 4, 4));
        assert_eq!(convex_hull(&[]), []);
        let line = [Pt::new(3, 3), Pt::new(1, 1), Pt::new(2, 2)];
        assert_eq!(convex_hull(&line), [Pt::new(1, 1), Pt::new(3, 3)]);
    }

    #[test]
    fn a_star_that_goes_round_twice_is_no_hull() {
        let star = [(0, 30), (-18, -25), (29, 9), (-29, 9), (18, -25)].map(Pt::from);
        let turns = |i: usize| orient(star[i], star[(i + 1) % 5], star[(i + 2) % 5]);
        assert!((0..5).all(|i| turns(i) > 0), "each corner turns left");
        let hull = [(-29, 9), (-18, -25), (18, -25), (29, 9), (0, 30)].map(Pt::from);
        assert_eq!(convex_hull(&star), hull);
        assert_eq!(convex_hull(&hull), hull);
    }

    proptest! {
        /// Boxes along the axes are overlapped and clipped as any pieces are.
        #[test]
        fn boxes_are_pieces_too(
            corners in prop::collection::vec((-6i32..6, -6i32..6), 4),
            turned in (0usize..4, 0usize..4),
            reversed in any::<(bool, bool)>(),
        ) {
            let ring = |i: usize, turned: usize, reversed: bool| {
                let corners = corners[i..i + 2].iter().map(|(x, y)| Pt::new(*x, *y));
                let mut ring = Bounds::of(corners).ring();
                ring.rotate_left(turned);
                if reversed {
                    ring.reverse();
                }
                ring
            };
            let (a, b) = (ring(0, turned.0, reversed.0), ring(2, turned.1, reversed.1));
            prop_assert_eq!(convex_overlap(&a, &b), pieces_overlap(&a, &b));
            prop_assert_eq!(convex_clip(&a, &b), clip_pieces(&a, &b));
        }

        /// A hull is its own hull, wherever it starts and whichever way it goes round.
        #[test]
        fn the_order_of_the_points_does_not_matter(ring in polygon(40), start in 0usize..9) {
            let hull = convex_hull(&ring);
            let mut turned = hull.clone();
            turned.rotate_left(start % hull.len().max(1));
            prop_assert_eq!(&convex_hull(&turned), &hull);
            turned.reverse();
            prop_assert_eq!(&convex_hull(&turned), &hull);
        }
    }

    /// A rational number with a positive denominator.
    type Ratio = (i128, i128);

    /// Twice the area of the common part, by clipping in rationals with one half-plane after another
    /// (Sutherland and Hodgman, 1974). For coordinates of a few units.
    fn twice_common_area(a: &[Pt], b: &[Pt]) -> f64 {
        let mut b = b.to_vec();
        if twice_area(&b) < 0 {
            b.reverse();
        }
        let mut poly: Vec<(Ratio, Ratio)> =
            a.iter().map(|p| ((p.x.into(), 1), (p.y.into(), 1))).collect();
        for e in edges(&b) {
            let d = e.dir();
            let side = |p: &(Ratio, Ratio)| -> Ratio {
                let (x, y) = (p.0.0 - i128::from(e.a.x) * p.0.1, p.1.0 - i128::from(e.a.y) * p.1.1);
                (i128::from(d.x) * y * p.0.1 - i128::from(d.y) * x * p.1.1, p.0.1 * p.1.1)
            };
            let mut kept = Vec::new();
            for (i, p) in poly.iter().enumerate() {
                let q = &poly[(i + 1) % poly.len()];
                let (s, t) = (side(p), side(q));
                if s.0 >= 0 {
                    kept.push(*p);
                }
                if s.0.signum() * t.0.signum() < 0 {
                    // p + (q - p) s / (s - t)
                    let part = reduced((s.0 * t.1, s.0 * t.1 - t.0 * s.1));
                    let mix = |u: Ratio, v: Ratio| {
                        let step = reduced((v.0 * u.1 - u.0 * v.1, v.1 * u.1));
                        let step = reduced((step.0 * part.0, step.1 * part.1));
                        reduced((u.0 * step.1 + step.0 * u.1, u.1 * step.1))
                    };
                    kept.push((mix(p.0, q.0), mix(p.1, q.1)));
                }
            }
            poly = kept;
        }
        let float = |r: Ratio| r.0 as f64 / r.1 as f64;
        let at = |i: usize| (float(poly[i % poly.len()].0), float(poly[i % poly.len()].1));
        let sum: f64 = (0..poly.len()).map(|i| at(i).0 * at(i + 1).1 - at(i + 1).0 * at(i).1).sum();
        sum.abs()
    }

    fn reduced((num, den): Ratio) -> Ratio {
        let gcd = |mut a: i128, mut b: i128| {
            while b != 0 {
                (a, b) = (b, a % b);
            }
            a.abs().max(1)
        };
        let by = gcd(num, den) * den.signum();
        (num / by, den / by)
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(512))]

        #[test]
        fn overlap_agrees_with_rational_clipping(a in piece(5), b in piece(5)) {
            let overlap = a.len() >= 3 && b.len() >= 3 && twice_common_area(&a, &b) > 1e-9;
            prop_assert_eq!(convex_overlap(&a, &b), overlap);
            prop_assert_eq!(convex_overlap(&b, &a), overlap);
        }

        /// Scaled up, a crossing is rounded by little against the area.
        #[test]
        fn clip_agrees_with_rational_clipping(a in polygon(5), b in polygon(5)) {
            let scaled = |r: &[Pt]| r.iter().map(|p| Pt::new(p.x * 1_000, p.y * 1_000)).collect::<Ring>();
            let clip = convex_clip(&scaled(&a), &scaled(&b));
            let twice = twice_area(&clip) as f64;
            let exact = twice_common_area(&a, &b) * 1e6;
            // Half a unit in each coordinate along a boundary of at most 40,000 units.
            prop_assert!((twice - exact).abs() <= 60_000.0, "{} {}", twice, exact);
        }

        #[test]
        fn clip_is_convex_and_lies_in_both(a in any_piece(), b in any_piece()) {
            let clip = convex_clip(&a, &b);
            prop_assert_eq!(convex_hull(&clip), clip.clone());
            prop_assert_eq!(convex_clip(&b, &a), clip.clone());
            if convex_overlap(&a, &b) {
                let near = |p: &Pt| crate::gap(&[*p], &a).len.max(crate::gap(&[*p], &b).len);
                prop_assert!(clip.iter().all(|p| near(p) <= measure::Len::UNIT));
            } else {
                prop_assert!(clip.is_empty());
            }
        }

        #[test]
        fn overlap_does_not_depend_on_how_the_plan_lies(
            a in piece(40), b in piece(40), way in 0u8..8, dx in -900_000..900_000, dy in -900_000..900_000,
        ) {
            let there = |r: &[Pt]| laid(r, way, (dx, dy));
            prop_assert_eq!(convex_overlap(&there(&a), &there(&b)), convex_overlap(&a, &b));
        }

        #[test]
        fn hull_is_convex_and_holds_all(points in prop::collection::vec(point(9), 0..20)) {
            let hull = convex_hull(&points);
            prop_assert!(hull.iter().all(|p| points.contains(p)));
            if hull.len() >= 3 {
                prop_assert!(points.iter().all(|&p| locate(p, &hull) != Where::Outside));
                let n = hull.len();
                prop_assert!((0..n).all(|i| orient(hull[i], hull[(i + 1) % n], hull[(i + 2) % n]) > 0));
            }
        }
    }
}
