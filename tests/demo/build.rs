//! A few words to build a plan with; positions and sizes in inches.

use geometry::{Facing, Pt};
use measure::Len;
use plan::detail::{Detail, Value};
use plan::element::*;
use plan::{Draft, Edit, Element, ElementId, Papers, Plan, Site, State};

/// A plan being built.
pub struct Build {
    plan: Plan,
}

/// A position in inches.
pub type Xy = (i32, i32);

fn pt((x, y): Xy) -> Pt {
    Pt::inches(x, y)
}

pub fn inches(n: i32) -> Len {
    Len::inches(n)
}

/// A clear opening as the maker's sheet gives it, in inches.
pub fn sheet(width: i32, height: i32) -> ClearOpening {
    ClearOpening::Sheet { width: inches(width), height: inches(height) }
}

impl Build {
    pub fn new(site: Site) -> Build {
        let plan = Plan::default().with(&Edit::Site(Box::new(site))).expect("the site is in range");
        Build { plan }
    }

    pub fn done(self) -> Plan {
        self.plan
    }

    pub fn add(&mut self, state: State, body: Body) -> ElementId {
        let id = self.plan.next_ids(1).next().expect("an id");
        let word = body.word().to_owned();
        self.plan = match self.plan.with(&Edit::Add(Draft::new(state, body))) {
            Ok(plan) => plan,
            Err(e) => panic!("{word}: {e}"),
        };
        id
    }

    /// Changes an element that is there.
    pub fn change(&mut self, id: ElementId, f: impl FnOnce(&mut Body)) {
        let mut element: Element = self.plan.get(id).expect("an element").clone();
        f(&mut element.body);
        self.plan = self.plan.with(&Edit::Replace(element)).expect("the change is in range");
    }

    /// States a detail of an element.
    pub fn state(&mut self, id: ElementId, detail: &'static Detail, value: Value) {
        let mut element: Element = self.plan.get(id).expect("an element").clone();
        element.details.set(detail, Some(value));
        self.plan = self.plan.with(&Edit::Replace(element)).expect("the detail fits");
    }

    /// States a detail of every element that it fits.
    pub fn state_all(&mut self, detail: &'static Detail, value: Value) {
        let fits = |e: &&Element| detail.fits(&e.body);
        let ids: Vec<ElementId> = self.plan.elements().iter().filter(fits).map(|e| e.id).collect();
        ids.into_iter().for_each(|id| self.state(id, detail, value));
    }

    /// States a detail of the site.
    pub fn state_site(&mut self, detail: &'static Detail, value: Value) {
        let mut site = self.plan.site.clone();
        site.details.set(detail, Some(value));
        self.plan = self.plan.with(&Edit::Site(Box::new(site))).expect("the detail fits");
    }

    /// A foundation, corner after corner, its room on the left.
    pub fn shell(&mut self, corners: &[Xy], thickness: i32) -> Vec<ElementId> {
        (0..corners.len())
            .map(|i| {
                let wall = ShellWall {
                    a: pt(corners[i]),
                    b: pt(corners[(i + 1) % corners.len()]),
                    thickness: inches(thickness),
                    height: inches(96),
                };
                self.add(State::Existing, Body::Shell(wall))
            })
            .collect()
    }

    /// A 2x4 partition by its middle line.
    pub fn partition(&mut self, a: Xy, b: Xy) -> ElementId {
        self.add(State::New, Body::Partition(Partition::two_by_four(pt(a), pt(b))))
    }

    /// Studs alone.
    pub fn bare_partition(&mut self, a: Xy, b: Xy) -> ElementId {
        let mut wall = Partition::two_by_four(pt(a), pt(b));
        wall.layers.retain(|layer| layer.material == Material::Stud);
        self.add(State::New, Body::Partition(wall))
    }

    /// 2 in of foam, a 2x4 wall and 1/2 in board over a whole foundation wall: 6 in.
    pub fn furring(&mut self, host: ElementId, from: i32, to: i32) -> ElementId {
        let layers = vec![
            Layer::new(Material::Foam, inches(2)),
            Layer::new(Material::Stud, Len::sixty_fourths(224)),
            Layer::new(Material::Board, Len::sixty_fourths(32)),
        ];
        let (from, to, spacing) = (inches(from), inches(to), inches(16));
        self.add(State::New, Body::Furring(Furring { host, from, to, layers, spacing }))
    }

    pub fn door(
        &mut self,
        host: ElementId,
        at: i32,
        width: i32,
        hinge: End,
        swing: Side,
    ) -> ElementId {
        self.leaf(host, at, width, DoorOperation::Hinged, hinge, swing)
    }

