//! Where two segments meet, and the point of a segment nearest to a point. Exact integer tests;
//! a point that falls off the grid is rounded once, halves up.

use crate::{Pt, Seg, Vec2, orient};

/// Whether two closed segments have a point in common. Touching ends and overlapping collinear
/// segments count; a segment of no length is a point.
pub fn segs_touch(s: Seg, t: Seg) -> bool {
    let (t_a, t_b) = (orient(s.a, s.b, t.a), orient(s.a, s.b, t.b));
    let (s_a, s_b) = (orient(t.a, t.b, s.a), orient(t.a, t.b, s.b));
    if strictly_apart(t_a, t_b) || strictly_apart(s_a, s_b) {
        return false;
    }
    // The lines part neither segment strictly, so either the segments cross or all four points
    // that matter lie on one line, where boxes decide.
    let within = |a: i32, b: i32, c: i32, d: i32| a.min(b) <= c.max(d) && c.min(d) <= a.max(b);
    within(s.a.x, s.b.x, t.a.x, t.b.x) && within(s.a.y, s.b.y, t.a.y, t.b.y)
}

/// Both on one side, neither on the line.
fn strictly_apart(p: i64, q: i64) -> bool {
    (p > 0 && q > 0) || (p < 0 && q < 0)
}

/// The crossing of the two infinite lines, rounded once to the grid. `None` when the lines are
/// parallel (or a segment has no length), or when they cross off the `i32` grid.
pub fn line_crossing(s: Seg, t: Seg) -> Option<Pt> {
    let (u, v) = (s.dir(), t.dir());
    let den = u.cross(v);
    if den == 0 {
        return None;
    }
    if u.y == 0 && v.x == 0 {
        return Some(Pt::new(t.a.x, s.a.y));
    }
    if u.x == 0 && v.y == 0 {
        return Some(Pt::new(s.a.x, t.a.y));
    }
    let num = (t.a - s.a).cross(v);
    along(s.a, u, num, den)
}

/// The point of a closed segment nearest to `p`, rounded once to the grid. It is an end, and exact,
/// where the foot of the perpendicular falls outside the segment.
pub fn nearest_on(s: Seg, p: Pt) -> Pt {
    let d = s.dir();
    if d.x == 0 || d.y == 0 {
        let between = |p: i32, a: i32, b: i32| p.clamp(a.min(b), a.max(b));
        return Pt::new(between(p.x, s.a.x, s.b.x), between(p.y, s.a.y, s.b.y));
    }
    let (num, den) = ((p - s.a).dot(d), d.norm2());
    if num <= 0 {
        s.a
    } else if num >= den {
        s.b
    } else {
        // Between two grid points, so on the grid's range.
        along(s.a, d, num, den).unwrap_or(s.a)
    }
}

