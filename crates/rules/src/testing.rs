//! Sample plans for the tests of rules, and what is expected of them, in text.
//!
//! ```text
//! Sample::room(144.0, 120.0)
//!     .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
//!     .partition(at(0.0, 40.0), at(144.0, 40.0))
//!     .expect("panel-depth", &["correction, measured 33 3/4\", required 36\""]);
//! ```

use std::sync::Arc;

use geometry::{Facing, Pt};
use measure::{Len, System};
use plan::detail::{Detail, Value};
use plan::element::{
    ClearOpening, Column, ColumnShape, Door, DoorOperation, End, Furnishing, Furring, Justify,
    Opening, OpeningKind, Overhead, OverheadKind, OverheadShape, Partition, RoomTag, RoomUse,
    ServiceKind, ServicePoint, ShellWall, Side, Stair, Well, Window, WindowOperation,
};
use plan::{Body, Draft, Edit, Edition, ElementId, House, Plan, Site, State};
use space::Facts;

use crate::{Book, Finding, check, rule};

/// A length in inches; exact for every 1/64 in.
pub fn inch(n: f64) -> Len {
    Len::from_units((n * f64::from(Len::PER_INCH)).round() as i32)
}

/// A point in inches; exact for every 1/64 in.
pub fn at(x: f64, y: f64) -> Pt {
    Pt::at(inch(x), inch(y))
}

/// A plan under construction. Every call adds one element and makes it the one that `last` names.
#[derive(Clone)]
pub struct Sample {
    plan: Plan,
    last: ElementId,
}

impl Sample {
    /// Bare ground: existing house, open joists at 96 in, no floor build-up.
    pub fn blank() -> Sample {
        let mut plan = Plan::default();
        plan.site.joist_underside = Len::inches(96);
        plan.site.ceiling = plan::CeilingBuild::Open;
        plan.site.floor_build = Len::ZERO;
        Sample { plan, last: ElementId(u32::MAX) }
    }

    /// A rectangular shell with its south-west corner at the origin, clear size in inches. The walls are the
    /// first four elements: south, east, north, west, 8 in thick and 96 in high.
    pub fn room(width: f64, depth: f64) -> Sample {
        Sample::shell(&[at(0.0, 0.0), at(width, 0.0), at(width, depth), at(0.0, depth)])
    }

    /// A shell of any corners, counter-clockwise; its walls are the first elements, from the first corner on.
    pub fn shell(corners: &[Pt]) -> Sample {
        (0..corners.len()).fold(Sample::blank(), |sample, i| {
            sample.add(
                State::Existing,
                Body::Shell(ShellWall {
                    a: corners[i],
                    b: corners[(i + 1) % corners.len()],
                    thickness: Len::inches(8),
                    height: Len::inches(96),
                }),
            )
        })
    }

    /// Adds any element.
    pub fn add(mut self, state: State, body: Body) -> Sample {
        self.last = self.plan.next_ids(1).next().expect("an id");
        self.edit(&Edit::Add(Draft::new(state, body)))
    }

    pub fn edit(mut self, edit: &Edit) -> Sample {
        self.plan = self.plan.with(edit).unwrap_or_else(|e| panic!("sample plan: {e}"));
        self
    }

    /// The id of the element added last.
    pub fn last(&self) -> ElementId {
        self.last
    }

    /// Every element of the plan.
    pub fn plan_elements(&self) -> impl Iterator<Item = &plan::Element> {
        self.plan.elements().iter()
    }

    /// Changes the element added last.
    pub fn tune(self, change: impl FnOnce(&mut plan::Element)) -> Sample {
        let mut element = self.plan.get(self.last).expect("an element was added").clone();
        change(&mut element);
        self.edit(&Edit::Replace(element))
    }

    /// Changes the service point added last.
    pub fn tune_service(self, change: impl FnOnce(&mut ServicePoint)) -> Sample {
        self.tune(|e| match &mut e.body {
            Body::Service(s) => change(s),
            other => panic!("the last element is a {}", other.word()),
        })
    }

    /// The element added last is there already.
    pub fn existing(self) -> Sample {
        self.tune(|e| e.state = State::Existing)
    }

    /// The element added last is new.
    pub fn fresh(self) -> Sample {
        self.tune(|e| e.state = State::New)
    }

