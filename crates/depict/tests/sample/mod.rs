//! Sample plans for tests and benches: an invented basement, and a large one of many equal bays.

#![allow(dead_code, reason = "each test and bench uses a part of it")]

use std::sync::Arc;

use geometry::{Facing, Pt};
use measure::Len;
use plan::element::*;
use plan::{Body, Draft, Edit, ElementId, Plan, State};

/// A plan under construction.
#[derive(Default)]
pub struct Sample(pub Plan);

impl Sample {
    pub fn put(&mut self, state: State, body: Body) -> ElementId {
        let id = self.0.next_ids(1).next().unwrap();
        self.0 = self.0.with(&Edit::Add(Draft::new(state, body))).unwrap();
        id
    }

    pub fn shell(&mut self, corners: &[(i32, i32)]) -> Vec<ElementId> {
        (0..corners.len())
            .map(|i| {
                let (a, b) = (corners[i], corners[(i + 1) % corners.len()]);
                self.put(
                    State::Existing,
                    Body::Shell(ShellWall {
                        a: Pt::inches(a.0, a.1),
                        b: Pt::inches(b.0, b.1),
                        thickness: Len::inches(8),
                        height: Len::inches(93),
                    }),
                )
            })
            .collect()
    }

    pub fn partition(&mut self, a: (i32, i32), b: (i32, i32)) -> ElementId {
        let wall = Partition::two_by_four(Pt::inches(a.0, a.1), Pt::inches(b.0, b.1));
        self.put(State::New, Body::Partition(wall))
    }

    pub fn door(&mut self, host: ElementId, at: i32, operation: DoorOperation) -> ElementId {
        let door = Door {
            operation,
            leaf_width: Len::inches(30),
            leaf_height: Len::inches(80),
            hinge: End::Start,
            swing: Side::Left,
        };
        let kind = OpeningKind::Door(door);
        self.put(State::New, Body::Opening(Opening { host, at: Len::inches(at), kind }))
    }

    pub fn window(&mut self, host: ElementId, at: i32, size: (i32, i32), well: bool) -> ElementId {
        let window = Window {
            operation: WindowOperation::Casement,
            frame_width: Len::inches(size.0),
            frame_height: Len::inches(size.1),
            clear: ClearOpening::Estimated,
            sill: Len::inches(40),
            grade: Len::inches(70),
            well: well.then_some(Well {
                width: Len::inches(48),
                projection: Len::inches(36),
                depth: Len::inches(50),
                ladder: true,
                ladder_projection: Len::inches(4),
            }),
        };
        let kind = OpeningKind::Window(window);
        self.put(State::Existing, Body::Opening(Opening { host, at: Len::inches(at), kind }))
    }

    pub fn service(&mut self, kind: ServiceKind, at: (i32, i32), facing: Facing) -> ElementId {
        let point = ServicePoint::usual(kind, Pt::inches(at.0, at.1), facing);
        self.put(State::Existing, Body::Service(point))
    }

    pub fn furnishing(
        &mut self,
        name: &str,
        at: (i32, i32),
        facing: Facing,
        size: (i32, i32),
    ) -> ElementId {
        self.put(
            State::New,
            Body::Furnishing(Furnishing {
                name: name.to_owned(),
                at: Pt::inches(at.0, at.1),
                facing,
                width: Len::inches(size.0),
                depth: Len::inches(size.1),
                height: Len::inches(30),
                fixed: false,
            }),
        )
    }

    pub fn tag(&mut self, name: &str, room_use: RoomUse, at: (i32, i32)) -> ElementId {
        let tag = RoomTag { at: Pt::inches(at.0, at.1), name: name.to_owned(), room_use };
        self.put(State::New, Body::RoomTag(tag))
    }

    pub fn overhead(
        &mut self,
        kind: OverheadKind,
        a: (i32, i32),
        b: (i32, i32),
        width: i32,
        underside: i32,
    ) -> ElementId {
        let shape = OverheadShape::Run {
            a: Pt::inches(a.0, a.1),
            b: Pt::inches(b.0, b.1),
            width: Len::inches(width),
        };
        let overhead = Overhead { kind, shape, underside: Len::inches(underside) };
        self.put(State::Existing, Body::Overhead(overhead))
    }

