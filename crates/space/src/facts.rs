//! All derived facts of one plan.

use std::sync::Arc;

use geometry::{Bounds, Grid, Pt};
use plan::element::{BodyKind, DoorOperation};
use plan::{Body, Element, ElementId, Plan};

use crate::places::Places;
use crate::standing::Standing;
use crate::{List, OpeningFacts, OverheadFacts, Room, RoomIndex, Solid, Solids, WallFacts};
use crate::{openings, overheads, rooms, solids, walls};

/// What was derived from one plan. Every list is in a fixed order: elements by id, rooms by their
/// lowest-leftmost corner.
#[derive(Clone, Debug)]
pub struct Facts {
    pub plan: Arc<Plan>,
    /// Standing foundation walls, partitions and furring.
    pub walls: List<WallFacts>,
    /// Standing openings whose host stands.
    pub openings: List<OpeningFacts>,
    pub rooms: List<Room>,
    /// Everything standing that takes up floor or body space, as convex pieces with a height range.
    pub solids: Solids,
    pub overheads: List<OverheadFacts>,
    /// Room tags that stand in no room: in an open face, outdoors or in a wall.
    pub loose_tags: Vec<ElementId>,
    pub(crate) standing: Arc<Standing>,
    /// The standing openings by their hosts, by their places in the plan's list.
    pub(crate) hosted: Arc<Vec<(ElementId, u32)>>,
    /// How many walls run askew.
    pub(crate) askew: usize,
    pub(crate) grids: Grids,
}

/// Derives the facts of a plan from scratch.
pub fn derive(plan: &Arc<Plan>) -> Facts {
    derive_in_parts(plan, &mut |_| {})
}

