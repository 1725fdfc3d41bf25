//! What takes up space: convex pieces in the plan with a height range.

use geometry::{Bounds, Placed, Ring, twice_area};
use measure::Len;
use plan::element::{Column, ColumnShape, OpeningKind, Stair};
use plan::{Body, Element, ElementId, Plan};

use crate::round::disc;
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
pub(crate) fn solids(
    plan: &Plan,
    walls: &List<WallFacts>,
    openings: &List<OpeningFacts>,
) -> Vec<Solid> {
    let mut out = Vec::with_capacity(2 * plan.elements().len());
    walls.iter().for_each(|wall| stretches(wall, &mut out));
    for opening in openings {
        if let Some(host) = walls.find(&opening.host, |w| w.id) {
            around(plan, &walls[host], opening, &mut out);
        }
    }
    plan.elements().iter().for_each(|element| thing(plan, element, &mut out));
    out.sort_by_key(|s| s.element);
    out
}

/// The pieces of one wall, with its openings by id.
pub(crate) fn of_wall<'a>(
    plan: &Plan,
    wall: &WallFacts,
    openings: impl Iterator<Item = &'a OpeningFacts>,
) -> Vec<Solid> {
    let mut out = Vec::new();
    stretches(wall, &mut out);
    openings.for_each(|opening| around(plan, wall, opening, &mut out));
    out
}

/// The pieces of one element that is neither wall nor opening.
pub(crate) fn of_thing(plan: &Plan, element: &Element) -> Vec<Solid> {
    let mut out = Vec::new();
    thing(plan, element, &mut out);
    out
}

fn stretches(wall: &WallFacts, out: &mut Vec<Solid>) {
    for quad in &wall.pieces {
        push(out, wall.id, SolidKind::Wall, quad.to_vec(), (Len::ZERO, wall.top));
    }
}

fn thing(plan: &Plan, element: &Element, out: &mut Vec<Solid>) {
    let id = element.id;
    match &element.body {
        _ if !element.stands() => {}
        Body::Column(c) => {
            let height = (Len::ZERO, plan.site.joist_underside);
            push(out, id, SolidKind::Column, column(c), height);
        }
        Body::Stair(s) => flight(out, id, s),
        Body::Service(s) if s.kind.is_device() => {}
        Body::Service(s) => {
            let height = (s.bottom, s.bottom + s.height);
            push(out, id, SolidKind::Service, s.placed().corners().to_vec(), height);
        }
        Body::Furnishing(f) => {
            let height = (Len::ZERO, plan.site.floor_build + f.height);
            push(out, id, SolidKind::Furnishing, f.placed().corners().to_vec(), height);
        }
        _ => {}
    }
}

fn push(out: &mut Vec<Solid>, element: ElementId, kind: SolidKind, ring: Ring, height: (Len, Len)) {
    let (bottom, top) = height;
    if top > bottom && twice_area(&ring) > 0 {
        out.push(Solid { element, kind, ring, bottom, top });
    }
}

/// The wall below and above an opening.
fn around(plan: &Plan, host: &WallFacts, opening: &OpeningFacts, out: &mut Vec<Solid>) {
    let Some(Body::Opening(o)) = plan.get(opening.id).map(|e| &e.body) else { return };
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

fn flight(out: &mut Vec<Solid>, id: ElementId, stair: &Stair) {
    let treads = i32::try_from(stair.risers.saturating_sub(1)).unwrap_or_default();
    for i in 0..treads {
        let back = stair.foot + stair.up.step(stair.run * i);
        let tread = Placed { back, facing: stair.up, width: stair.width, depth: stair.run };
        let height = (Len::ZERO, stair.rise * (i + 1));
        push(out, id, SolidKind::Stair, tread.corners().to_vec(), height);
    }
}