    /// A room with a new window in a well, with or without a ladder.
    pub fn with_well(ladder: bool) -> Sample {
        let room = Sample::room(144.0, 120.0);
        let host = room.last();
        let ladder_projection = if ladder { Len::inches(6) } else { Len::ZERO };
        let well = Well {
            width: Len::inches(48),
            projection: Len::inches(48),
            depth: Len::inches(60),
            ladder,
            ladder_projection,
        };
        let window = Window {
            operation: WindowOperation::Slider,
            frame_width: Len::inches(48),
            frame_height: Len::inches(48),
            clear: ClearOpening::Estimated,
            sill: Len::inches(30),
            grade: Len::inches(80),
            well: Some(well),
        };
        room.window(host, 30.0, window).fresh()
    }

    /// A room with a new door in its last wall.
    pub fn with_door() -> Sample {
        let room = Sample::room(144.0, 120.0);
        let host = room.last();
        room.door(host, 30.0, 36.0)
    }

    /// A room with a new stair.
    pub fn with_stair() -> Sample {
        Sample::room(240.0, 240.0).stair(at(100.0, 60.0), Facing::NORTH).fresh()
    }

    /// A room with new furring along its last wall.
    pub fn with_furring() -> Sample {
        let room = Sample::room(144.0, 120.0);
        let host = room.last();
        room.furring(host)
    }

    /// A room with a new soffit.
    pub fn with_soffit() -> Sample {
        let room = Sample::room(144.0, 120.0);
        let (a, b) = (at(0.0, 100.0), at(144.0, 100.0));
        room.overhead(OverheadKind::Soffit, a, b, 20.0, 84.0).fresh()
    }

    /// A room with a new tag.
    pub fn with_room(room_use: RoomUse) -> Sample {
        Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Room", room_use)
    }

    /// A room with a new service point of a kind in front of its south wall.
    pub fn with(kind: ServiceKind) -> Sample {
        Sample::room(144.0, 120.0).service(kind, at(72.0, 0.0), Facing::NORTH).fresh()
    }

    /// A room with a new furnishing of a name.
    pub fn with_thing(name: &str) -> Sample {
        let room = Sample::room(144.0, 120.0);
        let name = name.to_owned();
        room.furnishing(at(72.0, 40.0), Facing::NORTH, 30.0, 30.0).tune(|e| match &mut e.body {
            Body::Furnishing(thing) => thing.name = name,
            other => panic!("{}", other.word()),
        })
    }

    /// States a detail of the element added last.
    pub fn state(self, detail: &'static Detail, value: Value) -> Sample {
        self.tune(|e| e.details.set(detail, Some(value)))
    }

    /// States a detail of the site.
    pub fn state_site(self, detail: &'static Detail, value: Value) -> Sample {
        self.site(|s| s.details.set(detail, Some(value)))
    }

    pub fn site(mut self, change: impl FnOnce(&mut Site)) -> Sample {
        change(&mut self.plan.site);
        self
    }

    pub fn new_house(self) -> Sample {
        self.site(|s| s.house = House::New)
    }

    pub fn edition(self, edition: Edition) -> Sample {
        self.site(|s| s.edition = edition)
    }

    /// A partition that is 4 1/2 in thick, its drawn line in the middle.
    pub fn partition(self, a: Pt, b: Pt) -> Sample {
        self.add(State::New, Body::Partition(Partition::two_by_four(a, b)))
    }

    /// A partition drawn by its left face, looking from `a` to `b`.
    pub fn partition_by_left_face(self, a: Pt, b: Pt) -> Sample {
        let partition = Partition { justify: Justify::LeftFace, ..Partition::two_by_four(a, b) };
        self.add(State::New, Body::Partition(partition))
    }

    /// Furring of 4 1/2 in (stud and board and gap) along a whole foundation wall.
    pub fn furring(self, host: ElementId) -> Sample {
        use plan::element::{Layer, Material};
        let furring = Furring {
            host,
            from: Len::ZERO,
            to: Len::feet_inches(100, 0),
            layers: vec![
                Layer::new(Material::Gap, inch(0.5)),
                Layer::new(Material::Stud, inch(3.5)),
                Layer::new(Material::Board, inch(0.5)),
            ],
            spacing: Len::inches(16),
        };
        self.add(State::New, Body::Furring(furring))
    }

    /// A hinged door, 80 in high, hinged at the start of its host and swinging to the left.
    pub fn door(self, host: ElementId, from: f64, width: f64) -> Sample {
        self.opening(host, from, DoorOperation::Hinged, width)
    }

    /// A door of any operation, else as [`Sample::door`].
    pub fn opening(
        self,
        host: ElementId,
        from: f64,
        operation: DoorOperation,
        width: f64,
    ) -> Sample {
        let door = Door {
            operation,
            leaf_width: inch(width),
            leaf_height: Len::inches(80),
            hinge: End::Start,
            swing: Side::Left,
        };
        let kind = OpeningKind::Door(door);
        self.add(State::New, Body::Opening(Opening { host, at: inch(from), kind }))
    }

