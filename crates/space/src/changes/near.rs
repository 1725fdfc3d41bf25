//! What stands near something that has changed.

use geometry::Bounds;
use measure::Len;
use plan::Body;
use plan::element::{BodyKind, ServiceKind};

use crate::Facts;

/// Things and openings, each with how far it stands from the nearest box in which something has changed.
#[derive(Clone, Debug, Default)]
pub struct Near {
    /// For each kind, by their places in the plan's list. How far they stand has their own greatest side taken off.
    things: [Vec<Thing>; BodyKind::COUNT],
    /// By their places in the list of openings.
    openings: Vec<(usize, Len)>,
}

#[derive(Clone, Copy, Debug)]
struct Thing {
    place: u32,
    away: Len,
    /// What service point it is, if it is one.
    service: Option<ServiceKind>,
}

impl Near {
    pub(super) fn new(facts: &Facts, boxes: &[Bounds], reach: Len) -> Near {
        let mut near = Near::default();
        let (things, openings) = (&facts.grids.things, &facts.grids.openings);
        for (within, boxes) in together(boxes, reach) {
            let away = |from: Bounds| {
                let all = boxes.iter().map(|changed| apart(from, *changed));
                all.min().filter(|away| *away <= reach)
            };
            for place in things.query(within) {
                let Some(away) = away(things.get(place)) else { continue };
                let body = &facts.element_at(place as u32).body;
                let service = match body {
                    Body::Service(service) => Some(service.kind),
                    _ => None,
                };
                near.things[body.kind() as usize].push(Thing {
                    place: place as u32,
                    away,
                    service,
                });
            }
            let away = |i: usize| Some((i, away(openings.get(i))?));
            near.openings.extend(openings.query(within).into_iter().filter_map(away));
        }
        for things in &mut near.things {
            things.sort_unstable_by_key(|t| (t.place, t.away));
            things.dedup_by_key(|t| t.place);
        }
        near.openings.sort_unstable();
        near.openings.dedup_by_key(|o| o.0);
        near
    }

    /// The standing things of a kind (no walls, openings or overheads) that stand no farther than `reach` and their own
    /// greatest side, by their places in the plan's list.
    pub fn things(&self, kind: BodyKind, reach: Len) -> impl Iterator<Item = u32> {
        self.things[kind as usize].iter().filter(move |t| t.away <= reach).map(|t| t.place)
    }

    /// Of those the service points of some kinds.
    pub fn services(&self, kinds: &[ServiceKind], reach: Len) -> impl Iterator<Item = u32> {
        let services = self.things[BodyKind::Service as usize].iter();
        let wanted =
            move |t: &&Thing| t.away <= reach && t.service.is_some_and(|s| kinds.contains(&s));
        services.filter(wanted).map(|t| t.place)
    }

    /// The openings that stand no farther than `reach`, swinging leaves included, by their places in the list.
    pub fn openings(&self, reach: Len) -> impl Iterator<Item = usize> {
        self.openings.iter().filter(move |(_, away)| *away <= reach).map(|o| o.0)
    }
}

/// Boxes that are looked round together, because what is near one is near another, and the box within which to look.
fn together(boxes: &[Bounds], reach: Len) -> Vec<(Bounds, Vec<Bounds>)> {
    let mut groups: Vec<(Bounds, Vec<Bounds>)> = Vec::new();
    for changed in boxes.iter().filter(|b| !b.is_empty()) {
        let within = changed.grow(reach);
        match groups.iter_mut().find(|(group, _)| group.meets(within)) {
            Some((group, members)) => {
                *group = group.union(within);
                members.push(*changed);
            }
            None => groups.push((within, vec![*changed])),
        }
    }
    groups
}

/// How far two boxes are apart along the axis on which they are farther apart.
fn apart(a: Bounds, b: Bounds) -> Len {
    let along = |a: (i32, i32), b: (i32, i32)| (a.0 - b.1).max(b.0 - a.1);
    let x = along((a.min.x, a.max.x), (b.min.x, b.max.x));
    let y = along((a.min.y, a.max.y), (b.min.y, b.max.y));
    Len::from_units(x.max(y).max(0))
}
