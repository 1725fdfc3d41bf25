//! On which side of the places a path passes.
//!
//! From each place a ray goes to the left. A step crosses it when exactly one of its ends lies above
//! the ray, a point on the ray's own height counting as below, and when the place lies to the right
//! of the step. So a closed path crosses a ray an odd number of times just when it goes round the
//! place an odd number of times, and no corner on a ray needs special care.

use super::link::{Bend, Path};
use crate::{Pt, Vec2};

/// Up to 64 places, a bit of a label each.
#[derive(Clone, Debug)]
pub(super) struct Rays {
    /// By rising y: the place and its bit.
    places: Vec<(Pt, u64)>,
}

impl Rays {
    /// Bit `k` is for place `k`; at most 64.
    pub fn new(places: &[Pt]) -> Rays {
        let bits = places.iter().enumerate().map(|(k, &p)| (p, 1u64 << k));
        let mut places: Vec<(Pt, u64)> = bits.collect();
        places.sort_unstable_by_key(|&(p, bit)| (p.y, p.x, bit));
        Rays { places }
    }

    /// The label of a path from the anchor of a piece to the anchor of another: straight to the
    /// start of the link, along the link, straight to the other anchor.
    pub fn label(&self, anchor: Pt, path: Path, other: Pt) -> u64 {
        let (from, to, bend) = path.legs();
        let link = match bend {
            None => self.step(from, to),
            Some(Bend { y, coming, leaving }) => {
                self.leg(from, from.y, y, coming) ^ self.leg(to, y, to.y, leaving)
            }
        };
        self.step(anchor, from) ^ link ^ self.step(to, other)
    }

    fn step(&self, from: Pt, to: Pt) -> u64 {
        self.leg(from, from.y, to.y, to - from)
    }

    /// A leg on the line through `on` along `dir`, from one height to another.
    fn leg(&self, on: Pt, from: i32, to: i32, dir: Vec2) -> u64 {
        let (low, high) = (from.min(to), from.max(to));
        if low == high {
            return 0;
        }
        let first = self.places.partition_point(|(p, _)| p.y < low);
        let right_of = |p: Pt| {
            let side = dir.cross(p - on);
            if to > from { side < 0 } else { side > 0 }
        };
        self.places[first..]
            .iter()
            .take_while(|(p, _)| p.y < high)
            .filter(|(p, _)| right_of(*p))
            .fold(0, |label, (_, bit)| label ^ bit)
    }
}
