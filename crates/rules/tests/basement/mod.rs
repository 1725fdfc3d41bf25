//! A basement of one room for tests from outside, built by edits alone.

use std::sync::Arc;

use geometry::Pt;
use measure::Len;
use plan::element::{
    ClearOpening, Opening, OpeningKind, Overhead, OverheadKind, OverheadShape, RoomTag, RoomUse,
    ShellWall, Stair, Window, WindowOperation,
};
use plan::{Body, CeilingBuild, Draft, Edit, Edition, ElementId, House, Plan, State};
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
        let mut basement = Basement { plan, south, size: (width, depth), windows: 0 };
        for (i, &a) in corners.iter().enumerate() {
            let b = corners[(i + 1) % 4];
            let (thickness, height) = (Len::inches(8), Len::inches(96));
            basement = basement.add(Body::Shell(ShellWall { a, b, thickness, height }));
        }
        let tag = RoomTag { at: at(width / 2.0, depth / 2.0), name: "Room".into(), room_use };
        basement.add(Body::RoomTag(tag))
    }

    fn add(mut self, body: Body) -> Basement {
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
        let book = Book::model(self.plan.site.edition);
        check(&space::derive(&Arc::new(self.plan.clone())), &book)
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
