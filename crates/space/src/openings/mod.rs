//! Openings: where they cut the wall, what they leave clear, where their leaf swings.

mod door;
mod leaf;
mod window;

use geometry::{Bounds, Pt, Ring, Seg};
use measure::Len;
use plan::element::{BodyKind, End, Opening, OpeningKind, Side, Well};
use plan::{Body, Element, ElementId, Plan};

use crate::standing::Standing;
use crate::{List, RoomIndex, WallFacts, WallKind};

pub use door::{DoorClear, door_clear};
pub use leaf::leaf_reaches;
pub use window::{NetClear, net_clear};

/// One door, cased opening or window in its wall.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OpeningFacts {
    pub id: ElementId,
    pub host: ElementId,
    /// The hole in the wall (and in furring on that wall), counter-clockwise: right near, right far,
    /// left far, left near, as seen along the host's line.
    pub quad: [Pt; 4],
    /// Along the host's line, from the near jamb to the far jamb.
    pub line: Seg,
    /// Clear width with the leaf open 90°: see [`door_clear`] and [`net_clear`] for what is taken off.
    pub clear_width: Len,
    pub clear_height: Len,
    /// Whether the clear size rests on an allowance of common practice, not on a given figure.
    pub clear_estimated: bool,
    /// The room on the host's left and on its right; `None` outdoors or in no room.
    pub left: Option<RoomIndex>,
    pub right: Option<RoomIndex>,
    /// In a foundation wall with no room on one side, so that it leads outdoors.
    pub outside: bool,
    /// The moving leaf of a hinged or bifold door; empty for windows, cased openings, sliding and
    /// pocket doors.
    pub leaves: Vec<Leaf>,
}

/// A door leaf and the floor it sweeps.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Leaf {
    pub hinge: Pt,
    /// The free edge when shut and when open 90°.
    pub shut: Pt,
    pub open: Pt,
    pub width: Len,
    /// The swept quarter disc as a convex polygon that contains it (see [`leaf_reaches`] for the exact
    /// test). A bifold folds two panels over the same floor: one leaf stands for both.
    pub sweep: Ring,
}

impl OpeningFacts {
    /// The rooms it opens to: on the left, then on the right.
    pub fn rooms(&self) -> impl Iterator<Item = RoomIndex> {
        self.left.into_iter().chain(self.right)
    }

    /// The box round the hole and what its leaves sweep.
    pub fn bounds(&self) -> Bounds {
        Bounds::of(self.quad.iter().chain(self.leaves.iter().flat_map(|leaf| &leaf.sweep)))
    }

    /// The edge of the hole at the wall's finished face on a side, from the near jamb to the far jamb.
    pub fn face(&self, side: Side) -> Seg {
        match side {
            Side::Left => Seg::new(self.quad[3], self.quad[2]),
            Side::Right => Seg::new(self.quad[0], self.quad[1]),
        }
    }

    /// The clear outline of the well outside a window: out from the wall, along, and back. Outside is the host's right.
    pub fn well_ring(&self, well: &Well) -> [Pt; 4] {
        let face = self.face(Side::Right);
        let out = -face.dir().left();
        let middle = face.a.midway(face.b);
        let to_end = face.dir().with_len(well.width / 2);
        let out = out.with_len(well.projection);
        [middle - to_end, middle - to_end + out, middle + to_end + out, middle + to_end]
    }
}

/// Every standing opening whose host stands, by id. `room_at` finds the room of a point.
pub(crate) fn openings(
    plan: &Plan,
    all: &Standing,
    walls: &List<WallFacts>,
    room_at: &dyn Fn(Pt) -> Option<RoomIndex>,
) -> Vec<OpeningFacts> {
    let strips = strips(walls.iter());
    let all = all.of(plan, &[BodyKind::Door, BodyKind::Window]);
    all.filter_map(|element| standing(element, walls, &strips, room_at)).collect()
}

