//! Describing rooms: tags, sizes, walls, openings, headroom.

use geometry::{Bounds, Facing, Grid, Pt, Seg, Shape, Vec2, edges};
use measure::Len;
use plan::element::RoomTag;
use plan::{ElementId, Plan};

use super::find::Floors;
use super::{Room, RoomIndex, contact};
use crate::{OpeningFacts, OverheadFacts, WallFacts, headroom};

/// The overheads and the grid over their boxes.
#[derive(Clone, Copy)]
pub(crate) struct Over<'a> {
    pub all: &'a [OverheadFacts],
    pub grid: &'a Grid,
}

impl Floors<'_> {
    /// The rooms, the tags that stand in none, and the grid over the rooms' boxes.
    pub fn describe(
        self,
        plan: &Plan,
        walls: &[WallFacts],
        openings: &[OpeningFacts],
        over: Over<'_>,
    ) -> (Vec<Room>, Vec<ElementId>, Grid) {
        let outlines = Grid::new(walls.iter().map(|w| Bounds::of(&w.outline)).collect());
        let mut tags: Vec<Vec<(ElementId, &RoomTag)>> = vec![Vec::new(); self.shapes.len()];
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
        let ceiling = plan.site.ceiling_height();
        let rooms = self.shapes.into_iter().zip(tags).zip(doors).enumerate();
        let rooms = rooms
            .map(|(i, ((shape, tags), openings))| {
                let near: Vec<&OverheadFacts> =
                    over.grid.query(shape.bounds()).into_iter().map(|i| &over.all[i]).collect();
                let (lowest, highest) = headroom::range(&shape, &near, ceiling);
                let along = longest(&shape);
                let speaker = tags.first();
                Room {
                    index: RoomIndex(i),
                    area: shape.area(),
                    tag: speaker.map(|&(id, _)| id),
                    more_tags: tags.iter().skip(1).map(|&(id, _)| id).collect(),
                    name: match speaker {
                        Some((_, tag)) if !tag.name.is_empty() => tag.name.clone(),
                        _ => format!("Room {}", i + 1),
                    },
                    room_use: speaker.map(|(_, tag)| tag.room_use).unwrap_or_default(),
                    along,
                    clear: (extent(&shape, along.vec()), extent(&shape, along.left().vec())),
                    walls: contact::walls_on(shape.perimeter_edges(), walls, &outlines),
                    openings,
                    label_at: label_at(&shape),
                    lowest,
                    highest,
                    shape,
                }
            })
            .collect();
        (rooms, loose, self.grid)
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
