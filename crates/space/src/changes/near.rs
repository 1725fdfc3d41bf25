//! What stands near something that has changed.

use geometry::Bounds;
use measure::Len;
use plan::element::BodyKind;

use crate::Facts;

/// Things and openings, each with how far it stands from the nearest box in which something has changed.
#[derive(Clone, Debug, Default)]
pub struct Near {
    /// For each kind, by their places in the plan's list. How far they stand has their own greatest side taken off.
    things: [Vec<(u32, Len)>; BodyKind::COUNT],
    /// By their places in the list of openings.
    openings: Vec<(usize, Len)>,
}

impl Near {
    pub(super) fn new(facts: &Facts, boxes: &[Bounds], reach: Len) -> Near {
        let mut near = Near::default();
        for changed in boxes.iter().filter(|b| !b.is_empty()) {
            let within = changed.grow(reach);
            let things = &facts.grids.things;
            for place in things.query(within) {
                let kind = facts.element_at(place as u32).body.kind();
                let away = apart(things.get(place), *changed);
                near.things[kind as usize].push((place as u32, away));
            }
            let openings = &facts.grids.openings;
            let away = |i: usize| (i, apart(openings.get(i), *changed));
            near.openings.extend(openings.query(within).into_iter().map(away));
        }
        near.things.iter_mut().for_each(nearest);
        nearest(&mut near.openings);
        near
    }

    /// The standing things of a kind (no walls, openings or overheads) that stand no farther than `reach` and their own
    /// greatest side, by their places in the plan's list.
    pub fn things(&self, kind: BodyKind, reach: Len) -> impl Iterator<Item = u32> {
        self.things[kind as usize].iter().filter(move |(_, away)| *away <= reach).map(|t| t.0)
    }

    /// The openings that stand no farther than `reach`, swinging leaves included, by their places in the list.
    pub fn openings(&self, reach: Len) -> impl Iterator<Item = usize> {
        self.openings.iter().filter(move |(_, away)| *away <= reach).map(|o| o.0)
    }
}

/// Each once, with the least distance.
fn nearest<T: Ord + Copy>(found: &mut Vec<(T, Len)>) {
    found.sort_unstable();
    found.dedup_by_key(|f| f.0);
}

/// How far two boxes are apart along the axis on which they are farther apart.
fn apart(a: Bounds, b: Bounds) -> Len {
    let along = |a: (i32, i32), b: (i32, i32)| (a.0 - b.1).max(b.0 - a.1);
    let x = along((a.min.x, a.max.x), (b.min.x, b.max.x));
    let y = along((a.min.y, a.max.y), (b.min.y, b.max.y));
    Len::from_units(x.max(y).max(0))
}
