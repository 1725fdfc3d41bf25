//! The walls that an edited partition or opening touches.

use std::collections::BTreeSet;

use geometry::Bounds;
use plan::element::BodyKind;
use plan::{Body, ElementId};

use super::Step;
use crate::walls::{self, Cuts};

impl Step<'_> {
    /// Derives again the walls that edited partitions met or meet, and those of edited openings; the places of those
    /// that have changed. How a wall is joined depends on the walls whose boxes meet its own, and on no other.
    pub(super) fn walls(&mut self) -> Option<Vec<usize>> {
        let edited = self.edited.iter().filter(|(_, e)| e.stands());
        let mut moved: Vec<ElementId> = Vec::new();
        let mut hosts: BTreeSet<ElementId> = BTreeSet::new();
        for (_, element) in edited {
            match &element.body {
                Body::Partition(_) => moved.push(element.id),
                Body::Opening(o) => drop(hosts.insert(o.host)),
                _ => {}
            }
        }
        if moved.is_empty() && hosts.is_empty() {
            return Some(Vec::new());
        }
        let only: BTreeSet<ElementId> = moved.iter().copied().collect();
        let unjoined = walls::some(self.plan, &only, &only, &Cuts::of_openings([].into_iter()))?;
        let mut wanted: BTreeSet<ElementId> = only;
        for new in &unjoined {
            let old = self.before.wall(new.id)?;
            for bounds in [old.body_bounds(), new.body_bounds()] {
                wanted.extend(self.bodies_near(bounds));
            }
        }
        // Furring joins no partition.
        wanted.retain(|id| self.before.wall(*id).is_some_and(|w| w.host.is_none()));
        let mut among = wanted.clone();
        let strips = self.before.standing(&[BodyKind::Furring]).map(|e| e.id);
        let strips = strips.filter_map(|id| self.before.wall(id));
        let strips: Vec<_> =
            strips.filter(|w| w.host.is_some_and(|h| hosts.contains(&h))).map(|w| w.id).collect();
        hosts.retain(|id| self.before.wall(*id).is_some());
        wanted.extend(&hosts);
        if !strips.is_empty() {
            wanted.extend(strips);
            let all = self.before.standing(&[BodyKind::Shell, BodyKind::Furring]);
            among.extend(all.map(|e| e.id).filter(|id| self.before.wall(*id).is_some()));
        }
        let boxes = unjoined.iter().map(|w| w.body_bounds());
        let boxes =
            boxes.chain(wanted.iter().filter_map(|id| Some(self.before.wall(*id)?.body_bounds())));
        for bounds in boxes.collect::<Vec<_>>() {
            among.extend(self.bodies_near(bounds));
        }
        among.extend(&wanted);
        let cut: BTreeSet<ElementId> = wanted
            .iter()
            .filter_map(|id| self.before.wall(*id))
            .map(|w| w.host.unwrap_or(w.id))
            .collect();
        let cuts = Cuts::of_openings(cut.iter().flat_map(|host| self.openings_of_host(*host)));
        let mut changed = Vec::new();
        for new in walls::some(self.plan, &wanted, &among, &cuts)? {
            let i = self.now.walls.find(&new.id, |w| w.id)?;
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

    fn bodies_near(&self, bounds: Bounds) -> impl Iterator<Item = ElementId> {
        self.before.grids.bodies.query(bounds).into_iter().map(|i| self.before.walls[i].id)
    }
}