    /// Changes the door added last.
    pub fn tune_door(self, change: impl FnOnce(&mut Door)) -> Sample {
        self.tune(|e| match &mut e.body {
            Body::Opening(Opening { kind: OpeningKind::Door(door), .. }) => change(door),
            other => panic!("the last element is a {}", other.word()),
        })
    }

    pub fn window(self, host: ElementId, from: f64, window: Window) -> Sample {
        let kind = OpeningKind::Window(window);
        self.add(State::Existing, Body::Opening(Opening { host, at: inch(from), kind }))
    }

    /// An existing service point of its usual size.
    pub fn service(self, kind: ServiceKind, at: Pt, facing: Facing) -> Sample {
        self.add(State::Existing, Body::Service(ServicePoint::usual(kind, at, facing)))
    }

    /// A loose piece of furniture, 30 in high, standing with the middle of its back edge at a point.
    pub fn furnishing(self, at: Pt, facing: Facing, width: f64, depth: f64) -> Sample {
        let furnishing = Furnishing {
            name: "shelf".into(),
            at,
            facing,
            width: inch(width),
            depth: inch(depth),
            height: Len::inches(30),
            fixed: false,
        };
        self.add(State::New, Body::Furnishing(furnishing))
    }

    /// A square column with its sides along the axes.
    pub fn column(self, at: Pt, side: f64) -> Sample {
        let shape = ColumnShape::Square { width: inch(side), depth: inch(side) };
        self.add(State::Existing, Body::Column(Column { at, shape, facing: Facing::NORTH }))
    }

    pub fn overhead(self, kind: OverheadKind, a: Pt, b: Pt, width: f64, under: f64) -> Sample {
        let shape = OverheadShape::Run { a, b, width: inch(width) };
        self.add(State::Existing, Body::Overhead(Overhead { kind, shape, underside: inch(under) }))
    }

    /// A flight of 13 risers of 7 1/2 in with 10 in treads, 36 in wide.
    pub fn stair(self, foot: Pt, up: Facing) -> Sample {
        let stair = Stair {
            foot,
            up,
            width: Len::inches(36),
            risers: 13,
            rise: inch(7.5),
            run: Len::inches(10),
            headroom: Len::inches(80),
        };
        self.add(State::Existing, Body::Stair(stair))
    }

    pub fn tag(self, at: Pt, name: &str, room_use: RoomUse) -> Sample {
        self.add(State::New, Body::RoomTag(RoomTag { at, name: name.into(), room_use }))
    }

    pub fn facts(&self) -> Facts {
        space::derive(&Arc::new(self.plan.clone()))
    }

    pub fn book(&self) -> Book {
        Book::of(&self.plan.site)
    }

    /// The findings of one rule.
    pub fn findings(&self, slug: &str) -> Vec<Finding> {
        let rule = rule(slug).unwrap_or_else(|| panic!("no rule {slug}"));
        let findings = check(&self.facts(), &self.book()).into_iter();
        findings.filter(|f| f.rule == rule.slug).map(Arc::unwrap_or_clone).collect()
    }

    /// The findings of one rule, each as [`said`] says it.
    #[track_caller]
    pub fn expect(&self, slug: &str, expected: &[&str]) {
        let found: Vec<String> = self.findings(slug).iter().map(said).collect();
        assert_eq!(found, expected, "{slug}");
    }

    #[track_caller]
    pub fn expect_none(&self, slug: &str) {
        self.expect(slug, &[]);
    }

    /// The labels of the remedies offered for the only finding of a rule.
    pub fn remedies(&self, slug: &str) -> Vec<String> {
        let findings = self.findings(slug);
        let [finding] = &findings[..] else {
            panic!("{slug}: {} findings", findings.len());
        };
        let remedies = crate::remedies(finding, &self.facts(), &self.book());
        remedies.iter().map(|r| r.label.say(System::Imperial)).collect()
    }
}

/// A finding in a line: `correction, measured 33 5/8", required 36"`.
pub fn said(finding: &Finding) -> String {
    let mut line = finding.severity.word().to_owned();
    if let Some(measured) = finding.measured_text(System::Imperial) {
        line += &format!(", measured {measured}");
    }
    if let Some(required) = finding.required_text(System::Imperial) {
        line += &format!(", required {required}");
    }
    line
}
