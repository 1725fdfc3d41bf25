//! Describing rooms: tags, sizes, walls, openings, headroom.

use geometry::{Facing, Pt, Seg, Shape, Vec2, edges};
use measure::Len;
use plan::element::RoomTag;
use plan::{ElementId, Plan};

use super::find::Floors;
use super::{Room, RoomIndex, contact};
use crate::places::Places;
use crate::{List, OpeningFacts, OverheadFacts, WallFacts, headroom};

/// What rooms are described by.
#[derive(Clone, Copy)]
pub(crate) struct About<'a> {
    pub plan: &'a Plan,
    pub walls: &'a List<WallFacts>,
    /// The boxes of the walls' outlines.
    pub outlines: &'a Places,
    pub overheads: &'a List<OverheadFacts>,
    pub overhead_places: &'a Places,
}

/// A room's tags, by id.
pub(crate) type Tags<'a> = Vec<(ElementId, &'a RoomTag)>;

impl Floors<'_> {
    /// The rooms, and the tags that stand in none.
    pub fn describe(
        self,
        about: About<'_>,
        openings: &List<OpeningFacts>,
    ) -> (Vec<Room>, Vec<ElementId>) {
        let mut tags: Vec<Tags<'_>> = vec![Vec::new(); self.shapes.len()];
        let mut loose = Vec::new();
        for &(id, tag, room) in &self.tags {
            match room {
                Some(RoomIndex(i)) => tags[i].push((id, tag)),
                None => loose.push(id),
            }
        }
        let mut doors: Vec<Vec<ElementId>> = vec![Vec::new(); self.shapes.len()];
        for opening in openings {
            for RoomIndex(i) in opening.rooms() {
                if doors[i].last() != Some(&opening.id) {
                    doors[i].push(opening.id);
                }
            }
        }
        let rooms = self.shapes.into_iter().zip(tags).zip(doors).enumerate();
        let rooms = rooms
            .map(|(i, ((shape, tags), openings))| about.room(RoomIndex(i), shape, &tags, openings));
        (rooms.collect(), loose)
    }
}

impl About<'_> {
    /// Describes one room.
    pub fn room(
        self,
        index: RoomIndex,
        shape: Shape,
        tags: &Tags<'_>,
        openings: Vec<ElementId>,
    ) -> Room {
        let (lowest, highest) = self.heights(&shape);
        let along = longest(&shape);
        let speaker = tags.first();
        Room {
            index,
            area: shape.area(),
            tag: speaker.map(|&(id, _)| id),
            more_tags: tags.iter().skip(1).map(|&(id, _)| id).collect(),
            name: match speaker {
                Some((_, tag)) if !tag.name.is_empty() => tag.name.clone(),
                _ => format!("Room {}", index.0 + 1),
            },
            room_use: speaker.map(|(_, tag)| tag.room_use).unwrap_or_default(),
            along,
            clear: (extent(&shape, along.vec()), extent(&shape, along.left().vec())),
            walls: self.walls_on(&shape),
            openings,
            label_at: label_at(&shape),
            lowest,
            highest,
            shape,
        }
    }

    /// A room that has kept its shape, its tags, its place in the list and what hangs over it, where the walls at some
    /// places are not as they were.
    pub fn same_floor(self, before: &Room, openings: Vec<ElementId>, changed: &[usize]) -> Room {
        let changed = || changed.iter().map(|i| &self.walls[*i]);
        let same = |id: &&ElementId| changed().all(|w| w.id != **id);
        let mut walls: Vec<ElementId> = before.walls.iter().filter(same).copied().collect();
        walls.extend(changed().filter(|w| contact::is_on(&before.shape, w)).map(|w| w.id));
        walls.sort_unstable();
        Room { openings, walls, ..before.clone() }
    }

    /// The lowest and the highest clear height over a floor.
    pub fn heights(self, shape: &Shape) -> (Len, Len) {
        let near = self.overhead_places.query(shape.bounds());
        let near: Vec<&OverheadFacts> = near.into_iter().map(|i| &self.overheads[i]).collect();
        headroom::range(shape, &near, self.plan.site.ceiling_height())
    }

    fn walls_on(self, shape: &Shape) -> Vec<ElementId> {
        contact::walls_on(shape.perimeter_edges(), self.walls, self.outlines)
    }
}

/// The direction of the longest edge of the outer ring; the first of equals. A wall that was drawn
/// axis-parallel gives an exact axis.
fn longest(shape: &Shape) -> Facing {
    let mut best = Seg::new(Pt::default(), Pt::default());
    for edge in edges(&shape.outer) {
        if edge.dir().norm2() > best.dir().norm2() {
            best = edge;
        }
    }
    Facing::along(best.dir()).unwrap_or(Facing::EAST)
}

/// The size of a shape along a direction, rounded down; exact along the axes.
fn extent(shape: &Shape, dir: Vec2) -> Len {
    let origin = shape.outer.first().copied().unwrap_or_default();
    let along = shape.outer.iter().map(|&p| (p - origin).dot(dir));
    let (min, max) = along.fold((0, 0), |(lo, hi), v| (lo.min(v), hi.max(v)));
    let size = (max - min) as f64 / dir.norm();
    Len::from_units(size.floor() as i32)
}

/// The middle of a rectangle, else a point well inside.
fn label_at(shape: &Shape) -> Pt {
    match shape.outer.as_slice() {
        [a, _, c, _] if shape.holes.is_empty() && shape.contains(a.midway(*c)) => a.midway(*c),
        _ => shape.label_point(),
    }
}