    pub fn done(self) -> Arc<Plan> {
        Arc::new(self.0)
    }
}

/// A basement of about 32 by 27 ft with a jog: office with closet, mechanical room, stair. The partition
/// `W` stands in the panel's working space.
pub fn basement() -> Arc<Plan> {
    let mut s = Sample::default();
    s.0.site.title = "Alder Court 12".to_owned();
    let shell = s.shell(&[(0, 0), (288, 0), (288, 108), (384, 108), (384, 324), (0, 324)]);
    s.window(shell[4], 264, (36, 42), true);
    s.window(shell[4], 60, (32, 16), false);
    s.window(shell[0], 120, (32, 16), false);
    // The office with its closet.
    let west = s.partition((0, 180), (174, 180));
    s.partition((172, 324), (172, 178));
    s.door(west, 110, DoorOperation::Hinged);
    let closet = s.partition((0, 296), (72, 296));
    s.partition((70, 324), (70, 294));
    s.door(closet, 20, DoorOperation::Bifold);
    // The mechanical room.
    let long = s.partition((344, 180), (344, 290));
    let south = s.partition((240, 180), (346, 180));
    s.door(south, 16, DoorOperation::Pocket);
    s.partition((240, 240), (240, 324));
    let existing = Partition::two_by_four(Pt::inches(288, 108), Pt::inches(288, 150));
    s.put(State::Existing, Body::Partition(existing));
    let gone = Partition::two_by_four(Pt::inches(0, 120), Pt::inches(100, 120));
    s.put(State::Removed, Body::Partition(gone));
    let _ = long;
    s.put(
        State::New,
        Body::Furring(Furring {
            host: shell[5],
            from: Len::ZERO,
            to: Len::inches(130),
            layers: vec![
                Layer::new(Material::Foam, Len::inches(2)),
                Layer::new(Material::Gap, Len::inches(1)),
                Layer::new(Material::Stud, Len::sixty_fourths(224)),
                Layer::new(Material::Board, Len::sixty_fourths(32)),
            ],
            spacing: Len::inches(16),
        }),
    );
    for at in [(96, 140), (200, 96)] {
        s.put(
            State::Existing,
            Body::Column(Column {
                at: Pt::inches(at.0, at.1),
                shape: ColumnShape::Square { width: Len::inches(4), depth: Len::inches(4) },
                facing: Facing::SOUTH,
            }),
        );
    }
    s.put(
        State::Existing,
        Body::Stair(Stair {
            foot: Pt::inches(206, 16),
            up: Facing::NORTH,
            width: Len::inches(36),
            risers: 13,
            rise: Len::sixty_fourths(7 * 64 + 40),
            run: Len::inches(10),
            headroom: Len::inches(80),
        }),
    );
    s.overhead(OverheadKind::Duct, (142, 0), (142, 324), 26, 79);
    s.overhead(OverheadKind::Beam, (0, 98), (288, 98), 8, 84);
    s.overhead(OverheadKind::Pipe, (260, 170), (384, 170), 5, 86);
    s.service(ServiceKind::Panel, (384, 260), Facing::WEST);
    s.service(ServiceKind::MainWaterValve, (0, 210), Facing::EAST);
    s.service(ServiceKind::WaterMeter, (0, 236), Facing::EAST);
    s.service(ServiceKind::GasMeter, (384, 140), Facing::WEST);
    s.service(ServiceKind::GasValve, (330, 108), Facing::NORTH);
    s.service(ServiceKind::Furnace, (300, 112), Facing::NORTH);
    s.service(ServiceKind::WaterHeater, (352, 112), Facing::NORTH);
    s.service(ServiceKind::Damper, (142, 220), Facing::SOUTH);
    s.service(ServiceKind::Damper, (142, 140), Facing::SOUTH);
    s.service(ServiceKind::Cleanout, (60, 0), Facing::NORTH);
    s.service(ServiceKind::FloorDrain, (270, 40), Facing::SOUTH);
    s.service(ServiceKind::Sump, (20, 20), Facing::NORTH);
    s.service(ServiceKind::Ejector, (256, 80), Facing::SOUTH);
    s.service(ServiceKind::JunctionBox, (110, 250), Facing::SOUTH);
    s.service(ServiceKind::JunctionBox, (210, 250), Facing::SOUTH);
    s.service(ServiceKind::RadonPipe, (100, 10), Facing::NORTH);
    s.service(ServiceKind::HoseBibValve, (288, 60), Facing::WEST);
    s.service(ServiceKind::Disconnect, (330, 324), Facing::SOUTH);
    s.service(ServiceKind::AirFilter, (326, 126), Facing::EAST);
    s.service(ServiceKind::FixtureValve, (60, 90), Facing::EAST);
    s.furnishing("desk", (12, 240), Facing::EAST, (54, 28));
    s.furnishing("shelf", (150, 318), Facing::SOUTH, (40, 12));
    s.furnishing("sofa", (40, 60), Facing::EAST, (78, 36));
    s.tag("Office", RoomUse::Office, (90, 250));
    s.tag("Closet", RoomUse::Closet, (34, 310));
    s.tag("", RoomUse::Unfinished, (120, 60));
    s.put(
        State::New,
        Body::Note(Note { at: Pt::inches(40, 150), text: "crack, sealed in spring".to_owned() }),
    );
    s.done()
}

