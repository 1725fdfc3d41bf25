//! The depth at which a piece begins in the strip before an edge.
//!
//! With the back edge `u` from `a`, a point `p` lies at depth `u × (p - a) / |u|` and at `u · (p - a)`
//! along it. The nearest point of a polygon in the strip is a corner inside the strip, or a crossing of
//! an edge with one of the strip's sides. All in integers; the one division by `|u|` is a floor of a
//! root, so a depth of just the limit comes out as the limit.

use geometry::{Pt, Seg, edges};
use measure::Len;

/// The strip to the left of an edge, as wide as the edge.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Strip {
    back: Seg,
    /// Squared length of the edge.
    norm2: i128,
}

/// Where a piece begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Near {
    /// Rounded down; zero for a piece that reaches behind the edge.
    pub depth: Len,
    /// The stretch of the edge before which it begins, to within a unit of depth: along the edge, times
    /// its length.
    pub from: i128,
    pub to: i128,
}

impl Strip {
    /// The strip before an edge of some length.
    pub fn before(back: Seg) -> Option<Strip> {
        let norm2 = i128::from(back.dir().norm2());
        (norm2 > 0).then_some(Strip { back, norm2 })
    }

    /// The strip before the edge from the last point of a ring to the first.
    pub fn behind(ring: &[Pt]) -> Option<Strip> {
        Strip::before(Seg::new(*ring.last()?, *ring.first()?))
    }

    /// Where a polygon begins in the strip; `None` when it lies beside the strip.
    pub fn nearest(self, polygon: &[Pt]) -> Option<Near> {
        let u = self.back.dir();
        let place = |p: Pt| {
            let v = p - self.back.a;
            (i128::from(u.cross(v)), i128::from(u.dot(v)))
        };
        let mut found: Vec<(i128, i128)> = Vec::with_capacity(polygon.len() + 4);
        for e in edges(polygon) {
            let ((depth, along), (depth_b, along_b)) = (place(e.a), place(e.b));
            if (0..=self.norm2).contains(&along) {
                found.push((depth, along));
            }
            for side in [0, self.norm2] {
                if (along < side && side < along_b) || (along_b < side && side < along) {
                    let (part, whole) = (side - along, along_b - along);
                    let step = ((depth_b - depth) * part).div_euclid(whole);
                    found.push((depth + step, side));
                }
            }
        }
        let least = found.iter().map(|f| f.0).min()?;
        let unit = self.norm2.isqrt();
        let nearest = found.iter().filter(|f| f.0 <= least + unit).map(|f| f.1);
        Some(Near { depth: self.depth(least), from: nearest.clone().min()?, to: nearest.max()? })
    }

    /// The point of the back edge at a place along it that was given times its length.
    pub fn foot(self, along: i128) -> Pt {
        let part = |from: i32, d: i64| {
            let (n, den) = (2 * i128::from(d) * along, 2 * self.norm2);
            from + ((n + self.norm2).div_euclid(den)) as i32
        };
        let u = self.back.dir();
        Pt::new(part(self.back.a.x, u.x), part(self.back.a.y, u.y))
    }

    fn depth(self, times_length: i128) -> Len {
        let d = times_length.max(0);
        let floor = (d * d / self.norm2).isqrt();
        Len::from_units(i32::try_from(floor).unwrap_or(i32::MAX))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use geometry::Vec2;

    fn square(x: i32, y: i32, side: i32) -> [Pt; 4] {
        [Pt::new(x, y), Pt::new(x + side, y), Pt::new(x + side, y + side), Pt::new(x, y + side)]
    }

    #[test]
    fn depth_of_a_corner_a_face_and_a_crossing() {
        let strip = Strip::before(Seg::new(Pt::new(0, 0), Pt::new(100, 0))).unwrap();
        let near = strip.nearest(&square(10, 36, 20)).unwrap();
        assert_eq!((near.depth.units(), near.from, near.to), (36, 1000, 3000));
        // A line that comes down to the right and leaves the strip at depth 50.
        let wedge = [Pt::new(0, 100), Pt::new(200, 0), Pt::new(200, 100)];
        assert_eq!(strip.nearest(&wedge).unwrap().depth.units(), 50);
        assert!(strip.nearest(&square(101, 0, 9)).is_none());
        assert_eq!(strip.nearest(&square(50, -5, 9)).unwrap().depth, Len::ZERO);
    }

    /// The back edge turned onto (4, 3): depths are whole along (-3, 4) / 5.
    #[test]
    fn a_turned_strip_is_exact_on_whole_depths() {
        let strip = Strip::before(Seg::new(Pt::new(0, 0), Pt::new(4000, 3000))).unwrap();
        let at = |along: i64, deep: i64| {
            Pt::new(0, 0) + Vec2::new(4 * along - 3 * deep, 3 * along + 4 * deep)
        };
        let piece = [at(100, 200), at(300, 200), at(300, 400), at(100, 400)];
        let near = strip.nearest(&piece).unwrap();
        assert_eq!(near.depth.units(), 1000);
        assert_eq!(strip.foot((near.from + near.to) / 2), at(200, 0));
        let nearer = [piece[0] + Vec2::new(1, -1), piece[1], piece[2], piece[3]];
        assert!(strip.nearest(&nearer).unwrap().depth.units() < 1000);
    }
}
