//! A basement of one room for tests from outside, built by edits alone.
#![allow(dead_code, reason = "each test file uses a part")]

use std::sync::Arc;

use geometry::{Facing, Pt};
use measure::Len;
use plan::detail::{Detail, Value};
use plan::element::{
    ClearOpening, Door, DoorOperation, End, Opening, OpeningKind, Overhead, OverheadKind,
    OverheadShape, Partition, RoomTag, RoomUse, ServiceKind, ServicePoint, ShellWall, Side, Stair,
    Window, WindowOperation,
};
use plan::{
    Body, CeilingBuild, Draft, Edit, Edition, Element, ElementId, House, Plan, Site, State,
};
use rules::{Book, Finding, Severity, check};

/// Inches as a length, rounded to 1/320 mm.
pub fn inch(n: f64) -> Len {
    Len::from_units((n * f64::from(Len::PER_INCH)).round() as i32)
}

/// A casement of 36 x 48 in, its bottom 40 in above the slab and at the outside ground.
pub fn window() -> Window {
    Window {
        operation: WindowOperation::Casement,
        frame_width: inch(36.0),
        frame_height: inch(48.0),
        clear: ClearOpening::Estimated,
        sill: inch(40.0),
        grade: inch(40.0),
        well: None,
    }
}

/// The same with a clear opening from the maker's sheet.
pub fn sheet(width: f64, height: f64) -> Window {
    Window { clear: ClearOpening::Sheet { width: inch(width), height: inch(height) }, ..window() }
}

#[derive(Clone)]
pub struct Basement {
    plan: Plan,
    south: ElementId,
    size: (f64, f64),
    windows: u32,
    last: ElementId,
}

impl Basement {
    /// A room of 12 x 10 ft that is the whole basement of an existing house.
    pub fn room(room_use: RoomUse) -> Basement {
        Basement::of(144.0, 120.0, room_use)
    }

    /// The same of any size, in inches.
    pub fn of(width: f64, depth: f64, room_use: RoomUse) -> Basement {
        let mut plan = Plan::default();
        plan.site.joist_underside = Len::inches(96);
        plan.site.ceiling = CeilingBuild::Open;
        plan.site.floor_build = Len::ZERO;
        let at = |x: f64, y: f64| Pt::at(inch(x), inch(y));
        let corners = [at(0.0, 0.0), at(width, 0.0), at(width, depth), at(0.0, depth)];
        let south = plan.next_ids(1).next().expect("an id");
        let mut basement = Basement { plan, south, size: (width, depth), windows: 0, last: south };
        for (i, &a) in corners.iter().enumerate() {
            let b = corners[(i + 1) % 4];
            let (thickness, height) = (Len::inches(8), Len::inches(96));
            basement = basement.add(Body::Shell(ShellWall { a, b, thickness, height }));
        }
        let tag = RoomTag { at: at(width / 2.0, depth / 2.0), name: "Room".into(), room_use };
        basement.add(Body::RoomTag(tag))
    }

    pub fn add(mut self, body: Body) -> Basement {
        self.last = self.plan.next_ids(1).next().expect("an id");
        let edit = Edit::Add(Draft::new(State::New, body));
        self.plan = self.plan.with(&edit).unwrap_or_else(|e| panic!("{e}"));
        self
    }

    /// One window more in the south wall.
    pub fn window(mut self, window: Window) -> Basement {
        let at = inch(6.0 + 60.0 * f64::from(self.windows));
        self.windows += 1;
        let host = self.south;
        self.add(Body::Opening(Opening { host, at, kind: OpeningKind::Window(window) }))
    }

    /// A service point of its usual size; the place in inches.
    pub fn service(self, kind: ServiceKind, x: f64, y: f64, facing: Facing) -> Basement {
        self.add(Body::Service(ServicePoint::usual(kind, Pt::at(inch(x), inch(y)), facing)))
    }

    /// A partition of 4 1/2 in by its middle line.
    pub fn partition(self, a: (f64, f64), b: (f64, f64)) -> Basement {
        let [a, b] = [a, b].map(|(x, y)| Pt::at(inch(x), inch(y)));
        self.add(Body::Partition(Partition::two_by_four(a, b)))
    }