    pub fn leaf(
        &mut self,
        host: ElementId,
        at: i32,
        width: i32,
        operation: DoorOperation,
        hinge: End,
        swing: Side,
    ) -> ElementId {
        let door =
            Door { operation, leaf_width: inches(width), leaf_height: inches(80), hinge, swing };
        let kind = OpeningKind::Door(door);
        self.add(State::New, Body::Opening(Opening { host, at: inches(at), kind }))
    }

    pub fn window(&mut self, state: State, host: ElementId, at: i32, window: Window) -> ElementId {
        let kind = OpeningKind::Window(window);
        self.add(state, Body::Opening(Opening { host, at: inches(at), kind }))
    }

    pub fn service(&mut self, kind: ServiceKind, at: Xy, facing: Facing) -> ElementId {
        self.add(State::Existing, Body::Service(ServicePoint::usual(kind, pt(at), facing)))
    }

    /// A new outlet, light or alarm; the place in quarters of an inch, since finished faces lie on them.
    pub fn device(&mut self, kind: ServiceKind, at: Xy, facing: Facing) -> ElementId {
        let quarters = |n: i32| Len::sixty_fourths(n * 16);
        let at = Pt::at(quarters(at.0), quarters(at.1));
        self.add(State::New, Body::Service(ServicePoint::usual(kind, at, facing)))
    }

    pub fn column(&mut self, at: Xy) -> ElementId {
        let shape = ColumnShape::Square { width: inches(4), depth: inches(4) };
        let column = Column { at: pt(at), shape, facing: Facing::SOUTH };
        self.add(State::Existing, Body::Column(column))
    }

    pub fn stair(&mut self, foot: Xy, up: Facing) -> ElementId {
        let stair = Stair {
            foot: pt(foot),
            up,
            width: inches(36),
            risers: 14,
            rise: Len::sixty_fourths(480),
            run: inches(10),
            headroom: inches(80),
        };
        self.add(State::Existing, Body::Stair(stair))
    }

    pub fn run(
        &mut self,
        kind: OverheadKind,
        a: Xy,
        b: Xy,
        width: i32,
        underside: i32,
    ) -> ElementId {
        let shape = OverheadShape::Run { a: pt(a), b: pt(b), width: inches(width) };
        let overhead = Overhead { kind, shape, underside: inches(underside) };
        self.add(State::Existing, Body::Overhead(overhead))
    }

    /// A furnishing by the middle of its back edge; width x depth x height.
    pub fn furnishing(
        &mut self,
        name: &str,
        at: Xy,
        facing: Facing,
        size: (i32, i32, i32),
    ) -> ElementId {
        let furnishing = Furnishing {
            name: name.to_owned(),
            at: pt(at),
            facing,
            width: inches(size.0),
            depth: inches(size.1),
            height: inches(size.2),
            fixed: false,
        };
        self.add(State::New, Body::Furnishing(furnishing))
    }

    pub fn tag(&mut self, at: Xy, name: &str, room_use: RoomUse) -> ElementId {
        let tag = RoomTag { at: pt(at), name: name.to_owned(), room_use };
        self.add(State::New, Body::RoomTag(tag))
    }

    pub fn note(&mut self, at: Xy, text: &str) -> ElementId {
        self.add(State::New, Body::Note(Note { at: pt(at), text: text.to_owned() }))
    }

    /// A line along which the building is cut.
    pub fn section(&mut self, a: Xy, b: Xy) -> ElementId {
        self.add(State::New, Body::Section(SectionLine { a: pt(a), b: pt(b) }))
    }
}

/// A large casement in a well, wide enough to climb out of by the maker's sheet.
pub fn escape_window() -> Window {
    Window {
        operation: WindowOperation::Casement,
        frame_width: inches(36),
        frame_height: inches(48),
        clear: sheet(30, 44),
        sill: inches(40),
        grade: inches(76),
        well: Some(Well {
            width: inches(48),
            projection: inches(42),
            depth: inches(42),
            ladder: false,
            ladder_projection: Len::ZERO,
        }),
    }
}

/// A small existing window high in the wall.
pub fn high_window() -> Window {
    Window {
        operation: WindowOperation::Slider,
        frame_width: inches(32),
        frame_height: inches(16),
        clear: ClearOpening::Estimated,
        sill: inches(72),
        grade: inches(68),
        well: None,
    }
}

/// The site of the scenario.
pub fn site(title: &str) -> Site {
    Site { title: title.to_owned(), ..Site::default() }
}

/// What the sheets of a demo plan say: an invented house and its owner.
pub fn papers(street: &str) -> Papers {
    Papers {
        address: format!("{street}, Fernhollow"),
        parcel: "Block 7, lot 12".to_owned(),
        owner: "R. Tannhill".to_owned(),
        author: "R. Tannhill, owner".to_owned(),
        date: "2026-11-25".to_owned(),
        north: Some(20),
        work: "A bedroom with its closet in the north-west corner of the basement; a new escape window.".to_owned(),
    }
}
