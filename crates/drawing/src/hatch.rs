//! Hatches: parallel lines clipped to a region. They are computed here, so that no backend has to.

use crate::P;

/// The way that hatch lines lean.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slope {
    /// `/`
    Rising,
    /// `\`
    Falling,
    /// `|`
    Upright,
    /// `—`
    Level,
}

impl Slope {
    /// Unit vectors along the lines and across them; y down.
    fn axes(self) -> ((f64, f64), (f64, f64)) {
        const H: f64 = std::f64::consts::FRAC_1_SQRT_2;
        match self {
            Slope::Rising => ((H, -H), (H, H)),
            Slope::Falling => ((H, H), (-H, H)),
            Slope::Upright => ((0.0, 1.0), (1.0, 0.0)),
            Slope::Level => ((1.0, 0.0), (0.0, 1.0)),
        }
    }
}

/// No region gets more lines than this: a guard against a huge region with a fine hatch.
const MOST_LINES: f64 = 4_000.0;

/// The hatch lines of a region given by rings (even-odd rule, any winding, simple rings): `spacing`
/// points apart, on the family of lines that passes through `through`, so that the hatches of
/// neighbouring regions meet. Nothing when the spacing is not positive or a coordinate is not finite.
pub fn hatch(rings: &[&[P]], slope: Slope, spacing: f32, through: P) -> Vec<(P, P)> {
    let (along, across) = slope.axes();
    let dot = |p: P, v: (f64, f64)| f64::from(p.x) * v.0 + f64::from(p.y) * v.1;
    let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
    for d in rings.iter().flat_map(|r| r.iter()).map(|p| dot(*p, across)) {
        low = low.min(d);
        high = high.max(d);
    }
    let spacing = f64::from(spacing);
    let phase = dot(through, across);
    let lines = (high - low) / spacing;
    if !(spacing > 0.0 && lines.is_finite() && lines <= MOST_LINES && phase.is_finite()) {
        return Vec::new();
    }
    let mut pairs = Vec::new();
    let mut hits: Vec<f64> = Vec::new();
    let mut step = ((low - phase) / spacing).ceil();
    loop {
        let level = phase + step * spacing;
        if level > high {
            return pairs;
        }
        hits.clear();
        for ring in rings {
            for (i, &a) in ring.iter().enumerate() {
                let b = ring[(i + 1) % ring.len()];
                let (da, db) = (dot(a, across), dot(b, across));
                // Half-open: a vertex on the line counts for one of its two edges.
                if (da <= level) != (db <= level) {
                    let t = (level - da) / (db - da);
                    hits.push(dot(a, along) * (1.0 - t) + dot(b, along) * t);
                }
            }
        }
        hits.sort_by(f64::total_cmp);
        for pair in hits.chunks_exact(2) {
            if pair[1] - pair[0] > 0.05 {
                let at = |s: f64| {
                    P::new(
                        (along.0 * s + across.0 * level) as f32,
                        (along.1 * s + across.1 * level) as f32,
                    )
                };
                pairs.push((at(pair[0]), at(pair[1])));
            }
        }
        step += 1.0;
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn square(x: f32, y: f32, side: f32) -> Vec<P> {
        vec![P::new(x, y), P::new(x + side, y), P::new(x + side, y + side), P::new(x, y + side)]
    }

    #[test]
    fn level_lines_of_a_square_span_it() {
        let lines = hatch(&[&square(10.0, 10.0, 10.0)], Slope::Level, 4.0, P::new(0.0, 0.0));
        let ys: Vec<f32> = lines.iter().map(|l| l.0.y).collect();
        assert_eq!(ys, [12.0, 16.0]);
        assert!(lines.iter().all(|(a, b)| a.x == 10.0 && b.x == 20.0));
    }

    #[test]
    fn a_hole_interrupts_the_lines() {
        let (outer, hole) = (square(0.0, 0.0, 12.0), square(4.0, 4.0, 4.0));
        let lines = hatch(&[&outer, &hole], Slope::Level, 5.0, P::new(0.0, 0.0));
        let spans: Vec<_> = lines.iter().map(|(a, b)| (a.y, a.x, b.x)).collect();
        assert_eq!(spans, [(0.0, 0.0, 12.0), (5.0, 0.0, 4.0), (5.0, 8.0, 12.0), (10.0, 0.0, 12.0)]);
    }

    #[test]
    fn nonsense_gives_nothing() {
        let nan = [P::new(f32::NAN, 0.0), P::new(1.0, 0.0), P::new(1.0, 1.0)];
        assert!(hatch(&[&square(0.0, 0.0, 9.0)], Slope::Level, 0.0, P::default()).is_empty());
        assert!(hatch(&[], Slope::Rising, 3.0, P::default()).is_empty());
        assert!(hatch(&[&square(0.0, 0.0, 9e9)], Slope::Rising, 1.0, P::default()).is_empty());
        let _ = hatch(&[&nan], Slope::Rising, 1.0, P::default());
    }

    proptest! {
        /// Total length times spacing approximates the area: every line is inside and none is missing.
        #[test]
        fn lines_cover_the_area(
            side in 40.0f32..200.0, hole in 5.0f32..30.0, x in -50.0f32..50.0,
            slope in prop_oneof![
                Just(Slope::Rising), Just(Slope::Falling), Just(Slope::Upright), Just(Slope::Level)
            ],
        ) {
            let (outer, inner) = (square(x, 3.0, side), square(x + 4.0, 9.0, hole));
            let lines = hatch(&[&outer, &inner], slope, 0.5, P::new(1.0, 1.0));
            let length: f32 = lines.iter().map(|(a, b)| a.distance(*b)).sum();
            let area = side * side - hole * hole;
            prop_assert!((length * 0.5 - area).abs() < area * 0.05 + side);
            for (a, b) in lines {
                for p in [a, b] {
                    prop_assert!(p.x > x - 0.01 && p.x < x + side + 0.01);
                    prop_assert!(p.y > 2.99 && p.y < 3.0 + side + 0.01);
                }
            }
        }
    }
}
