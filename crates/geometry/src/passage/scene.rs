//! Pieces that stay and pieces that move, under one count of indices.

use std::cmp::Ordering;

use measure::Len;

use super::link::{Path, link};
use super::obstacles::{Obstacles, by_corners};
use crate::reach::Reach;
use crate::{Bounds, Pt};

/// The pieces that stay, then the pieces that move.
#[derive(Clone, Copy)]
pub(super) struct Scene<'a> {
    pub fixed: &'a Obstacles,
    pub moving: &'a Obstacles,
}

/// Two pieces and how near they are.
#[derive(Clone, Copy, Debug)]
pub(super) struct Pair {
    pub a: u32,
    pub b: u32,
    /// Whole square units of `reach`: decides nearly every comparison.
    floor: u64,
    pub reach: Reach,
    pub path: Path,
}

impl<'a> Scene<'a> {
    pub fn len(self) -> usize {
        self.fixed.len() + self.moving.len()
    }

    fn at(self, piece: usize) -> (&'a Obstacles, usize) {
        match piece.checked_sub(self.fixed.len()) {
            None => (self.fixed, piece),
            Some(moving) => (self.moving, moving),
        }
    }

    pub fn ring(self, piece: usize) -> &'a [Pt] {
        let (all, piece) = self.at(piece);
        all.ring(piece)
    }

    /// A corner of a piece that stands for it: the leftmost lowest.
    pub fn anchor(self, piece: u32) -> Pt {
        self.ring(piece as usize)[0]
    }

    pub fn owner(self, piece: usize) -> usize {
        let (all, piece) = self.at(piece);
        all.owner(piece)
    }

    pub fn foot(self, p: Pt, piece: usize) -> Pt {
        let (all, piece) = self.at(piece);
        all.foot(p, piece)
    }

    /// The nearest of the pieces that move within `most`, with the squared distance.
    pub fn nearest_moving(self, p: Pt, most: Len) -> Option<(usize, Reach)> {
        let near = self.moving.nearest(p, most);
        near.map(|(piece, reach)| (piece + self.fixed.len(), reach))
    }

    fn pair(self, a: usize, b: usize) -> Pair {
        let link = link(self.ring(a), self.ring(b));
        let floor = link.reach.floor();
        Pair { a: a as u32, b: b as u32, floor, reach: link.reach, path: link.path }
    }

    /// Appends the pairs of pieces that stay whose boxes are nearer than `to` but not nearer than `from`.
    pub fn fixed_pairs(self, from: Len, to: Len, pairs: &mut Vec<Pair>) {
        let known = |i, j| {
            let grown = self.fixed.bounds(i).grow(from - Len::UNIT);
            from > Len::ZERO && grown.meets(self.fixed.bounds(j))
        };
        self.fixed.grid().near_pairs(to - Len::UNIT, |i, j| {
            if !known(i, j) {
                pairs.push(self.pair(i, j));
            }
        });
    }

    /// Appends the pairs with a piece that moves whose boxes are nearer than `to`.
    pub fn moving_pairs(self, to: Len, pairs: &mut Vec<Pair>) {
        let shift = self.fixed.len();
        for i in 0..self.moving.len() {
            let grown: Bounds = self.moving.bounds(i).grow(to - Len::UNIT);
            let near = self.fixed.grid().query(grown);
            pairs.extend(near.into_iter().map(|j| self.pair(j, i + shift)));
            let later = (i + 1..self.moving.len()).filter(|&j| grown.meets(self.moving.bounds(j)));
            pairs.extend(later.map(|j| self.pair(i + shift, j + shift)));
        }
    }

    /// By distance; where that is equal, by corners and only then by index, so that the order of the
    /// pieces does not matter.
    pub fn cmp(self, p: &Pair, q: &Pair) -> Ordering {
        let rings = |p: &Pair| by_corners(self.ring(p.a as usize), self.ring(p.b as usize));
        p.floor
            .cmp(&q.floor)
            .then_with(|| p.reach.cmp(&q.reach))
            .then_with(|| rings(p).cmp(&rings(q)))
            .then_with(|| (p.a, p.b).cmp(&(q.a, q.b)))
    }

    /// The indices of pairs in order.
    pub fn order(self, pairs: &[Pair]) -> Vec<u32> {
        let mut keys: Vec<(u64, u32)> = pairs.iter().map(|p| p.floor).zip(0..).collect();
        keys.sort_unstable_by(|p, q| {
            p.0.cmp(&q.0).then_with(|| self.cmp(&pairs[p.1 as usize], &pairs[q.1 as usize]))
        });
        keys.into_iter().map(|(_, i)| i).collect()
    }
}
