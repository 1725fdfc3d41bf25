//! Ways in: how wide a person may be to get to each service point and each room, and where it pinches.
//!
//! Doors stand open 90° and count by their clear width; furniture and stored things count; so do overheads that hang
//! lower than a person. The method is `geometry::passage`; a person is a disc, upright.

mod body;
mod keeper;
mod pieces;
mod places;
mod walk;

use geometry::Pt;
use geometry::passage::{self, Limit, Obstacles, Way};
use measure::Len;
use plan::ElementId;

use crate::{Facts, RoomIndex};

pub use body::{PERSON, STEP};
pub use keeper::Keeper;
use pieces::Piece;
pub use places::{Arrival, Target};
pub use walk::{WALKER, Walked};

/// Ways are measured up to this width; what is as wide or wider is called open.
pub const WIDEST: Len = Len::inches(60);

/// The ways to everything in a plan that somebody must get to.
#[derive(Clone, Debug)]
pub struct Ways {
    /// Where people come into the basement.
    pub arrivals: Vec<Arrival>,
    /// Service points by id, then rooms by index.
    pub ways: Vec<WayIn>,
    obstacles: Obstacles,
}

/// The widest way to one target.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WayIn {
    pub target: Target,
    /// Where a person stands at the target.
    pub place: Pt,
    /// The arrival that it starts from, as an index into [`Ways::arrivals`].
    pub arrival: Option<usize>,
    /// How wide a person may be, rounded down to the grid; [`WIDEST`] where nothing limits it below that, zero
    /// where nobody gets there.
    pub width: Len,
    pub hindrance: Hindrance,
}

/// What keeps a way from being wider.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Hindrance {
    /// Nothing below [`WIDEST`].
    Open,
    /// A gap that every way passes.
    Pinch(Gap),
    /// The room to stand at the target or at the arrival: from there to the nearest thing.
    Standing(Gap),
    /// Things that touch go all round the target or the arrival.
    Walled(Gap),
    /// The target or the arrival lies inside a thing.
    Buried(ElementId),
    /// There is no stair, no outside door and no stated arrival.
    NoArrival,
}

/// A gap and what makes it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Gap {
    pub from: Pt,
    pub to: Pt,
    /// The elements on both sides; the same one twice where one element makes it, as a door its own jambs. For
    /// [`Hindrance::Standing`] what stands nearest, twice.
    pub between: [ElementId; 2],
    /// The opening that it lies in.
    pub opening: Option<ElementId>,
}

impl WayIn {
    /// Whether anybody gets there.
    pub fn reached(&self) -> bool {
        matches!(self.hindrance, Hindrance::Open | Hindrance::Pinch(_) | Hindrance::Standing(_))
    }

    /// The gap that limits it, if one does.
    pub fn gap(&self) -> Option<&Gap> {
        match &self.hindrance {
            Hindrance::Pinch(gap) | Hindrance::Standing(gap) | Hindrance::Walled(gap) => Some(gap),
            Hindrance::Open | Hindrance::Buried(_) | Hindrance::NoArrival => None,
        }
    }
}

/// Works out the ways of a plan.
pub fn ways(facts: &Facts) -> Ways {
    let asked = Asked::of(facts);
    let [starts, ends] = asked.places();
    let found = passage::ways(&asked.obstacles, &starts, &ends, WIDEST);
    asked.answered(facts, found)
}

/// What stands in the way, where ways begin, and where they lead.
struct Asked {
    pieces: Vec<Piece>,
    obstacles: Obstacles,
    arrivals: Vec<Arrival>,
    targets: Vec<(Target, Pt)>,
}

impl Asked {
    fn of(facts: &Facts) -> Asked {
        let pieces = pieces::of(facts);
        let obstacles = pieces::obstacles(&pieces);
        let arrivals = places::arrivals(facts, &obstacles);
        let targets = places::targets(facts, &obstacles);
        Asked { pieces, obstacles, arrivals, targets }
    }

    /// The points of the arrivals and of the targets.
    fn places(&self) -> [Vec<Pt>; 2] {
        let starts = self.arrivals.iter().map(|a| a.at).collect();
        [starts, self.targets.iter().map(|(_, at)| *at).collect()]
    }

    /// The ways in the words of the plan.
    fn answered(self, facts: &Facts, found: Vec<Way>) -> Ways {
        let ways = self
            .targets
            .into_iter()
            .zip(found)
            .map(|((target, place), way)| WayIn {
                target,
                place,
                arrival: way.arrival,
                width: if way.reached() { way.width } else { Len::ZERO },
                hindrance: hindrance(facts, way.limit),
            })
            .collect();
        Ways { arrivals: self.arrivals, ways, obstacles: self.obstacles }
    }
}

/// What stands in the way of a thing that is carried above a height and reaches up to another, both from the finished
/// floor: convex pieces, as for a person.
pub(crate) fn obstacles_up_to(facts: &Facts, bottom: Len, top: Len) -> Vec<geometry::Ring> {
    let floor = facts.plan.site.floor_build;
    let pieces = pieces::between(facts, (floor + bottom, floor + top));
    pieces.into_iter().map(|(ring, _)| ring).collect()
}

fn hindrance(facts: &Facts, limit: Limit) -> Hindrance {
    let id = |owner: usize| ElementId(u32::try_from(owner).unwrap_or(u32::MAX));
    let gap = |from: Pt, to: Pt, owners: [usize; 2]| Gap {
        from,
        to,
        between: owners.map(id),
        opening: opening_at(facts, from.midway(to)),
    };
    match limit {
        Limit::Open => Hindrance::Open,
        Limit::Pinch(p) => Hindrance::Pinch(gap(p.from, p.to, p.owners)),
        Limit::Walled(p) => Hindrance::Walled(gap(p.from, p.to, p.owners)),
        Limit::Standing(s) => Hindrance::Standing(gap(s.place, s.nearest, [s.owner; 2])),
        Limit::Buried(s) => Hindrance::Buried(id(s.owner)),
        Limit::NoArrival => Hindrance::NoArrival,
    }
}

/// The opening whose hole holds a point.
fn opening_at(facts: &Facts, at: Pt) -> Option<ElementId> {
    let holds =
        |o: &&crate::OpeningFacts| geometry::locate(at, &o.quad) != geometry::Where::Outside;
    facts.openings.iter().find(holds).map(|o| o.id)
}

/// The room that a target is, where it is one.
impl Target {
    pub fn room(self) -> Option<RoomIndex> {
        match self {
            Target::Room(index) => Some(index),
            Target::Service(_) => None,
        }
    }
}

#[cfg(test)]
mod tests;
