//! What is not as it was in a plan of which only places have changed, as from one step of a drag to the next.

mod homes;
mod near;
mod outlines;
#[cfg(test)]
mod tests;

use std::collections::BTreeSet;

use geometry::Bounds;
use measure::Len;
use plan::element::{BodyKind, ServiceKind};
use plan::{Body, Element};

use crate::{Facts, OpeningFacts, RoomIndex, WallFacts};

pub use homes::{BEFORE_A_DEVICE, BEFORE_A_FACE};
pub use near::Near;

/// How far from a room something may stand that is counted to it: devices hang on its walls.
const BESIDE: Len = Len::inches(24);

/// What a judgement of the plan as a whole may rest on, beside what is drawn and stated at all: the kinds of the
/// elements, their details, the uses of the rooms, and which openings join them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum On {
    /// Where elements of a kind stand, how large they are, and in which room each is.
    Kind(BodyKind),
    /// The same of service points of a kind.
    Service(ServiceKind),
    /// Openings that lead outdoors.
    Outside,
    /// The floors of the rooms.
    Floors,
}

/// What has changed between two plans that hold the same things: each element is what it was and only stands elsewhere
/// or has other sizes, each room is used as it was, each opening joins the rooms that it joined.
#[derive(Clone, Debug, Default)]
pub struct Changes {
    /// A bit for each kind of element that [`On::Kind`] holds of.
    kinds: u32,
    /// A bit for each kind of service point that [`On::Service`] holds of.
    services: u64,
    /// Service points that stand elsewhere or are in another room, by their places in the plan's list, in order.
    moved_services: Vec<u32>,
    outside: bool,
    floors: bool,
    /// Where something is or was that is not as it was.
    boxes: Vec<Bounds>,
    /// Rooms that are not as they were, or have an opening, a wall or a thing that is not as it was.
    touched: BTreeSet<RoomIndex>,
}

impl Changes {
    /// `None` where more than places has changed.
    pub fn between(before: &Facts, after: &Facts) -> Option<Changes> {
        let mut changes = Changes::default();
        let (old, new) = (&before.plan, &after.plan);
        let lists = [
            (before.walls.len(), after.walls.len()),
            (before.openings.len(), after.openings.len()),
            (before.rooms.len(), after.rooms.len()),
            (before.overheads.len(), after.overheads.len()),
            (old.elements().len(), new.elements().len()),
        ];
        if old.site != new.site
            || old.set_aside() != new.set_aside()
            || before.loose_tags != after.loose_tags
            || lists.into_iter().any(|(a, b)| a != b)
        {
            return None;
        }
        for (a, b) in old.elements().differing(new.elements()) {
            if !is_the_same_thing(a, b) {
                return None;
            }
            changes.element(before, a);
            changes.element(after, b);
            if let Some(place) = new.elements().shared().find(&b.id, |e| e.id) {
                changes.moved(b, place as u32);
            }
        }
        // Where a wall stood or stands that did not before.
        let mut swept = Vec::new();
        for i in before.walls.differing(&after.walls) {
            swept.push(changes.wall(after, &before.walls[i], &after.walls[i])?);
        }
        for i in before.openings.differing(&after.openings) {
            changes.opening(after, &before.openings[i], &after.openings[i])?;
        }
        for i in before.rooms.differing(&after.rooms) {
            let (a, b) = (&before.rooms[i], &after.rooms[i]);
            let same = a.tag == b.tag
                && a.more_tags == b.more_tags
                && a.name == b.name
                && a.room_use == b.room_use
                && a.openings == b.openings
                // A room without a tag is known by its place alone.
                && (a.tag.is_some() || a.shape.contains(b.label_at) || b.shape.contains(a.label_at));
            if !same {
                return None;
            }
            changes.touched.insert(b.index);
            changes.floors |= a.shape != b.shape;
        }
        changes.rehoused(before, after, &swept);
        changes.moved_services.sort_unstable();
        changes.moved_services.dedup();
        Some(changes)
    }

    fn element(&mut self, facts: &Facts, element: &Element) {
        let id = element.id;
        let mut bounds = Bounds::of(element.body.points());
        for solid in facts.solids_of(id) {
            bounds = bounds.union(Bounds::of(&solid.ring));
        }
        if let Some(overhead) = facts.overhead(id) {
            bounds = bounds.union(overhead.bounds());
        }
        // Walls and openings are compared as facts.
        let built = matches!(
            element.body,
            Body::Shell(_) | Body::Partition(_) | Body::Furring(_) | Body::Opening(_)
        );
        if !built {
            self.touched.extend(facts.rooms_near(bounds.grow(BESIDE)).map(|r| r.index));
            self.boxes.push(bounds);
        }
    }

