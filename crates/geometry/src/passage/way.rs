//! What there is to say about the way to a place.

use measure::Len;

use crate::Pt;

/// The widest way to a target from the arrival that is best for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Way {
    /// The diameter of the largest round person who gets there, rounded down to the grid, and at most
    /// the width that was asked for. Someone of just this width passes.
    pub width: Len,
    /// The arrival it starts from, as an index; the first of several that are as good. `None`
    /// without arrivals.
    pub arrival: Option<usize>,
    pub limit: Limit,
}

/// What keeps a way from being wider.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Limit {
    /// Nothing up to the width that was asked for.
    Open,
    /// A gap between two pieces that every way passes.
    Pinch(Pinch),
    /// The room round the target or the arrival itself: no wider person can stand there.
    Standing(Standing),
    /// Walled off: pieces that touch, the pinch of width zero among them, go round one of the two.
    Walled(Pinch),
    /// The target or the arrival lies in a piece or on its edge.
    Buried(Standing),
    /// There is no arrival.
    NoArrival,
}

/// The narrowest gap on a way.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pinch {
    /// Its ends, `from` before `to` by x and then y, each rounded once to the grid.
    pub from: Pt,
    pub to: Pt,
    /// The pieces at `from` and at `to`.
    pub pieces: [usize; 2],
    /// The owners of those pieces.
    pub owners: [usize; 2],
}

/// A place and the piece nearest to it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Standing {
    /// Whether it is the arrival, not the target.
    pub at_arrival: bool,
    pub place: Pt,
    /// The point of the piece nearest to the place, rounded once; the place itself when it is inside.
    pub nearest: Pt,
    pub piece: usize,
    pub owner: usize,
}

impl Way {
    /// Whether anyone gets there, however thin.
    pub fn reached(&self) -> bool {
        !matches!(self.limit, Limit::Walled(_) | Limit::Buried(_) | Limit::NoArrival)
    }

    /// Whether a round person of a width gets there; up to the width that was asked for. Exact: a gap of
    /// just the width passes.
    pub fn passes(&self, width: Len) -> bool {
        self.reached() && width <= self.width
    }
}