/// Derives the facts of a plan from scratch and says the name of each part when it is done, for whoever times it.
pub fn derive_in_parts(plan: &Arc<Plan>, done: &mut dyn FnMut(&'static str)) -> Facts {
    let standing = Standing::new(plan);
    let hosted = standing.hosted(plan);
    done("standing");
    let (walls, bodies) = walls::walls(plan, &standing);
    let walls: List<_> = walls.into();
    let outlines = places(&walls, |w| Bounds::of(&w.outline));
    done("walls");
    let overheads: List<_> = overheads::overheads(plan, &standing).into();
    let overhead_places = places(&overheads, OverheadFacts::bounds);
    done("overheads");
    let floors = rooms::Floors::find(plan, &standing, &walls);
    done("floors");
    let openings: List<_> = openings::openings(plan, &standing, &walls, &|p| floors.at(p)).into();
    done("openings");
    let solids = Solids::new(plan, &standing, &walls, &openings);
    let solid_places = Places::from(Grid::new(solids.boxes()));
    done("solids");
    let room_places = floors.grid.clone();
    let about = rooms::About {
        plan,
        walls: &walls,
        outlines: &outlines,
        overheads: &overheads,
        overhead_places: &overhead_places,
    };
    let (rooms, loose_tags) = floors.describe(about, &openings);
    done("rooms");
    Facts {
        plan: Arc::clone(plan),
        hosted: Arc::new(hosted),
        standing: Arc::new(standing),
        askew: walls.iter().filter(|w| !w.is_upright()).count(),
        grids: Grids {
            bodies: Places::from(bodies),
            outlines,
            rooms: room_places,
            openings: places(&openings, OpeningFacts::bounds),
            solids: solid_places,
            overheads: overhead_places,
            things: Places::from(Grid::new(plan.elements().iter().map(thing_box).collect())),
        },
        walls,
        openings,
        rooms: rooms.into(),
        solids,
        overheads,
        loose_tags,
    }
}

/// Where everything is, by the places in its list.
#[derive(Clone, Debug)]
pub(crate) struct Grids {
    /// The boxes in which walls join.
    pub bodies: Places,
    pub outlines: Places,
    pub rooms: Places,
    pub openings: Places,
    /// By the places of the elements that the solids are pieces of.
    pub solids: Places,
    pub overheads: Places,
    /// The things that are no walls, openings or overheads, by their places in the plan's list, each grown by its own
    /// greatest side; nothing for all others.
    pub things: Places,
}

/// The box of a standing thing, grown by its own greatest side: what is near it counts from there.
pub(crate) fn thing_box(element: &Element) -> Bounds {
    let bounds = match &element.body {
        _ if !element.stands() => return Bounds::EMPTY,
        Body::Service(s) => Bounds::of(s.placed().corners()),
        Body::Furnishing(f) => Bounds::of(f.placed().corners()),
        Body::Stair(s) => Bounds::of(s.placed().corners()),
        Body::Column(c) => Bounds::of(solids::column(c)),
        Body::RoomTag(tag) => Bounds::of([tag.at]),
        _ => return Bounds::EMPTY,
    };
    bounds.grow(bounds.width().max(bounds.height()))
}

fn places<T>(items: &List<T>, bounds: impl Fn(&T) -> Bounds) -> Places {
    Places::from(Grid::new(items.iter().map(bounds).collect()))
}

/// Two plans have the same facts where all that is drawn from them is the same; how it is looked up does not count.
impl PartialEq for Facts {
    fn eq(&self, other: &Facts) -> bool {
        self.walls == other.walls
            && self.openings == other.openings
            && self.rooms == other.rooms
            && self.solids == other.solids
            && self.overheads == other.overheads
            && self.loose_tags == other.loose_tags
            && self.standing == other.standing
    }
}

impl Facts {
    pub fn wall(&self, id: ElementId) -> Option<&WallFacts> {
        self.walls.find(&id, |w| w.id).map(|i| &self.walls[i])
    }

    pub fn opening(&self, id: ElementId) -> Option<&OpeningFacts> {
        self.openings.find(&id, |o| o.id).map(|i| &self.openings[i])
    }

    /// Whether an element is a door or a cased opening.
    pub fn is_door(&self, id: ElementId) -> bool {
        let body = self.plan.get(id).map(|e| &e.body);
        matches!(body, Some(Body::Opening(o)) if o.door().is_some())
    }

    /// Whether an element is a cased opening: a door without a leaf.
    pub fn is_cased(&self, id: ElementId) -> bool {
        self.door_operation(id) == Some(DoorOperation::Cased)
    }

    /// Whether an element is a door with a leaf.
    pub fn has_leaf(&self, id: ElementId) -> bool {
        self.door_operation(id).is_some_and(|operation| operation != DoorOperation::Cased)
    }

    fn door_operation(&self, id: ElementId) -> Option<DoorOperation> {
        match &self.plan.get(id)?.body {
            Body::Opening(o) => o.door().map(|door| door.operation),
            _ => None,
        }
    }

    /// The rooms on the other side of a room's cased openings, each once, in the order of their index.
    pub fn open_to(&self, room: RoomIndex) -> Vec<&Room> {
        let ways = self.openings_of(room).filter(|o| self.is_cased(o.id));
        let mut next: Vec<RoomIndex> =
            ways.flat_map(|o| o.rooms()).filter(|r| *r != room).collect();
        next.sort_unstable();
        next.dedup();
        next.into_iter().map(|r| self.room(r)).collect()
    }

    pub fn overhead(&self, id: ElementId) -> Option<&OverheadFacts> {
        self.overheads.find(&id, |o| o.id).map(|i| &self.overheads[i])
    }

    pub fn room(&self, index: RoomIndex) -> &Room {
        &self.rooms[index.0]
    }

    /// The room whose floor holds a point (a point on a boundary counts for the first such room).
    pub fn room_at(&self, p: Pt) -> Option<RoomIndex> {
        self.grids.rooms.first_at(p, |i| self.rooms[i].shape.contains(p)).map(RoomIndex)
    }

    /// The pieces of one element.
    pub fn solids_of(&self, id: ElementId) -> impl Iterator<Item = &Solid> + Clone {
        self.solids.of(id).iter()
    }

    /// The openings that lead outdoors, by id.
    pub fn outside(&self) -> Vec<&OpeningFacts> {
        let mut ids: Vec<ElementId> = Vec::new();
        for shell in self.standing(&[BodyKind::Shell]) {
            let first = self.hosted.partition_point(|(host, _)| *host < shell.id);
            let of_shell = self.hosted[first..].iter().take_while(|(host, _)| *host == shell.id);
            ids.extend(of_shell.map(|(_, place)| self.element_at(*place).id));
        }
        ids.sort_unstable();
        let openings = ids.into_iter().filter_map(|id| self.opening(id));
        openings.filter(|o| o.outside).collect()
    }

    /// The openings that open to a room, by id.
    pub fn openings_of(&self, room: RoomIndex) -> impl Iterator<Item = &OpeningFacts> {
        self.room(room).openings.iter().filter_map(|id| self.opening(*id))
    }

    /// The openings whose boxes, swinging leaves included, meet a box, by id.
    pub fn openings_near(&self, bounds: Bounds) -> impl Iterator<Item = &OpeningFacts> {
        self.grids.openings.query(bounds).into_iter().map(|i| &self.openings[i])
    }

    /// The rooms whose boxes meet a box, in order.
    pub(crate) fn rooms_near(&self, bounds: Bounds) -> impl Iterator<Item = &Room> {
        self.grids.rooms.query(bounds).into_iter().map(|i| &self.rooms[i])
    }

    /// The solids whose boxes meet a box, in order.
    pub fn solids_near(&self, bounds: Bounds) -> impl Iterator<Item = &Solid> {
        self.solids.within(self.grids.solids.query(bounds), bounds)
    }

    /// The overheads whose boxes meet a box, by id.
    pub fn overheads_near(&self, bounds: Bounds) -> impl Iterator<Item = &OverheadFacts> {
        self.grids.overheads.query(bounds).into_iter().map(|i| &self.overheads[i])
    }
}
