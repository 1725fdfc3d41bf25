//! Ways of one plan after another, when little changes between them.

use std::collections::HashSet;

use geometry::Pt;
use geometry::passage::{Held, Way};

use super::pieces::{self, Piece};
use super::places;
use super::{WIDEST, Ways};
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
        let pieces = pieces::of(facts);
        let obstacles = pieces::obstacles(&pieces);
        let arrivals = places::arrivals(facts, &obstacles);
        let targets = places::targets(facts, &obstacles);
        let starts = arrivals.iter().map(|a| a.at).collect();
        let ends = targets.iter().map(|(_, at)| *at).collect();
        let found = self.found(&pieces, [starts, ends]);
        super::finish(facts, obstacles, arrivals, targets, found)
    }

    fn found(&mut self, pieces: &[Piece], places: [Vec<Pt>; 2]) -> Vec<Way> {
        let all: HashSet<&Piece> = pieces.iter().collect();
        // What stood already stays, as far as it is still there.
        let fixed = match self.kept.take() {
            Some(kept) if kept.places == places && kept.fixed.iter().all(|p| all.contains(p)) => {
                self.kept = Some(kept);
                None
            }
            Some(kept) => Some(kept.fixed.into_iter().filter(|p| all.contains(p)).collect()),
            None => Some(HashSet::new()),
        };
        if let Some(fixed) = fixed {
            self.keep(pieces, fixed, &places);
        }
        let moving = |kept: &Kept| -> Vec<Piece> {
            pieces.iter().filter(|p| !kept.fixed.contains(*p)).cloned().collect()
        };
        if self.kept.as_ref().is_some_and(|kept| moving(kept).len() > MOST_MOVING) {
            self.keep(pieces, HashSet::new(), &places);
        }
        let Some(kept) = &mut self.kept else { return Vec::new() };
        let moving = moving(kept);
        kept.held.ways(&pieces::obstacles(&moving))
    }

    /// Takes these as what stays; all, where they are too few.
    fn keep(&mut self, pieces: &[Piece], fixed: HashSet<Piece>, places: &[Vec<Pt>; 2]) {
        let few = fixed.len() + MOST_MOVING < pieces.len();
        let fixed = if few { pieces.iter().cloned().collect() } else { fixed };
        let stay: Vec<Piece> = pieces.iter().filter(|p| fixed.contains(*p)).cloned().collect();
        let [starts, ends] = places;
        let held = Held::new(pieces::obstacles(&stay), starts, ends, WIDEST);
        self.kept = Some(Kept { fixed, places: places.clone(), held });
    }
}
