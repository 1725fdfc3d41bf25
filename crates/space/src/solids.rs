//! What takes up space: convex pieces in the plan with a height range.

use geometry::{Bounds, Placed, Ring, twice_area};
use measure::Len;
use plan::element::{BodyKind, Column, ColumnShape, OpeningKind, Stair};
use plan::{Body, Element, ElementId, Plan};

use crate::round::disc;
use crate::standing::Standing;
use crate::{List, OpeningFacts, WallFacts};

/// What a solid is a piece of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SolidKind {
    Wall,
    Column,
    Stair,
    Service,
    Furnishing,
}

/// A convex piece of an element with the height range it fills, from the slab.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Solid {
    pub element: ElementId,
    pub kind: SolidKind,
    /// Convex, counter-clockwise.
    pub ring: Ring,
    pub bottom: Len,
    pub top: Len,
}

impl Solid {
    pub(crate) fn bounds(&self) -> Bounds {
        Bounds::of(&self.ring)
    }
}

/// The pieces of everything that stands, by element.
///
/// Walls: the stretches between openings over the full height, and the wall below and above each
/// opening. Stairs: one piece for each tread, from the slab up to it. Furnishings stand on the
/// finished floor and are taken to fill the floor's build-up too.
#[derive(Clone, Debug, PartialEq)]
pub struct Solids(List<Pieces>);

/// The pieces of one element; there may be none.
#[derive(Clone, Debug, PartialEq)]
struct Pieces {
    element: ElementId,
    pieces: Vec<Solid>,
}

impl Solids {
    pub(crate) fn new(
        plan: &Plan,
        standing: &Standing,
        walls: &List<WallFacts>,
        openings: &List<OpeningFacts>,
    ) -> Solids {
        let mut openings = openings.iter().peekable();
        let holes = standing.of(plan, &[BodyKind::Door, BodyKind::Window]);
        let facts = holes.filter_map(|e| Some((e, openings.next_if(|o| o.id == e.id)?)));
        let mut by_host: Vec<_> = facts.collect();
        by_host.sort_by_key(|(_, o)| o.host);
        let (mut walls, mut by_host) = (walls.iter().peekable(), by_host.into_iter().peekable());
        let mut pieces = |element: &Element| match walls.next_if(|w| w.id == element.id) {
            Some(wall) => {
                let openings = std::iter::from_fn(|| by_host.next_if(|(_, o)| o.host == wall.id));
                Some(of_wall(plan, wall, openings))
            }
            None => of_thing(plan, element),
        };
        let all = standing.of(plan, &TAKE_UP_SPACE);
        let all = all.filter_map(|e| Some((e.id, pieces(e)?)));
        let all = all.map(|(element, pieces)| Pieces { element, pieces });
        Solids(all.collect::<Vec<_>>().into())
    }

    /// Every piece.
    pub fn iter(&self) -> impl DoubleEndedIterator<Item = &Solid> + Clone {
        self.0.iter().flat_map(|of| &of.pieces)
    }

    /// The pieces of one element.
    pub fn of(&self, id: ElementId) -> &[Solid] {
        self.find(id).map_or(&[], |i| &self.0[i].pieces)
    }

    /// Whether it shares anything with those of another plan.
    pub fn shares(&self, other: &Solids) -> bool {
        self.0.shares(&other.0)
    }

    /// The box round the pieces of each element, for [`Solids::within`].
    pub(crate) fn boxes(&self) -> Vec<Bounds> {
        self.0.iter().map(|of| around_all(&of.pieces)).collect()
    }

    /// The pieces whose boxes meet a box, of those elements whose boxes do.
    pub(crate) fn within(&self, near: Vec<usize>, bounds: Bounds) -> impl Iterator<Item = &Solid> {
        let pieces = near.into_iter().flat_map(|i| &self.0[i].pieces);
        pieces.filter(move |solid| solid.bounds().meets(bounds))
    }

    /// Gives an element its pieces; the place of its box among [`Solids::boxes`], and the box. `None` for an element that
    /// never has any.
    pub(crate) fn put(
        &mut self,
        element: ElementId,
        pieces: Vec<Solid>,
    ) -> Option<(usize, Bounds)> {
        let i = self.find(element)?;
        let bounds = around_all(&pieces);
        if self.0[i].pieces != pieces {
            self.0.put(i, Pieces { element, pieces });
        }
        Some((i, bounds))
    }

