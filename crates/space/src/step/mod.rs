//! Facts of a plan made from those of a plan that is almost the same, as from one step of a drag to the next.
//!
//! Only what the edited elements touch is derived again; all else is shared. Where more than places has changed, where
//! foundation walls or furring move, or where rooms come and go, everything is derived anew. The result is what
//! [`derive`] gives, to the bit.

mod floors;
mod walls;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use geometry::{Bounds, Pt, Shape};
use measure::Len;
use plan::element::BodyKind;
use plan::{Body, Element, ElementId, Plan};

use crate::changes::is_the_same_thing;
use crate::facts::thing_box;
use crate::rooms::{About, Tags};
use crate::{Facts, OpeningFacts, Room, RoomIndex, WallFacts, WallKind, derive};
use crate::{openings, overheads, solids};

/// More edited elements than this are not a step.
const MOST: usize = 48;

/// More than what openings and rooms look beyond their own box.
const NEAR: Len = Len::inches(1);

/// The facts of a plan, with what it shares with another taken from that one's facts.
pub fn derive_from(before: &Facts, plan: &Arc<Plan>) -> Facts {
    Step::new(before, plan).and_then(Step::facts).unwrap_or_else(|| derive(plan))
}

struct Step<'a> {
    before: &'a Facts,
    plan: &'a Plan,
    edited: Vec<(&'a Element, &'a Element)>,
    /// The facts of before, changed bit by bit.
    now: Facts,
}

