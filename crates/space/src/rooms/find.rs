//! Finding rooms: what the walls enclose.
//!
//! Rooms are the faces of a frame round the plan less the union of all walls, openings not cut: the
//! line of a door leaf or cased opening closes a room. Columns, stairs and furnishings are no walls.
//! The face that reaches the frame is the open one and no room. A face under 1 sq ft in which no tag
//! stands is a cavity, such as the space between furring and a partition, and no room either.

use geometry::{Bounds, Grid, Pt, Shape, overlay};
use measure::{Area, Len};
use plan::element::{BodyKind, RoomTag};
use plan::{Body, ElementId, Plan};

use super::RoomIndex;
use crate::places::Places;
use crate::standing::Standing;
use crate::{List, WallFacts};

/// A face with less floor than this is no room unless a tag stands in it.
pub(crate) const LEAST: Area = Area::square_feet(1);

/// The floors of the rooms, in the order of their lowest, then leftmost corners, and the tags in them.
pub(crate) struct Floors<'a> {
    pub(super) shapes: Vec<Shape>,
    pub grid: Places,
    /// The room of each standing tag, by the tag's id.
    pub(super) tags: Vec<(ElementId, &'a RoomTag, Option<RoomIndex>)>,
}

impl<'a> Floors<'a> {
    pub fn find(plan: &'a Plan, standing: &'a Standing, walls: &List<WallFacts>) -> Floors<'a> {
        let tags: Vec<(ElementId, &RoomTag)> = standing
            .of(plan, &[BodyKind::RoomTag])
            .filter_map(|e| match &e.body {
                Body::RoomTag(tag) => Some((e.id, tag)),
                _ => None,
            })
            .collect();
        let mut shapes = enclosed(walls);
        shapes.retain(|s| s.area() >= LEAST || tags.iter().any(|(_, t)| s.contains(t.at)));
        let grid = Places::from(Grid::new(shapes.iter().map(Shape::bounds).collect()));
        let mut floors = Floors { shapes, grid, tags: Vec::new() };
        floors.tags = tags.into_iter().map(|(id, t)| (id, t, floors.at(t.at))).collect();
        floors
    }

    /// The first room whose floor holds a point.
    pub fn at(&self, p: Pt) -> Option<RoomIndex> {
        self.grid.first_at(p, |i| self.shapes[i].contains(p)).map(RoomIndex)
    }
}

/// Every bounded face of the walls, large or small.
pub(crate) fn enclosed(walls: &List<WallFacts>) -> Vec<Shape> {
    let all = Bounds::of(walls.iter().flat_map(|w| &w.outline));
    if all.is_empty() {
        return Vec::new();
    }
    let frame = all.grow(Len::inches(12));
    let mut faces = overlay::without(&frame.ring(), walls.iter().map(|w| w.outline.as_slice()));
    faces.retain(|face| face.bounds() != frame);
    faces
}

/// The faces of some walls within a frame: those that lie inside it, and those that reach it.
pub(crate) fn within<'a>(
    frame: Bounds,
    outlines: impl Iterator<Item = &'a [Pt]>,
) -> (Vec<Shape>, Vec<Shape>) {
    let reaches = |face: &Shape| {
        let b = face.bounds();
        b.min.x == frame.min.x
            || b.min.y == frame.min.y
            || b.max.x == frame.max.x
            || b.max.y == frame.max.y
    };
    let faces = overlay::without(&frame.ring(), outlines);
    faces.into_iter().partition(|face| !reaches(face))
}
