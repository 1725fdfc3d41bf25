//! What is not as it was in a plan of which only places have changed, as from one step of a drag to the next.

use std::collections::BTreeSet;

use geometry::Bounds;
use measure::Len;
use plan::element::BodyKind;
use plan::{Body, Element, ElementId};

use crate::{Facts, RoomIndex, WallFacts};

/// How far from a room something may stand that is counted to it: devices hang on its walls.
const BESIDE: Len = Len::inches(24);

/// What has changed between two plans that hold the same things: each element is what it was and only stands elsewhere
/// or has other sizes, each room is used as it was, each opening joins the rooms that it joined.
#[derive(Clone, Debug, Default)]
pub struct Changes {
    /// Elements that were edited.
    pub elements: BTreeSet<ElementId>,
    /// What those are, and the walls and openings that changed with them.
    kinds: BTreeSet<BodyKind>,
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
        }
        for i in before.walls.differing(&after.walls) {
            changes.wall(after, &before.walls[i], &after.walls[i])?;
        }
        for i in before.openings.differing(&after.openings) {
            let (a, b) = (&before.openings[i], &after.openings[i]);
            let joins = |o: &crate::OpeningFacts| (o.id, o.left, o.right, o.outside);
            if joins(a) != joins(b) {
                return None;
            }
            changes.boxes.extend([a.bounds(), b.bounds()]);
            changes.touched.extend(b.rooms());
            changes.kinds.extend(new.get(b.id).map(|e| e.body.kind()));
        }
        for i in before.rooms.differing(&after.rooms) {
            let (a, b) = (&before.rooms[i], &after.rooms[i]);
            let same = a.tag == b.tag
                && a.more_tags == b.more_tags
                && a.name == b.name
                && a.room_use == b.room_use
                && a.openings == b.openings;
            if !same {
                return None;
            }
            changes.touched.insert(b.index);
        }
        Some(changes)
    }

    fn element(&mut self, facts: &Facts, element: &Element) {
        self.elements.insert(element.id);
        self.kinds.insert(element.body.kind());
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
        }
        self.boxes.push(bounds);
    }

    fn wall(&mut self, facts: &Facts, a: &WallFacts, b: &WallFacts) -> Option<()> {
        let what = |w: &WallFacts| (w.id, w.kind, w.host);
        if what(a) != what(b) {
            return None;
        }
        let bounds = Bounds::of(a.outline.iter().chain(&b.outline));
        self.boxes.push(bounds);
        // Where only its ends were joined otherwise, the rooms at its faces tell by themselves.
        let faces = |w: &WallFacts| (w.line, w.left, w.right, w.thickness, w.top);
        if faces(a) != faces(b) {
            self.kinds.extend(facts.plan.get(b.id).map(|e| e.body.kind()));
            self.touched.extend(facts.rooms_near(bounds).map(|r| r.index));
        }
        Some(())
    }

    /// Whether anything of some kinds has changed.
    pub fn touch(&self, kinds: &[BodyKind]) -> bool {
        kinds.iter().any(|kind| self.kinds.contains(kind))
    }

    /// The rooms of which a finding may have changed: those that are touched, and those on the other side of their
    /// openings.
    pub fn rooms(&self, facts: &Facts) -> BTreeSet<RoomIndex> {
        let next = |room: &RoomIndex| facts.openings_of(*room).flat_map(|o| o.rooms());
        self.touched.iter().flat_map(next).chain(self.touched.iter().copied()).collect()
    }

    /// The openings that stand no farther than `reach` from something that has changed, by their place in the list.
    pub fn openings(&self, facts: &Facts, reach: Len) -> BTreeSet<usize> {
        let near = |b: &Bounds| facts.opening_places_near(b.grow(reach));
        self.boxes.iter().flat_map(near).collect()
    }

    /// The solid things that have changed, stand no farther than `reach` from something that has, or stand in a touched
    /// room.
    pub fn things(&self, facts: &Facts, reach: Len) -> BTreeSet<ElementId> {
        let near = self.boxes.iter().map(|b| b.grow(reach));
        let rooms = self.touched.iter().map(|r| facts.room(*r).shape.bounds());
        let things = near.chain(rooms).flat_map(|b| facts.solids_near(b)).map(|s| s.element);
        things.chain(self.elements.iter().copied()).collect()
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
