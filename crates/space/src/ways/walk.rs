//! The walk to a target: how far, through which doors, under what.

use geometry::passage;
use geometry::{Pt, Seg, Where, edges, locate, segs_touch};
use measure::Len;
use plan::ElementId;

use super::{WayIn, Ways};
use crate::Facts;

/// The width of a walking person where the way is wide enough (common practice, no source).
pub const WALKER: Len = Len::inches(20);

/// The shortest walk to a target.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Walked {
    /// Its corners from the arrival to the target; arcs cut into short legs.
    pub line: Vec<Pt>,
    /// How far, to the nearest unit.
    pub length: Len,
    /// The width of who walks: [`WALKER`], or as wide as the way lets pass.
    pub width: Len,
    /// The doors and cased openings that it passes, in the order of walking.
    pub doors: Vec<ElementId>,
    /// The lowest clear height on the way, finished floor to ceiling or overhead, and what hangs there.
    pub lowest: Len,
    pub under: Option<ElementId>,
}

impl Ways {
    /// The shortest walk to a target from the arrival that is best for it, for a person of [`WALKER`] or as wide as
    /// the way lets pass; `None` where nobody gets there. Widths are exact, the length is one of floats.
    pub fn walk(&self, facts: &Facts, way: &WayIn) -> Option<Walked> {
        let arrival = self.arrivals.get(way.arrival?)?;
        if !way.reached() {
            return None;
        }
        let width = way.width.min(WALKER);
        let walk = passage::walk(&self.obstacles, arrival.at, way.place, width)?;
        let legs: Vec<Seg> = walk.line.windows(2).map(|pair| Seg::new(pair[0], pair[1])).collect();
        let (lowest, under) = lowest(facts, &legs);
        Some(Walked {
            doors: doors(facts, &legs),
            length: Len::from_units(walk.length.round() as i32),
            line: walk.line,
            width,
            lowest,
            under,
        })
    }
}

fn doors(facts: &Facts, legs: &[Seg]) -> Vec<ElementId> {
    let mut passed: Vec<ElementId> = Vec::new();
    for leg in legs {
        let through = facts.openings.iter().filter(|o| segs_touch(*leg, o.line));
        for door in through.filter(|o| facts.is_door(o.id)) {
            if passed.last() != Some(&door.id) {
                passed.push(door.id);
            }
        }
    }
    passed
}

/// The lowest clear height over the legs, and the overhead that makes it; the ceiling where none is lower.
fn lowest(facts: &Facts, legs: &[Seg]) -> (Len, Option<ElementId>) {
    let ceiling = facts.plan.site.ceiling_height();
    let over = |ring: &[Pt]| {
        legs.iter().any(|leg| {
            locate(leg.a, ring) != Where::Outside || edges(ring).any(|e| segs_touch(*leg, e))
        })
    };
    let hanging = facts.overheads.iter().filter(|o| o.clear < ceiling && over(&o.ring));
    match hanging.min_by_key(|o| (o.clear, o.id)) {
        Some(lowest) => (lowest.clear, Some(lowest.id)),
        None => (ceiling, None),
    }
}