    fn touch_kind(&mut self, element: &Element) {
        self.kinds |= 1 << element.body.kind() as u32;
        if let Body::Service(service) = &element.body {
            self.services |= 1 << service.kind as u64;
        }
    }

    /// Notes that a thing stands elsewhere or is in another room.
    fn moved(&mut self, element: &Element, place: u32) {
        self.touch_kind(element);
        if matches!(element.body, Body::Service(_)) {
            self.moved_services.push(place);
        }
    }

    /// The box of where it stands or stood otherwise; `None` where it is another wall.
    fn wall(&mut self, facts: &Facts, a: &WallFacts, b: &WallFacts) -> Option<Bounds> {
        let what = |w: &WallFacts| (w.id, w.kind, w.host);
        if what(a) != what(b) {
            return None;
        }
        let moved = if (a.thickness, a.top) == (b.thickness, b.top) {
            outlines::difference(&a.outline, &b.outline)
        } else {
            Bounds::of(a.outline.iter().chain(&b.outline))
        };
        self.boxes.push(moved);
        // Where only its ends were joined otherwise, the rooms at its faces tell by themselves.
        let faces = |w: &WallFacts| (w.line, w.left, w.right, w.thickness, w.top);
        if faces(a) != faces(b) {
            if let Some(element) = facts.plan.get(b.id) {
                self.touch_kind(element);
            }
            self.touched.extend(facts.rooms_near(moved).map(|r| r.index));
        }
        Some(moved)
    }

    fn opening(&mut self, facts: &Facts, a: &OpeningFacts, b: &OpeningFacts) -> Option<()> {
        let joins = |o: &OpeningFacts| (o.id, o.left, o.right, o.outside);
        if joins(a) != joins(b) {
            return None;
        }
        self.boxes.extend([a.bounds(), b.bounds()]);
        self.touched.extend(b.rooms());
        self.touch_kind(facts.plan.get(b.id)?);
        self.outside |= b.outside;
        Some(())
    }

    /// Whether anything has changed that a judgement rests on.
    pub fn touch(&self, on: &[On]) -> bool {
        on.iter().any(|on| match on {
            On::Kind(kind) => self.kinds & 1 << *kind as u32 != 0,
            On::Service(kind) => self.services & 1 << *kind as u64 != 0,
            On::Outside => self.outside,
            On::Floors => self.floors,
        })
    }

    /// The service points that stand elsewhere or are in another room, by their places in the plan's list, in order.
    pub fn services(&self) -> &[u32] {
        &self.moved_services
    }

    /// The rooms that are not as they were, or have an opening, a wall or a thing that is not as it was.
    pub fn rooms(&self) -> &BTreeSet<RoomIndex> {
        &self.touched
    }

    /// Those rooms and the rooms that are open to them through cased openings.
    pub fn rooms_and_open(&self, facts: &Facts) -> BTreeSet<RoomIndex> {
        let open = self.touched.iter().flat_map(|room| facts.open_to(*room)).map(|room| room.index);
        open.chain(self.touched.iter().copied()).collect()
    }

    /// What stands no farther than `reach` from something that has changed.
    pub fn near(&self, facts: &Facts, reach: Len) -> Near {
        Near::new(facts, &self.boxes, reach)
    }
}

/// Whether two versions of an element are the same thing, except for its place and sizes.
pub(crate) fn is_the_same_thing(a: &Element, b: &Element) -> bool {
    (a.id, a.state, &a.details) == (b.id, b.state, &b.details)
        && match (&a.body, &b.body) {
            (Body::Service(a), Body::Service(b)) => {
                (a.kind, a.mount, a.serves, a.access) == (b.kind, b.mount, b.serves, b.access)
            }
            (Body::RoomTag(a), Body::RoomTag(b)) => (&a.name, a.room_use) == (&b.name, b.room_use),
            (Body::Furnishing(a), Body::Furnishing(b)) => (&a.name, a.fixed) == (&b.name, b.fixed),
            (Body::Opening(a), Body::Opening(b)) => (a.host, &a.kind) == (b.host, &b.kind),
            (Body::Overhead(a), Body::Overhead(b)) => a.kind == b.kind,
            (Body::Partition(a), Body::Partition(b)) => a.layers == b.layers,
            (Body::Furring(a), Body::Furring(b)) => (a.host, &a.layers) == (b.host, &b.layers),
            (a, b) => a.kind() == b.kind(),
        }
}
