//! Room to move: how far an element may go along a line before something breaks, and where each rule holds.
//!
//! Every offset that is looked at is judged whole: the edit of the drag is made on a copy of the plan, facts are derived
//! and all rules are held to it, so that no rule has a second meaning here and new rules are there by themselves; what
//! stays the same from look to look is kept (`derive_from`, [`crate::Kept`]). Offsets are
//! looked at every [`STEP`] outwards from where the element stands; where two neighbours differ, bisection finds the two
//! neighbouring units between which each fault comes or goes. Ends are exact for that reason. A fault that comes and
//! goes again within one step between two looks is not seen.

mod course;
mod cure;
mod faults;
mod scan;

use measure::Len;

pub use course::Course;
pub use cure::smallest_move;
pub use faults::{Fault, NARROWEST_WAY, WAY_RULE};
pub use scan::Scan;

/// The distance between two looks.
pub const STEP: Len = Len::sixty_fourths(8);

/// How far a scan goes to each side at most.
pub const FARTHEST: Len = Len::feet_inches(10, 0);

/// A fault and the offsets at which it is not there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Holds {
    pub fault: Fault,
    /// Closed stretches of offsets without the fault, in order.
    pub free: Vec<(Len, Len)>,
    /// Whether the fault is there before anything moves.
    pub now: bool,
}

/// What a scan has found.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RoomToMove {
    pub course: Course,
    /// The offsets that were looked at: from zero or less to zero or more.
    pub looked: (Len, Len),
    /// Every fault that was met, in the order of their rules and elements.
    pub holds: Vec<Holds>,
}

/// The first thing that breaks on one side.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Break<'a> {
    /// The last offset at which nothing is broken that was not broken before.
    pub at: Len,
    pub fault: &'a Fault,
}

impl RoomToMove {
    /// The stretch round where the element stands in which nothing breaks that is not broken there.
    pub fn safe(&self) -> (Len, Len) {
        let (mut from, mut to) = self.looked;
        for holds in self.new_faults() {
            let here = holds.free.iter().find(|(a, b)| *a <= Len::ZERO && *b >= Len::ZERO);
            let (a, b) = here.copied().unwrap_or_default();
            (from, to) = (from.max(a), to.min(b));
        }
        (from, to)
    }

    /// What ends the safe stretch on the side of lower and of higher offsets; nothing where the scan ended first.
    pub fn breaks(&self) -> [Option<Break<'_>>; 2] {
        let (from, to) = self.safe();
        let ends = |at: Len, low: bool| {
            let mut breaking = self.new_faults().filter(move |h| {
                h.free.iter().any(|(a, b)| {
                    *a <= Len::ZERO && *b >= Len::ZERO && at == if low { *a } else { *b }
                })
            });
            breaking.next().map(|h| Break { at, fault: &h.fault })
        };
        let low = if from > self.looked.0 { ends(from, true) } else { None };
        let high = if to < self.looked.1 { ends(to, false) } else { None };
        [low, high]
    }

    /// The stretches in which no fault is there that is not there now.
    pub fn all(&self) -> Vec<(Len, Len)> {
        self.new_faults().fold(vec![self.looked], |all, holds| meet(&all, &holds.free))
    }

    fn new_faults(&self) -> impl Iterator<Item = &Holds> {
        self.holds.iter().filter(|h| !h.now)
    }
}

/// What two lists of stretches have in common.
fn meet(a: &[(Len, Len)], b: &[(Len, Len)]) -> Vec<(Len, Len)> {
    let pairs = a.iter().flat_map(|x| b.iter().map(move |y| (x.0.max(y.0), x.1.min(y.1))));
    pairs.filter(|(from, to)| from <= to).collect()
}

#[cfg(test)]
mod tests;