/// `a + d * num / den`, rounded once.
fn along(a: Pt, d: Vec2, num: i64, den: i64) -> Option<Pt> {
    let part = |from: i32, d: i64| {
        let (n, den) = (2 * i128::from(d) * i128::from(num), 2 * i128::from(den));
        let (n, den) = if den < 0 { (-n, -den) } else { (n, den) };
        i32::try_from(i128::from(from) + (n + den / 2).div_euclid(den)).ok()
    };
    Some(Pt::new(part(a.x, d.x)?, part(a.y, d.y)?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sample::{FAR, point, segment};
    use proptest::prelude::*;

    fn seg(ax: i32, ay: i32, bx: i32, by: i32) -> Seg {
        Seg::new(Pt::new(ax, ay), Pt::new(bx, by))
    }

    #[test]
    fn touching_ends_tees_and_overlaps_touch() {
        let s = seg(0, 0, 10, 0);
        assert!(segs_touch(s, seg(10, 0, 20, 5)));
        assert!(segs_touch(s, seg(5, 0, 5, 9)));
        assert!(segs_touch(s, seg(5, -3, 5, 9)));
        assert!(segs_touch(s, seg(8, 0, 20, 0)));
        assert!(segs_touch(s, seg(4, 0, 4, 0)));
        assert!(segs_touch(seg(4, 0, 4, 0), seg(4, 0, 4, 0)));
    }

    #[test]
    fn one_unit_apart_does_not_touch() {
        let s = seg(0, 0, 10, 0);
        assert!(!segs_touch(s, seg(11, 0, 20, 0)));
        assert!(!segs_touch(s, seg(5, 1, 5, 9)));
        assert!(!segs_touch(s, seg(4, 1, 4, 1)));
        assert!(!segs_touch(seg(4, 0, 4, 0), seg(5, 0, 5, 0)));
        assert!(!segs_touch(seg(0, 0, 10, 10), seg(11, 11, 20, 20)));
        assert!(!segs_touch(seg(0, 0, 10, 10), seg(5, 4, 15, 14)));
    }

    #[test]
    fn lines_cross_beyond_their_segments() {
        let s = seg(0, 0, 10, 0);
        assert_eq!(line_crossing(s, seg(20, 5, 20, 9)), Some(Pt::new(20, 0)));
        assert_eq!(line_crossing(s, seg(0, 5, 10, 5)), None);
        assert_eq!(line_crossing(s, seg(3, 3, 3, 3)), None);
        // 1/2 rounds up, on both sides of zero.
        assert_eq!(line_crossing(s, seg(0, -1, 1, 1)), Some(Pt::new(1, 0)));
        assert_eq!(line_crossing(s, seg(0, 1, -1, -1)), Some(Pt::new(0, 0)));
    }

    proptest! {
        /// Along the axes the short way gives what the long way gives.
        #[test]
        fn along_the_axes_nothing_is_rounded(s in segment(FAR), t in segment(FAR), p in point(FAR)) {
            let (s, t) = (Seg::new(s.a, Pt::new(s.b.x, s.a.y)), Seg::new(t.a, Pt::new(t.a.x, t.b.y)));
            for (s, t) in [(s, t), (t, s)] {
                let (u, v) = (s.dir(), t.dir());
                let long = (u.cross(v) != 0).then(|| along(s.a, u, (t.a - s.a).cross(v), u.cross(v)));
                prop_assert_eq!(line_crossing(s, t), long.flatten());
                let (num, den) = ((p - s.a).dot(u), u.norm2());
                if den > 0 {
                    prop_assert_eq!(Some(nearest_on(s, p)), along(s.a, u, num.clamp(0, den), den));
                }
            }
        }
    }

    #[test]
    fn a_crossing_off_the_grid_is_none() {
        assert_eq!(line_crossing(seg(-FAR, 0, FAR, 1), seg(-FAR, 9, FAR, 9)), None);
    }

    #[test]
    fn nearest_point() {
        let s = seg(0, 0, 10, 0);
        assert_eq!(nearest_on(s, Pt::new(-4, 7)), s.a);
        assert_eq!(nearest_on(s, Pt::new(14, 7)), s.b);
        assert_eq!(nearest_on(s, Pt::new(4, 7)), Pt::new(4, 0));
        assert_eq!(nearest_on(seg(3, 3, 3, 3), Pt::new(4, 7)), Pt::new(3, 3));
    }

    /// Solves `s.a + r u = t.a + q v` in rationals by Cramer's rule; collinear pairs by projection.
    fn touch_by_parameters(s: Seg, t: Seg) -> bool {
        let wide = |v: Vec2| (i128::from(v.x), i128::from(v.y));
        let cross = |a: (i128, i128), b: (i128, i128)| a.0 * b.1 - a.1 * b.0;
        let (u, v, w) = (wide(s.dir()), wide(t.dir()), wide(t.a - s.a));
        let den = cross(u, v);
        if den != 0 {
            let (r, q) = (cross(w, v) * den.signum(), cross(w, u) * den.signum());
            let den = den.abs();
            return (0..=den).contains(&r) && (0..=den).contains(&q);
        }
        let on = |p: Pt, s: Seg| {
            orient(s.a, s.b, p) == 0
                && (s.a.x.min(s.b.x)..=s.a.x.max(s.b.x)).contains(&p.x)
                && (s.a.y.min(s.b.y)..=s.a.y.max(s.b.y)).contains(&p.y)
        };
        on(s.a, t) || on(s.b, t) || on(t.a, s) || on(t.b, s)
    }

    proptest! {
        #[test]
        fn touching_agrees_with_rationals_on_a_small_grid(s in segment(4), t in segment(4)) {
            prop_assert_eq!(segs_touch(s, t), touch_by_parameters(s, t));
            prop_assert_eq!(segs_touch(s, t), segs_touch(t.reversed(), s));
        }

        #[test]
        fn touching_agrees_with_rationals_on_the_whole_grid(s in segment(FAR), t in segment(FAR)) {
            prop_assert_eq!(segs_touch(s, t), touch_by_parameters(s, t));
        }

        #[test]
        fn the_crossing_is_within_half_a_unit(s in segment(5_000), t in segment(5_000)) {
            if let Some(p) = line_crossing(s, t) {
                // Compare 2 * |p - exact| with 1, in rationals over the common denominator.
                let (u, v) = (s.dir(), t.dir());
                let den = i128::from(u.cross(v));
                let num = i128::from((t.a - s.a).cross(v));
                let off = |at: i32, from: i32, d: i64| {
                    2 * ((i128::from(at) - i128::from(from)) * den - i128::from(d) * num)
                };
                prop_assert!(off(p.x, s.a.x, u.x).abs() <= den.abs());
                prop_assert!(off(p.y, s.a.y, u.y).abs() <= den.abs());
            }
        }

        #[test]
        fn no_sampled_point_is_nearer(s in segment(1_000), p in point(1_000)) {
            let near = (nearest_on(s, p) - p).norm();
            for i in 0..=64 {
                let d = s.dir();
                let q = (
                    f64::from(s.a.x) + d.x as f64 * f64::from(i) / 64.0,
                    f64::from(s.a.y) + d.y as f64 * f64::from(i) / 64.0,
                );
                let there = ((q.0 - f64::from(p.x)).powi(2) + (q.1 - f64::from(p.y)).powi(2)).sqrt();
                prop_assert!(near <= there + 0.75, "{near} {there}");
            }
        }
    }
}