    fn find(&self, element: ElementId) -> Option<usize> {
        self.0.find(&element, |of| of.element)
    }
}

impl<'a> IntoIterator for &'a Solids {
    type Item = &'a Solid;
    type IntoIter = Box<dyn Iterator<Item = &'a Solid> + 'a>;

    fn into_iter(self) -> Self::IntoIter {
        Box::new(self.iter())
    }
}

fn around_all(pieces: &[Solid]) -> Bounds {
    Bounds::of(pieces.iter().flat_map(|solid| &solid.ring))
}

const TAKE_UP_SPACE: [BodyKind; 7] = [
    BodyKind::Shell,
    BodyKind::Partition,
    BodyKind::Furring,
    BodyKind::Column,
    BodyKind::Stair,
    BodyKind::Service,
    BodyKind::Furnishing,
];

/// The pieces of one wall, with its openings by id, as elements and as facts.
pub(crate) fn of_wall<'a>(
    plan: &Plan,
    wall: &WallFacts,
    openings: impl Iterator<Item = (&'a Element, &'a OpeningFacts)>,
) -> Vec<Solid> {
    let mut out = Vec::with_capacity(wall.pieces.len());
    for quad in &wall.pieces {
        push(&mut out, wall.id, SolidKind::Wall, quad.to_vec(), (Len::ZERO, wall.top));
    }
    openings.for_each(|(element, opening)| around(plan, wall, element, opening, &mut out));
    out
}

/// The pieces of one element that is neither wall nor opening; `None` for what takes up no space.
pub(crate) fn of_thing(plan: &Plan, element: &Element) -> Option<Vec<Solid>> {
    let id = element.id;
    let (kind, ring, height) = match &element.body {
        _ if !element.stands() => return None,
        Body::Column(c) => (SolidKind::Column, column(c), (Len::ZERO, plan.site.joist_underside)),
        Body::Stair(s) => return Some(flight(id, s)),
        Body::Service(s) if s.kind.is_device() => return None,
        Body::Service(s) => {
            let height = (s.bottom, s.bottom + s.height);
            (SolidKind::Service, s.placed().corners().to_vec(), height)
        }
        Body::Furnishing(f) => {
            let height = (Len::ZERO, plan.site.floor_build + f.height);
            (SolidKind::Furnishing, f.placed().corners().to_vec(), height)
        }
        _ => return None,
    };
    let mut out = Vec::with_capacity(1);
    push(&mut out, id, kind, ring, height);
    Some(out)
}

fn push(out: &mut Vec<Solid>, element: ElementId, kind: SolidKind, ring: Ring, height: (Len, Len)) {
    let (bottom, top) = height;
    if top > bottom && twice_area(&ring) > 0 {
        out.push(Solid { element, kind, ring, bottom, top });
    }
}

/// The wall below and above an opening.
fn around(
    plan: &Plan,
    host: &WallFacts,
    element: &Element,
    opening: &OpeningFacts,
    out: &mut Vec<Solid>,
) {
    let Body::Opening(o) = &element.body else { return };
    let (sill, head) = match &o.kind {
        OpeningKind::Door(d) => (Len::ZERO, plan.site.floor_build + d.leaf_height),
        OpeningKind::Window(w) => (w.sill, w.sill + w.frame_height),
    };
    for height in [(Len::ZERO, sill.min(host.top)), (head, host.top)] {
        push(out, host.id, SolidKind::Wall, opening.quad.to_vec(), height);
    }
}

/// The section of a column; a round one as a polygon that contains it.
pub(crate) fn column(column: &Column) -> Ring {
    match column.shape {
        ColumnShape::Round { diameter } => disc(column.at, i64::from((diameter.units() + 1) / 2)),
        ColumnShape::Square { .. } => column.placed().corners().to_vec(),
    }
}

fn flight(id: ElementId, stair: &Stair) -> Vec<Solid> {
    let mut out = Vec::new();
    let treads = i32::try_from(stair.risers.saturating_sub(1)).unwrap_or_default();
    for i in 0..treads {
        let back = stair.foot + stair.up.step(stair.run * i);
        let tread = Placed { back, facing: stair.up, width: stair.width, depth: stair.run };
        let height = (Len::ZERO, stair.rise * (i + 1));
        push(&mut out, id, SolidKind::Stair, tread.corners().to_vec(), height);
    }
    out
}