/// Furring in the order in which openings look it up.
pub(crate) fn strips<'a>(walls: impl Iterator<Item = &'a WallFacts>) -> Vec<&'a WallFacts> {
    let mut strips: Vec<&WallFacts> = walls.filter(|w| w.host.is_some()).collect();
    strips.sort_by_key(|w| (w.host, w.id));
    strips
}

/// An element as an opening, where it is a standing one whose host stands.
pub(crate) fn standing(
    element: &Element,
    walls: &List<WallFacts>,
    strips: &[&WallFacts],
    room_at: &dyn Fn(Pt) -> Option<RoomIndex>,
) -> Option<OpeningFacts> {
    let Body::Opening(opening) = &element.body else { return None };
    let host = walls.find(&opening.host, |w| w.id).map(|i| &walls[i])?;
    let stands = element.stands() && host.kind != WallKind::Furring;
    stands.then(|| one(element.id, opening, host, strips, room_at))
}

/// How far before a face the room on that side is looked for.
const PROBE: Len = Len::sixty_fourths(16);

fn one(
    id: ElementId,
    opening: &Opening,
    host: &WallFacts,
    strips: &[&WallFacts],
    room_at: &dyn Fn(Pt) -> Option<RoomIndex>,
) -> OpeningFacts {
    let (from, to) = (opening.at, opening.at + opening.width());
    let stretch = |face: Seg| Seg::new(face.point_at(from), face.point_at(to));
    let line = stretch(host.line);
    let right = stretch(host.right);
    let left = stretch(host.left.offset_left(furring_over(host, strips, line)));
    let out = host.line.dir().left().with_len(PROBE);
    let (clear_width, clear_height, clear_estimated, leaves) = match &opening.kind {
        OpeningKind::Door(door) => {
            let clear = door_clear(door);
            let face = match door.swing {
                Side::Left => left,
                Side::Right => right,
            };
            let outward = match door.swing {
                Side::Left => out,
                Side::Right => -out,
            };
            let face = if door.hinge == End::Start { face } else { face.reversed() };
            let leaf = leaf::leaf(door, face, outward);
            (clear.width, door.leaf_height, clear.estimated, leaf.into_iter().collect())
        }
        OpeningKind::Window(window) => {
            let clear = net_clear(window);
            (clear.width, clear.height, clear.estimated, Vec::new())
        }
    };
    let opening = OpeningFacts {
        id,
        host: host.id,
        quad: [right.a, right.b, left.b, left.a],
        line,
        clear_width,
        clear_height,
        clear_estimated,
        left: None,
        right: None,
        outside: false,
        leaves,
    };
    between_rooms(opening, host, room_at)
}

/// An opening that is as it was, but for the rooms on its two sides.
pub(crate) fn between_rooms(
    opening: OpeningFacts,
    host: &WallFacts,
    room_at: &dyn Fn(Pt) -> Option<RoomIndex>,
) -> OpeningFacts {
    let out = host.line.dir().left().with_len(PROBE);
    let middle = |side| {
        let face: Seg = opening.face(side);
        face.a.midway(face.b)
    };
    let (left, right) = (room_at(middle(Side::Left) + out), room_at(middle(Side::Right) - out));
    let outside = host.kind == WallKind::Shell && (left.is_none() || right.is_none());
    OpeningFacts { left, right, outside, ..opening }
}

/// The thickness of the furring that an opening goes through.
fn furring_over(host: &WallFacts, strips: &[&WallFacts], hole: Seg) -> Len {
    let dir = host.line.dir();
    let along = |p: Pt| (p - host.line.a).dot(dir);
    let first = strips.partition_point(|s| s.host < Some(host.id));
    strips[first..]
        .iter()
        .take_while(|s| s.host == Some(host.id))
        .filter(|s| along(s.line.a) < along(hole.b) && along(hole.a) < along(s.line.b))
        .map(|s| s.thickness)
        .max()
        .unwrap_or_default()
}
