//! Pieces that stay and pieces that move, under one count of indices.

use std::cmp::Ordering;

use measure::Len;

use super::link::{Link, Path, link};
use super::obstacles::{Obstacles, by_corners};
use crate::reach::Reach;
use crate::{Bounds, Pt};

/// The pieces that stay, then the pieces that move.
#[derive(Clone, Copy)]
pub(super) struct Scene<'a> {
    pub fixed: &'a Obstacles,
    pub moving: &'a Obstacles,
}

/// Whole square units, and the anchors of the two pieces in order, as numbers that rise with them.
type Key = (u64, [u64; 2]);

/// Two pieces and how near they are.
#[derive(Clone, Copy, Debug)]
pub(super) struct Pair {
    pub a: u32,
    pub b: u32,
    /// Whole square units of `reach`, then where the pieces lie: this decides nearly every comparison.
    key: Key,
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
        let (p, q) = (self.ring(a), self.ring(b));
        let Link { reach, path } = link(p, q);
        let (p, q) = (rank(p[0]), rank(q[0]));
        let key = (reach.floor(), [p.min(q), p.max(q)]);
        Pair { a: a as u32, b: b as u32, key, reach, path }
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
        p.key
            .0
            .cmp(&q.key.0)
            .then_with(|| p.reach.cmp(&q.reach))
            .then_with(|| p.key.1.cmp(&q.key.1))
            .then_with(|| rings(p).cmp(&rings(q)))
            .then_with(|| (p.a, p.b).cmp(&(q.a, q.b)))
    }

    /// The indices of pairs in order: sorted by key, then the runs that a key does not decide.
    pub fn order(self, pairs: &[Pair]) -> Vec<u32> {
        let mut keys: Vec<(Key, u32)> = pairs.iter().map(|p| p.key).zip(0..).collect();
        keys.sort_unstable();
        let pair = |i: u32| &pairs[i as usize];
        for run in keys.chunk_by_mut(|p, q| p.0.0 == q.0.0) {
            let decided = run.windows(2).all(|w| w[0].0.1 != w[1].0.1)
                && run.iter().all(|&(_, i)| pair(i).reach.is_whole());
            if !decided {
                run.sort_unstable_by(|p, q| self.cmp(pair(p.1), pair(q.1)));
            }
        }
        keys.into_iter().map(|(_, i)| i).collect()
    }
}

/// A number that orders points as they are ordered.
fn rank(p: Pt) -> u64 {
    let half = |at: i32| u64::from(at.cast_unsigned() ^ 1 << 31);
    half(p.x) << 32 | half(p.y)
}
