//! Ways of one plan after another, when little changes between them.

use std::collections::HashSet;

use geometry::Pt;
use geometry::passage::Held;

use super::pieces::{self, Piece};
use super::{Asked, WIDEST, Ways};
use crate::Facts;

/// More moving pieces than this, and what stays is taken anew.
const MOST_MOVING: usize = 24;

/// Remembers what stays from one plan to the next, as from one step of a drag to the next: then only what moves is
/// measured. What it gives is what [`super::ways`] gives, to the bit.
#[derive(Debug, Default)]
pub struct Keeper {
    kept: Option<Kept>,
}

#[derive(Debug)]
struct Kept {
    /// What stays.
    fixed: HashSet<Piece>,
    places: [Vec<Pt>; 2],
    held: Held,
}

impl Keeper {
    /// The ways of a plan.
    pub fn ways(&mut self, facts: &Facts) -> Ways {
        let asked = Asked::of(facts);
        let kept = self.kept.take();
        let mut kept = Kept::of(kept, &asked.pieces, asked.places());
        let found = kept.held.ways(&pieces::obstacles(&kept.moving(&asked.pieces)));
        self.kept = Some(kept);
        asked.answered(facts, found)
    }
}

impl Kept {
    /// What was kept where it still holds; else what of it stays, or everything where too little does.
    fn of(before: Option<Kept>, pieces: &[Piece], places: [Vec<Pt>; 2]) -> Kept {
        let all: HashSet<&Piece> = pieces.iter().collect();
        let mut fixed = match before {
            Some(kept) if kept.places == places && kept.fixed.iter().all(|p| all.contains(p)) => {
                if kept.moving(pieces).len() <= MOST_MOVING {
                    return kept;
                }
                HashSet::new()
            }
            Some(kept) => kept.fixed.into_iter().filter(|p| all.contains(p)).collect(),
            None => HashSet::new(),
        };
        if fixed.len() + MOST_MOVING < pieces.len() {
            fixed = pieces.iter().cloned().collect();
        }
        let stay: Vec<Piece> = pieces.iter().filter(|p| fixed.contains(*p)).cloned().collect();
        let held = Held::new(pieces::obstacles(&stay), &places[0], &places[1], WIDEST);
        Kept { fixed, places, held }
    }

    fn moving(&self, pieces: &[Piece]) -> Vec<Piece> {
        pieces.iter().filter(|p| !self.fixed.contains(*p)).cloned().collect()
    }
}