/// About `elements` elements: bays of walls with a door, a service point, furniture, a tag and a duct.
pub fn bays(elements: usize) -> Arc<Plan> {
    const PER_BAY: usize = 10;
    let bays = (elements / PER_BAY).max(1) as i32;
    let columns = (1..).find(|n| n * n >= bays).unwrap();
    let rows = (bays + columns - 1) / columns;
    let (w, h) = (144, 132);
    let mut drafts = Vec::new();
    let mut s = Sample::default();
    s.shell(&[(0, 0), (columns * w, 0), (columns * w, rows * h), (0, rows * h)]);
    let first = s.0.next_ids(1).next().unwrap().0;
    for bay in 0..bays {
        let (x, y) = (bay % columns * w, bay / columns * h);
        let at = |dx: i32, dy: i32| Pt::inches(x + dx, y + dy);
        let mut add = |body: Body| drafts.push(Edit::Add(Draft::new(State::New, body)));
        let host = ElementId(first + bay as u32 * PER_BAY as u32);
        add(Body::Partition(Partition::two_by_four(at(0, h), at(w, h))));
        add(Body::Partition(Partition::two_by_four(at(w, 0), at(w, h))));
        add(Body::Opening(Opening {
            host,
            at: Len::inches(40),
            kind: OpeningKind::Door(Door {
                operation: DoorOperation::Hinged,
                leaf_width: Len::inches(30),
                leaf_height: Len::inches(80),
                hinge: End::Start,
                swing: Side::Right,
            }),
        }));
        let kind = ServiceKind::ALL[bay as usize % ServiceKind::ALL.len()];
        add(Body::Service(ServicePoint::usual(kind, at(20, 20), Facing::NORTH)));
        add(Body::Service(ServicePoint::usual(
            ServiceKind::JunctionBox,
            at(100, 30),
            Facing::NORTH,
        )));
        for (name, p, size) in [("desk", at(30, 60), (54, 28)), ("shelf", at(100, 90), (36, 12))] {
            add(Body::Furnishing(Furnishing {
                name: name.to_owned(),
                at: p,
                facing: Facing::NORTH,
                width: Len::inches(size.0),
                depth: Len::inches(size.1),
                height: Len::inches(30),
                fixed: false,
            }));
        }
        add(Body::RoomTag(RoomTag {
            at: at(70, 66),
            name: format!("Bay {bay}"),
            room_use: RoomUse::Storage,
        }));
        add(Body::Overhead(Overhead {
            kind: OverheadKind::Duct,
            shape: OverheadShape::Run { a: at(0, 110), b: at(w, 110), width: Len::inches(14) },
            underside: Len::inches(82),
        }));
        add(Body::Note(Note { at: at(60, 20), text: "checked".to_owned() }));
    }
    s.0 = s.0.with(&Edit::Batch(drafts)).unwrap();
    s.done()
}