impl<'a> Step<'a> {
    fn new(before: &'a Facts, plan: &'a Arc<Plan>) -> Option<Step<'a>> {
        let old = &before.plan;
        if old.elements().len() != plan.elements().len() || old.site != plan.site {
            return None;
        }
        let edited: Vec<_> = old.elements().differing(plan.elements()).take(MOST + 1).collect();
        let small = |(a, b): &(&Element, &Element)| {
            let built_in = matches!(b.body, Body::Shell(_) | Body::Furring(_) | Body::RoomTag(_));
            is_the_same_thing(a, b) && !built_in
        };
        let step = edited.len() <= MOST && edited.iter().all(small);
        let now = Facts { plan: Arc::clone(plan), ..before.clone() };
        step.then_some(Step { before, plan, edited, now })
    }

    fn facts(mut self) -> Option<Facts> {
        self.things();
        let changed_walls = self.walls()?;
        let under = self.overheads()?;
        let shapes = self.floors(&changed_walls)?;
        for (i, shape) in &shapes {
            self.now.grids.rooms.put(*i, shape.bounds());
        }
        let changed_openings = self.openings(&changed_walls, &shapes)?;
        self.solids(&changed_walls, &changed_openings)?;
        self.rooms(&changed_walls, &under, shapes, &changed_openings)?;
        Some(self.now)
    }

    /// Where edited things stand now.
    fn things(&mut self) {
        for (_, element) in &self.edited {
            let elements = self.plan.elements().shared();
            if let Some(place) = elements.find(&element.id, |e| e.id) {
                self.now.grids.things.put(place, thing_box(element));
            }
        }
    }

    /// Edited overheads; the boxes where they hang or hung.
    fn overheads(&mut self) -> Option<Vec<Bounds>> {
        let mut boxes = Vec::new();
        for (_, element) in &self.edited {
            if !matches!(element.body, Body::Overhead(_)) {
                continue;
            }
            let place = self.now.overheads.find(&element.id, |o| o.id);
            match (place, overheads::one(self.plan, element)) {
                (Some(i), Some(new)) => {
                    boxes.extend([self.now.overheads[i].bounds(), new.bounds()]);
                    self.now.grids.overheads.put(i, new.bounds());
                    self.now.overheads.put(i, new);
                }
                (None, None) => {}
                _ => return None,
            }
        }
        Some(boxes)
    }

    /// Openings that were edited, whose wall has changed, or that look into a room of another shape; the places of those
    /// that have changed.
    fn openings(
        &mut self,
        walls: &[usize],
        shapes: &BTreeMap<usize, Shape>,
    ) -> Option<BTreeSet<usize>> {
        let edited = self.edited.iter().filter(|(_, e)| matches!(e.body, Body::Opening(_)));
        let mut anew: BTreeSet<ElementId> = edited.map(|(_, e)| e.id).collect();
        for i in walls {
            anew.extend(self.openings_of_host(self.now.walls[*i].id).map(|e| e.id));
        }
        let mut beside: BTreeSet<usize> = BTreeSet::new();
        for (i, shape) in shapes {
            for bounds in [self.before.rooms[*i].shape.bounds(), shape.bounds()] {
                let near = self.before.grids.openings.query(bounds.grow(NEAR));
                beside.extend(near);
            }
        }
        let room_at = |p: Pt| self.room_at(shapes, p);
        let mut new: Vec<(ElementId, Option<OpeningFacts>)> = Vec::new();
        for old in beside.into_iter().map(|i| &self.before.openings[i]) {
            if !anew.contains(&old.id) {
                let host = self.now.wall(old.host)?;
                new.push((old.id, Some(openings::between_rooms(old.clone(), host, &room_at))));
            }
        }
        let strips = self.strips(walls);
        for id in anew {
            let element = self.plan.get(id)?;
            new.push((id, openings::standing(element, &self.now.walls, &strips, &room_at)));
        }
        let mut changed = BTreeSet::new();
        for (id, new) in new {
            match (self.now.openings.find(&id, |o| o.id), new) {
                (Some(i), Some(new)) if new != self.now.openings[i] => {
                    self.now.grids.openings.put(i, new.bounds());
                    self.now.openings.put(i, new);
                    changed.insert(i);
                }
                (Some(_), Some(_)) | (None, None) => {}
                _ => return None,
            }
        }
        Some(changed)
    }

    /// The furring that openings may go through, where a foundation wall has changed or an opening was edited.
    fn strips(&self, walls: &[usize]) -> Vec<&WallFacts> {
        let edited = self.edited.iter().any(|(_, e)| matches!(e.body, Body::Opening(_)));
        if !edited && walls.iter().all(|i| self.now.walls[*i].kind == WallKind::Partition) {
            return Vec::new();
        }
        let furring = self.now.standing(&[BodyKind::Furring]);
        openings::strips(furring.filter_map(|e| self.now.wall(e.id)))
    }

    fn openings_of_host(&self, host: ElementId) -> impl Iterator<Item = &'a Element> + use<'_, 'a> {
        let hosted = &self.before.hosted;
        let first = hosted.partition_point(|(h, _)| *h < host);
        let of_host = hosted[first..].iter().take_while(move |(h, _)| *h == host);
        of_host.map(|(_, place)| &*self.plan.elements().shared()[*place as usize])
    }

    /// The first room whose floor holds a point.
    fn room_at(&self, shapes: &BTreeMap<usize, Shape>, p: Pt) -> Option<RoomIndex> {
        let shape = |i: usize| shapes.get(&i).unwrap_or(&self.before.rooms[i].shape);
        self.now.grids.rooms.first_at(p, |i| shape(i).contains(p)).map(RoomIndex)
    }

    /// The pieces of what was edited, of walls that have changed, and of the walls of openings that have.
    fn solids(&mut self, walls: &[usize], openings: &BTreeSet<usize>) -> Option<()> {
        let edited = self.edited.iter().map(|(_, e)| e.id);
        let mut ids: BTreeSet<ElementId> = edited.collect();
        ids.extend(walls.iter().map(|i| self.now.walls[*i].id));
        ids.extend(openings.iter().map(|i| self.now.openings[*i].host));
        for id in ids {
            let new = match self.now.wall(id) {
                Some(wall) => {
                    let openings = self.openings_of_host(id);
                    let openings = openings.filter_map(|e| Some((e, self.now.opening(e.id)?)));
                    Some(solids::of_wall(self.plan, wall, openings))
                }
                None => solids::of_thing(self.plan, self.plan.get(id)?),
            };
            let Some(new) = new else { continue };
            let (i, bounds) = self.now.solids.put(id, new)?;
            self.now.grids.solids.put(i, bounds);
        }
        Some(())
    }

    /// The rooms of another shape, beside changed walls, with changed openings, or under changed overheads. `None` where
    /// a tag changes its room.
    fn rooms(
        &mut self,
        walls: &[usize],
        under: &[Bounds],
        mut shapes: BTreeMap<usize, Shape>,
        changed_openings: &BTreeSet<usize>,
    ) -> Option<()> {
        let mut again: BTreeSet<usize> = shapes.keys().copied().collect();
        for i in walls {
            let outlines = [&self.before.walls[*i].outline, &self.now.walls[*i].outline];
            let bounds = Bounds::of(outlines.into_iter().flatten()).grow(NEAR);
            again.extend(self.now.grids.rooms.query(bounds));
            again.extend(self.before.grids.rooms.query(bounds));
        }
        for bounds in under {
            again.extend(self.now.grids.rooms.query(*bounds));
        }
        for i in changed_openings {
            let both = [&self.before.openings[*i], &self.now.openings[*i]];
            again.extend(both.into_iter().flat_map(|o| o.rooms()).map(|r| r.0));
        }
        // A tag near a changed shape stays in its room, or everything is derived anew.
        let tag = |id: ElementId| match &self.plan.get(id)?.body {
            Body::RoomTag(tag) => Some((id, tag)),
            _ => None,
        };
        let loose = self.before.loose_tags.iter().filter_map(|id| tag(*id));
        if loose.into_iter().any(|(_, t)| self.room_at(&shapes, t.at).is_some()) {
            return None;
        }
        let mut new = Vec::new();
        for i in again {
            let old = &self.before.rooms[i];
            let ids = old.tag.into_iter().chain(old.more_tags.iter().copied());
            let tags: Tags<'_> = ids.filter_map(tag).collect();
            if tags.iter().any(|(_, t)| self.room_at(&shapes, t.at) != Some(RoomIndex(i))) {
                return None;
            }
            new.push((i, tags));
        }
        let mut rooms = Vec::new();
        for (i, tags) in new {
            let old = &self.before.rooms[i];
            let opens = |o: &&OpeningFacts| o.rooms().any(|r| r.0 == i);
            let changed = changed_openings.iter().map(|i| self.now.openings[*i].id);
            let ids: BTreeSet<ElementId> = old.openings.iter().copied().chain(changed).collect();
            let openings = ids.into_iter().filter_map(|id| self.now.opening(id)).filter(opens);
            let openings = openings.map(|o| o.id).collect();
            let about = About {
                plan: self.plan,
                walls: &self.now.walls,
                outlines: &self.now.grids.outlines,
                overheads: &self.now.overheads,
                overhead_places: &self.now.grids.overheads,
            };
            let room = match shapes.remove(&i) {
                Some(shape) => about.room(RoomIndex(i), shape, &tags, openings),
                None if under.is_empty() => about.same_floor(old, openings, walls),
                None => {
                    let (lowest, highest) = about.heights(&old.shape);
                    Room { lowest, highest, ..about.same_floor(old, openings, walls) }
                }
            };
            rooms.push((i, room));
        }
        for (i, room) in rooms {
            if room != self.now.rooms[i] {
                self.now.rooms.put(i, room);
            }
        }
        Some(())
    }
}
