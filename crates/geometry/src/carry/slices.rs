//! The regions in which the middle of the box may lie, slice by slice, and which of them hang together.

use std::f64::consts::PI;

use measure::Len;

use super::meets;
use super::shapes::{Kind, polygon, square_on};
use crate::{Bounds, Ring, Shape, convex_hull, overlay};

/// The free regions of every slice.
pub(super) struct Slices {
    regions: Vec<Vec<Shape>>,
}

impl Slices {
    /// The slices of half a turn; before the first and in the middle one along the axes, where the larger polygon is
    /// sought, so that a gap exactly as wide as the box is passed.
    pub fn new(
        pieces: &[Ring],
        frame: Bounds,
        size: (Len, Len),
        count: usize,
        kind: Kind,
    ) -> Slices {
        let step = PI / count as f64;
        let mut regions = Vec::new();
        for k in 0..count {
            if kind == Kind::Around && (k == 0 || k == count / 2) {
                regions.push(free(pieces, frame, &square_on(size, k != 0)));
            }
            let slice = (step * k as f64, step * (k + 1) as f64);
            regions.push(free(pieces, frame, &polygon(size, slice, kind)));
        }
        Slices { regions }
    }

    /// The regions that hang together with those that meet the start.
    pub fn reach(&self, start: &[Shape]) -> Vec<Shape> {
        let all: Vec<(usize, &Shape)> = self
            .regions
            .iter()
            .enumerate()
            .flat_map(|(slice, shapes)| shapes.iter().map(move |shape| (slice, shape)))
            .collect();
        let count = self.regions.len();
        let mut reached: Vec<bool> =
            all.iter().map(|(_, shape)| start.iter().any(|from| meets(shape, from))).collect();
        let mut open: Vec<usize> = (0..all.len()).filter(|i| reached[*i]).collect();
        while let Some(i) = open.pop() {
            let (slice, shape) = all[i];
            for (j, (other, next)) in all.iter().enumerate() {
                let beside = (slice + 1) % count == *other || (other + 1) % count == slice;
                if beside && !reached[j] && meets(shape, next) {
                    reached[j] = true;
                    open.push(j);
                }
            }
        }
        all.into_iter().zip(reached).filter(|(_, yes)| *yes).map(|((_, s), _)| s.clone()).collect()
    }
}

/// The frame without the pieces grown by a polygon that is its own mirror image in the origin.
fn free(pieces: &[Ring], frame: Bounds, polygon: &Ring) -> Vec<Shape> {
    let grown: Vec<Ring> = pieces.iter().map(|piece| grow(piece, polygon)).collect();
    overlay::difference(&[frame.ring()], &grown)
}

/// The sum of two convex pieces.
fn grow(piece: &Ring, polygon: &Ring) -> Ring {
    if polygon.is_empty() {
        return piece.clone();
    }
    let origin = crate::Pt::new(0, 0);
    let sums: Vec<_> =
        piece.iter().flat_map(|p| polygon.iter().map(move |q| *p + (*q - origin))).collect();
    convex_hull(&sums)
}
