//! The places where a walk may turn.

use super::super::obstacles::Obstacles;
use crate::{Pt, Seg, orient};

/// A corner of a piece with the side on which the walk has the piece; or one of the two places.
#[derive(Clone, Copy, Debug)]
pub(super) struct Turn {
    pub centre: Pt,
    /// The corners before and after it on its piece; the centre itself where there is none.
    pub before: Pt,
    pub after: Pt,
    /// 1 with the piece to the left, so that the walk turns left; -1 to the right; 0 at a place.
    pub side: i8,
    /// The piece and the index of the corner among all corners; for a place none.
    pub corner: Option<(usize, usize)>,
}

impl Turn {
    pub fn place(centre: Pt) -> Turn {
        Turn { centre, before: centre, after: centre, side: 0, corner: None }
    }

    /// The turns at the corners of a piece with the piece to their left.
    pub fn of(obstacles: &Obstacles, piece: usize) -> impl Iterator<Item = Turn> {
        let (ring, from) = (obstacles.ring(piece), obstacles.span(piece).start);
        let last = ring.len() - 1;
        ring.iter().enumerate().map(move |(i, &centre)| {
            let before = ring[if i == 0 { last } else { i - 1 }];
            let after = ring[if i == last { 0 } else { i + 1 }];
            Turn { centre, before, after, side: 1, corner: Some((piece, from + i)) }
        })
    }

    /// At the same corner with the piece to the right.
    pub fn mirrored(self) -> Turn {
        Turn { side: -self.side, ..self }
    }

    /// What tells turns apart.
    pub fn id(&self) -> (Option<usize>, i8) {
        (self.corner.map(|(_, index)| index), self.side)
    }

    /// Whether its piece is a single point.
    pub fn is_post(&self) -> bool {
        self.corner.is_some() && self.before == self.centre
    }

    /// Whether a line through the centre leaves the piece on the turn's side.
    pub fn is_touched_by(&self, line: Seg) -> bool {
        let side = |p| orient(line.a, line.b, p) * i64::from(self.side) >= 0;
        side(self.before) && side(self.after)
    }
}
