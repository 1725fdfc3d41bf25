//! The walls that an edited partition or opening touches.

use std::collections::BTreeSet;

use geometry::Bounds;
use plan::element::BodyKind;
use plan::{Body, Element, ElementId};

use super::Step;
use crate::WallKind;
use crate::walls::{self, Cuts};

impl Step<'_> {
    /// Derives again the walls that edited partitions met or meet, and those of edited openings; the places of those
    /// that have changed. How a wall is joined depends on the walls whose boxes meet its own, and on no other.
    pub(super) fn walls(&mut self) -> Option<Vec<usize>> {
        let before = &self.before.walls;
        let mut moved: Vec<(usize, Bounds)> = Vec::new();
        let mut wanted: Vec<usize> = Vec::new();
        for (_, element) in self.edited.iter().filter(|(_, e)| e.stands()) {
            match &element.body {
                Body::Partition(_) => {
                    moved.push((self.wall_place(element.id)?, walls::bounds(self.plan, element)?));
                }
                Body::Opening(o) => wanted.extend(self.wall_place(o.host)),
                _ => {}
            }
        }
        let mut among = self.furring_on(&wanted);
        if !among.is_empty() {
            wanted.extend(&among);
            let all = self.before.standing(&[BodyKind::Shell, BodyKind::Furring]);
            among.extend(all.filter_map(|e| self.wall_place(e.id)));
        }
        for (i, new) in &moved {
            wanted.push(*i);
            for bounds in [before[*i].body_bounds(), *new] {
                // Furring joins no partition.
                let joins = |i: usize| before[i].host.is_none();
                self.before
                    .grids
                    .bodies
                    .each_near(bounds, |i| wanted.extend(joins(i).then_some(i)));
            }
        }
        tidy(&mut wanted);
        let boxes = wanted.iter().map(|i| before[*i].body_bounds());
        for bounds in moved.iter().map(|(_, new)| *new).chain(boxes) {
            self.before.grids.bodies.each_near(bounds, |i| among.push(i));
        }
        tidy(&mut among);
        self.joined(&wanted, &among)
    }

    /// Derives some walls again, where `among` holds them and all that they may join; the places of those that have
    /// changed.
    fn joined(&mut self, wanted: &[usize], among: &[usize]) -> Option<Vec<usize>> {
        let before = &self.before.walls;
        let host = |i: &usize| before[*i].host.unwrap_or(before[*i].id);
        let hosts: BTreeSet<ElementId> = wanted.iter().map(host).collect();
        let cuts = Cuts::of(hosts.into_iter().flat_map(|host| self.openings_of_host(host)));
        let element = |i: &usize| self.plan.get(before[*i].id);
        let elements: Vec<&Element> = among.iter().map(element).collect::<Option<_>>()?;
        let at = |i: &usize| among.binary_search(i).ok();
        let at: Vec<usize> = wanted.iter().map(at).collect::<Option<_>>()?;
        let new = walls::some(self.plan, elements.into_iter(), &at, &cuts)?;
        let mut changed = Vec::new();
        for (&i, new) in wanted.iter().zip(new) {
            let old = &self.now.walls[i];
            if new == *old {
                continue;
            }
            self.now.askew =
                self.now.askew + usize::from(!new.is_upright()) - usize::from(!old.is_upright());
            self.now.grids.bodies.put(i, new.body_bounds());
            self.now.grids.outlines.put(i, Bounds::of(&new.outline));
            self.now.walls.put(i, new);
            changed.push(i);
        }
        Some(changed)
    }

    /// The furring on those of some walls that are foundation walls.
    fn furring_on(&self, hosts: &[usize]) -> Vec<usize> {
        let before = &self.before.walls;
        let shell = |i: &&usize| before[**i].kind == WallKind::Shell;
        let shells: Vec<ElementId> = hosts.iter().filter(shell).map(|i| before[*i].id).collect();
        if shells.is_empty() {
            return Vec::new();
        }
        let furring = self.before.standing(&[BodyKind::Furring]);
        let places = furring.filter_map(|e| self.wall_place(e.id));
        places.filter(|i| before[*i].host.is_some_and(|h| shells.contains(&h))).collect()
    }

    fn wall_place(&self, id: ElementId) -> Option<usize> {
        self.before.walls.find(&id, |w| w.id)
    }
}

/// Puts places in order, each once.
fn tidy(places: &mut Vec<usize>) {
    places.sort_unstable();
    places.dedup();
}
