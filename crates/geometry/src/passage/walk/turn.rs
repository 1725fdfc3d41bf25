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
    /// The piece; for a place none.
    pub piece: Option<usize>,
    /// Counts all turns.
    pub id: usize,
}

impl Turn {
    pub fn place(centre: Pt, id: usize) -> Turn {
        Turn { centre, before: centre, after: centre, side: 0, piece: None, id }
    }

    /// All turns at corners, those at one corner after each other. Their ids count from zero.
    pub fn all(obstacles: &Obstacles) -> Vec<Turn> {
        let mut all = Vec::new();
        for piece in 0..obstacles.len() {
            let ring = obstacles.ring(piece);
            let n = ring.len();
            for i in 0..n {
                let (before, after) = (ring[(i + n - 1) % n], ring[(i + 1) % n]);
                for side in [1, -1] {
                    let id = all.len();
                    all.push(Turn { centre: ring[i], before, after, side, piece: Some(piece), id });
                }
            }
        }
        all
    }

    /// Whether a line through the centre leaves the piece on the turn's side.
    pub fn is_touched_by(&self, line: Seg) -> bool {
        let side = |p| orient(line.a, line.b, p) * i64::from(self.side) >= 0;
        side(self.before) && side(self.after)
    }
}
