//! Which corners are worth a look: those that make a small detour, then those that make a larger one.
//!
//! A corner `v` on the way from `u` to the target `t` makes the detour `|uv| + |vt| - |ut|`. Those below a bound
//! lie in an ellipse with `u` and `t` as its foci, and the grid finds the pieces that meet its box. So
//! a search in a large plan looks at few pieces as long as the walk is not much longer than straight.

use measure::Len;

use super::angle::Xy;
use crate::{Bounds, Pt};

/// The detour of the first band; each further one is twice as wide.
const FIRST: f64 = Len::inches(36).units() as f64;

/// The corners whose detour between two points lies from `low` up to but without `high`.
#[derive(Clone, Copy, Debug)]
pub(super) struct Band {
    from: Xy,
    to: Xy,
    straight: f64,
    low: f64,
    pub high: f64,
}

impl Band {
    /// Band `number`, from zero.
    pub fn new(from: Xy, to: Xy, number: u32) -> Band {
        // Past the 32nd band there is no plan.
        let bound = |n: u32| FIRST * ((1u64 << n.min(40)) - 1) as f64;
        let straight = to.minus(from).norm();
        Band { from, to, straight, low: bound(number), high: bound(number + 1) }
    }

    fn detour(&self, p: Xy) -> f64 {
        // Rounding must not lose the corners on the straight way.
        (p.minus(self.from).norm() + p.minus(self.to).norm() - self.straight).max(0.0)
    }

    pub fn holds(&self, p: Xy) -> bool {
        (self.low..self.high).contains(&self.detour(p))
    }

    /// The length of the shortest way through a corner of a later band.
    pub fn beyond(&self) -> f64 {
        self.straight + self.high
    }

    /// Whether a later band may hold corners within a box.
    pub fn has_more(&self, all: Bounds, origin: Pt) -> bool {
        // The detour is a convex function, so it is largest at a corner of the box.
        !all.is_empty() && all.ring().iter().any(|&p| self.detour(Xy::new(p, origin)) >= self.high)
    }

    /// A box round the ellipse.
    pub fn bounds(&self, origin: Pt) -> Bounds {
        let long = (self.straight + self.high) / 2.0;
        let (long2, short2) = (long * long, long * long - self.straight * self.straight / 4.0);
        let way = self.to.minus(self.from);
        let square = self.straight * self.straight;
        // Squared cosine and sine of the ellipse's direction.
        let (c2, s2) = if square > 0.0 {
            (way.x * way.x / square, way.y * way.y / square)
        } else {
            (1.0, 0.0)
        };
        let half =
            Xy { x: (long2 * c2 + short2 * s2).sqrt(), y: (long2 * s2 + short2 * c2).sqrt() };
        let middle = self.from.plus(self.to, 1.0).times(0.5);
        let ends = [middle.minus(half), middle.plus(half, 1.0)];
        Bounds::of(ends.map(|p| p.rounded(origin))).grow(Len::UNIT)
    }
}
