//! The floors beside walls that have changed.

use std::collections::{BTreeMap, BTreeSet};

use geometry::{Bounds, Shape, edges};
use plan::element::BodyKind;

use super::{NEAR, Step};
use crate::rooms::{self, LEAST};

impl Step<'_> {
    /// The shapes of the rooms that have another shape now, by the index of the room; the rooms are the same and in the
    /// same order, or it is `None`.
    pub(super) fn floors(&self, walls: &[usize]) -> Option<BTreeMap<usize, Shape>> {
        let differ = |i: &&usize| self.before.walls[**i].outline != self.now.walls[**i].outline;
        let boxes: Vec<Bounds> = walls
            .iter()
            .filter(differ)
            .flat_map(|i| [&self.before.walls[*i].outline, &self.now.walls[*i].outline])
            .map(|outline| Bounds::of(outline).grow(NEAR))
            .collect();
        if boxes.is_empty() {
            return Some(BTreeMap::new());
        }
        // Crossings of skew edges are rounded, and how may depend on what else is in the plan.
        let upright = self.before.askew == 0 && self.now.askew == 0;
        if upright { self.in_window(&boxes) } else { self.everywhere() }
    }

    /// All floors, compared with what they were.
    fn everywhere(&self) -> Option<BTreeMap<usize, Shape>> {
        let shapes = self.large(rooms::enclosed(&self.now.walls))?;
        let differ = |(i, shape): &(usize, Shape)| *shape != self.before.rooms[*i].shape;
        let as_many = shapes.len() == self.before.rooms.len();
        as_many.then(|| shapes.into_iter().enumerate().filter(differ).collect())
    }

    /// Only the rooms whose boxes meet those of the changed walls: they are cut anew out of a window that holds them
    /// whole. Other rooms have none but unchanged walls around them.
    fn in_window(&self, boxes: &[Bounds]) -> Option<BTreeMap<usize, Shape>> {
        let dirty: BTreeSet<usize> =
            boxes.iter().flat_map(|b| self.before.grids.rooms.query(*b)).collect();
        let old = |i: &usize| &self.before.rooms[*i].shape;
        let holds = dirty.iter().map(|i| old(i).bounds()).chain(boxes.iter().copied());
        let frame = holds.fold(Bounds::EMPTY, Bounds::union).grow(NEAR);
        let near = self.now.grids.outlines.query(frame);
        let outlines = near.into_iter().map(|i| self.now.walls[i].outline.as_slice());
        let (inside, reaching) = rooms::within(frame, outlines);
        // What reaches the frame beside a changed wall may be a new room that is larger than the window.
        let beside = |face: &Shape| boxes.iter().any(|b| b.meets(face.bounds()));
        if reaching.iter().any(beside) {
            return None;
        }
        let upright = |s: geometry::Seg| s.a.x == s.b.x || s.a.y == s.b.y;
        let exact = |face: &Shape| face.rings().all(|ring| edges(ring).all(upright));
        let in_dirty = |face: &&Shape| {
            // Rooms within the window that no changed wall is near are as they were.
            boxes.iter().any(|b| b.meets(face.bounds()))
        };
        let new = self.large(inside.into_iter().filter(|face| in_dirty(&face)).collect())?;
        let was_sound = dirty.iter().all(|i| old(i).area() >= LEAST);
        if new.len() != dirty.len() || !was_sound || !new.iter().all(exact) {
            return None;
        }
        let shapes: BTreeMap<usize, Shape> = dirty.into_iter().zip(new).collect();
        self.keeps_order(&shapes)
            .then(|| shapes.into_iter().filter(|(i, shape)| *shape != *old(i)).collect())
    }

    /// The faces that are large enough to be rooms; `None` where a tag makes a smaller one a room.
    fn large(&self, faces: Vec<Shape>) -> Option<Vec<Shape>> {
        let (large, small): (Vec<_>, Vec<_>) =
            faces.into_iter().partition(|face| face.area() >= LEAST);
        let tagged = |face: &Shape| {
            let mut tags = self.now.standing(&[BodyKind::RoomTag]);
            tags.any(|e| e.body.points().iter().any(|p| face.contains(*p)))
        };
        (!small.iter().any(tagged)).then_some(large)
    }

    /// Whether the rooms still go by their lowest, then leftmost points.
    fn keeps_order(&self, shapes: &BTreeMap<usize, Shape>) -> bool {
        let start = |i: usize| {
            let shape = shapes.get(&i).or_else(|| Some(&self.before.rooms.get(i)?.shape))?;
            shape.outer.first().map(|p| (p.y, p.x))
        };
        shapes.keys().all(|&i| {
            let before = i.checked_sub(1).and_then(start);
            before.is_none_or(|b| Some(b) < start(i))
                && start(i + 1).is_none_or(|after| start(i) < Some(after))
        })
    }
}