    /// A door or cased opening in what was added last.
    pub fn opening(self, operation: DoorOperation, at: f64, width: f64) -> Basement {
        let door = Door {
            operation,
            leaf_width: inch(width),
            leaf_height: inch(80.0),
            hinge: End::Start,
            swing: Side::Left,
        };
        let host = self.last;
        self.add(Body::Opening(Opening { host, at: inch(at), kind: OpeningKind::Door(door) }))
    }

    pub fn tag(self, x: f64, y: f64, room_use: RoomUse) -> Basement {
        let at = Pt::at(inch(x), inch(y));
        self.add(Body::RoomTag(RoomTag { at, name: room_use.word().into(), room_use }))
    }

    /// Changes what was added last.
    pub fn tune(mut self, change: impl FnOnce(&mut Element)) -> Basement {
        let mut element = self.plan.get(self.last).expect("there").clone();
        change(&mut element);
        self.plan = self.plan.with(&Edit::Replace(element)).unwrap_or_else(|e| panic!("{e}"));
        self
    }

    /// States a detail of what was added last.
    pub fn state(self, detail: &'static Detail, value: Value) -> Basement {
        self.tune(|e| e.details.set(detail, Some(value)))
    }

    /// Changes the tag of the room.
    pub fn retag(mut self, change: impl FnOnce(&mut Element)) -> Basement {
        let tag = |e: &&Element| matches!(e.body, Body::RoomTag(_));
        let mut tag = self.plan.elements().iter().find(tag).expect("a tag").clone();
        change(&mut tag);
        self.plan = self.plan.with(&Edit::Replace(tag)).unwrap_or_else(|e| panic!("{e}"));
        self
    }

    /// A flight of 13 risers that goes up to the north from a point.
    pub fn stair_at(self, x: f64, y: f64) -> Basement {
        self.stair(Stair {
            foot: Pt::at(inch(x), inch(y)),
            up: Facing::NORTH,
            width: inch(36.0),
            risers: 5,
            rise: inch(7.5),
            run: inch(10.0),
            headroom: inch(80.0),
        })
    }

    /// Changes the site facts.
    pub fn site(mut self, change: impl FnOnce(&mut Site)) -> Basement {
        change(&mut self.plan.site);
        self
    }

    pub fn stair(self, stair: Stair) -> Basement {
        self.add(Body::Stair(stair))
    }

    /// An overhead 12 in wide across the room, so many inches above the slab.
    pub fn overhead(self, kind: OverheadKind, underside: f64) -> Basement {
        let (width, depth) = self.size;
        let y = inch(depth / 2.0);
        let (a, b) = (Pt::at(Len::ZERO, y), Pt::at(inch(width), y));
        let shape = OverheadShape::Run { a, b, width: inch(12.0) };
        self.add(Body::Overhead(Overhead { kind, shape, underside: inch(underside) }))
    }

    pub fn edition(mut self, edition: Edition) -> Basement {
        self.plan.site.edition = edition;
        self
    }

    pub fn house(mut self, house: House) -> Basement {
        self.plan.site.house = house;
        self
    }

    /// Inches from the slab to open joists.
    pub fn height(mut self, height: f64) -> Basement {
        self.plan.site.joist_underside = inch(height);
        self
    }

    pub fn all(&self) -> Vec<Finding> {
        let book = Book::of(&self.plan.site);
        let found = check(&space::derive(&Arc::new(self.plan.clone())), &book);
        found.into_iter().map(Arc::unwrap_or_clone).collect()
    }

    pub fn findings(&self, slug: &str) -> Vec<Finding> {
        let mut found = self.all();
        found.retain(|f| f.rule == slug);
        found
    }

    /// The rules that found something, once each, in the order of their names.
    pub fn rules(&self) -> Vec<&'static str> {
        let mut found: Vec<&str> = self.all().iter().map(|f| f.rule).collect();
        found.sort_unstable();
        found.dedup();
        found
    }

    /// The same, of corrections alone.
    pub fn corrections(&self) -> Vec<&'static str> {
        let mut found = self.all();
        found.retain(|f| f.severity == Severity::Correction);
        let mut found: Vec<&str> = found.iter().map(|f| f.rule).collect();
        found.sort_unstable();
        found
    }

    /// The rules about ceilings and what hangs below them that found something.
    pub fn headroom_rules(&self) -> Vec<&'static str> {
        let mut found = self.rules();
        found.retain(|slug| ["ceiling-height", "projection-height"].contains(slug));
        found
    }
}
