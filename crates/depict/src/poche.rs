//! The joined outline of the walls, so that joins are clean.

use geometry::{Ring, Shape, overlay, twice_area};
use plan::State;
use space::{Facts, WallFacts, WallKind};

/// How a wall is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Class {
    /// Solid poché.
    Shell,
    /// A framed wall that is there already.
    Existing,
    /// A new partition or furring.
    New,
}

impl Class {
    pub fn of(facts: &Facts, wall: &WallFacts) -> Class {
        let state = facts.plan.get(wall.id).map(|e| e.state);
        match (wall.kind, state) {
            (WallKind::Shell, _) => Class::Shell,
            (_, Some(State::Existing)) => Class::Existing,
            _ => Class::New,
        }
    }
}

/// The outlines of the joined walls by class, openings cut out, and the slab that the shell encloses.
/// It depends on the facts alone: keep it beside them.
#[derive(Clone, Debug, Default)]
pub struct Poche {
    pub(crate) shell: Vec<Shape>,
    pub(crate) existing: Vec<Shape>,
    pub(crate) new: Vec<Shape>,
    pub(crate) slab: Vec<Ring>,
}

impl Poche {
    pub fn of(facts: &Facts) -> Poche {
        let joined = |class: Class| {
            let pieces: Vec<Ring> = facts
                .walls
                .iter()
                .filter(|w| Class::of(facts, w) == class)
                .flat_map(|w| w.pieces.iter().map(|p| p.to_vec()))
                .collect();
            if pieces.is_empty() { Vec::new() } else { overlay::union(&pieces, &[]) }
        };
        let outlines: Vec<Ring> = facts
            .walls
            .iter()
            .filter(|w| w.kind == WallKind::Shell)
            .map(|w| w.outline.clone())
            .collect();
        let slab = if outlines.is_empty() { Vec::new() } else { overlay::union(&outlines, &[]) };
        // A hair left open at a corner is no floor.
        let least = i128::from(measure::Len::PER_FOOT) * i128::from(measure::Len::PER_FOOT);
        let slab = slab
            .into_iter()
            .flat_map(|s| s.holes)
            .filter(|hole| twice_area(hole).abs() > least)
            .collect();
        Poche {
            shell: joined(Class::Shell),
            existing: joined(Class::Existing),
            new: joined(Class::New),
            slab,
        }
    }
}
