//! Plans for tests and benches: a builder in inches, and a basement of any size.
#![allow(dead_code)]

use std::sync::Arc;

use geometry::{Facing, Pt};
use measure::Len;
use plan::element::{
    Column, ColumnShape, Door, DoorOperation, End, Furnishing, Furring, Layer, Material, Opening,
    OpeningKind, Overhead, OverheadKind, OverheadShape, Partition, RoomTag, RoomUse, ServiceKind,
    ServicePoint, ShellWall, Side,
};
use plan::{Body, Draft, Edit, ElementId, Plan, Site, State};

/// A plan that is being put together, in inches.
#[derive(Clone, Default)]
pub struct Sketch {
    pub plan: Plan,
}

impl Sketch {
    pub fn new() -> Sketch {
        Sketch::default()
    }

    pub fn add(&mut self, body: Body) -> ElementId {
        let id = self.plan.next_ids(1).next().unwrap();
        let draft = Draft::new(State::New, body);
        self.plan = self.plan.with(&Edit::Add(draft)).unwrap();
        id
    }

    pub fn site(&mut self, change: impl FnOnce(&mut Site)) {
        let mut site = self.plan.site.clone();
        change(&mut site);
        self.plan = self.plan.with(&Edit::Site(Box::new(site))).unwrap();
    }

    pub fn shared(&self) -> Arc<Plan> {
        Arc::new(self.plan.clone())
    }

    /// 8 in foundation walls round a ring of corners (counter-clockwise: the room inside).
    pub fn shell(&mut self, corners: &[(i32, i32)]) -> Vec<ElementId> {
        let at = |i: usize| Pt::inches(corners[i].0, corners[i].1);
        (0..corners.len())
            .map(|i| {
                self.add(Body::Shell(ShellWall {
                    a: at(i),
                    b: at((i + 1) % corners.len()),
                    thickness: Len::inches(8),
                    height: Len::inches(96),
                }))
            })
            .collect()
    }

    /// The shell of a rectangle from the origin.
    pub fn rectangle(&mut self, width: i32, depth: i32) -> Vec<ElementId> {
        self.shell(&[(0, 0), (width, 0), (width, depth), (0, depth)])
    }

    /// A partition of 4 in.
    pub fn partition(&mut self, a: (i32, i32), b: (i32, i32)) -> ElementId {
        self.wall(Pt::inches(a.0, a.1), Pt::inches(b.0, b.1), Len::inches(4))
    }

    /// A partition of any thickness, drawn by its middle.
    pub fn wall(&mut self, a: Pt, b: Pt, thickness: Len) -> ElementId {
        let layers = vec![Layer::new(Material::Stud, thickness)];
        self.add(Body::Partition(Partition { layers, ..Partition::two_by_four(a, b) }))
    }

    /// Furring over the whole of a foundation wall.
    pub fn furring(&mut self, host: ElementId, thickness: Len) -> ElementId {
        let Some(Body::Shell(shell)) = self.plan.get(host).map(|e| e.body.clone()) else {
            panic!("furring needs a foundation wall")
        };
        self.add(Body::Furring(Furring {
            host,
            from: Len::ZERO,
            to: shell.line().len(),
            layers: vec![Layer::new(Material::Stud, thickness)],
            spacing: Len::inches(16),
        }))
    }

    /// A hinged door that swings to the left of its host.
    pub fn door(&mut self, host: ElementId, at: i32, width: i32) -> ElementId {
        self.add(Body::Opening(Opening {
            host,
            at: Len::inches(at),
            kind: OpeningKind::Door(Door {
                operation: DoorOperation::Hinged,
                leaf_width: Len::inches(width),
                leaf_height: Len::inches(80),
                hinge: End::Start,
                swing: Side::Left,
            }),
        }))
    }

    pub fn tag(&mut self, x: i32, y: i32, room_use: RoomUse) -> ElementId {
        let name = room_use.word().to_owned();
        self.add(Body::RoomTag(RoomTag { at: Pt::inches(x, y), name, room_use }))
    }

    pub fn service(&mut self, kind: ServiceKind, x: i32, y: i32, facing: Facing) -> ElementId {
        self.add(Body::Service(ServicePoint::usual(kind, Pt::inches(x, y), facing)))
    }

    pub fn furnishing(
        &mut self,
        x: i32,
        y: i32,
        facing: Facing,
        size: (i32, i32, i32),
    ) -> ElementId {
        self.add(Body::Furnishing(Furnishing {
            name: "desk".to_owned(),
            at: Pt::inches(x, y),
            facing,
            width: Len::inches(size.0),
            depth: Len::inches(size.1),
            height: Len::inches(size.2),
            fixed: false,
        }))
    }

    pub fn column(&mut self, x: i32, y: i32) -> ElementId {
        self.add(Body::Column(Column {
            at: Pt::inches(x, y),
            shape: ColumnShape::Round { diameter: Len::inches(4) },
            facing: Facing::NORTH,
        }))
    }

    /// A straight overhead.
    pub fn run(
        &mut self,
        kind: OverheadKind,
        (a, b): ((i32, i32), (i32, i32)),
        width: i32,
        underside: i32,
    ) -> ElementId {
        let (a, b) = (Pt::inches(a.0, a.1), Pt::inches(b.0, b.1));
        let shape = OverheadShape::Run { a, b, width: Len::inches(width) };
        self.add(Body::Overhead(Overhead { kind, shape, underside: Len::inches(underside) }))
    }
}

/// A basement of about `n` elements: a shell with a jog, furred on two sides, cells of 12 ft x 10 ft
/// between partitions that meet in tees and crossings, each with a door, a tag, things that stand and
/// hang in it, and every seventh partition slightly out of square. The same for the same `n`.
pub fn basement(n: usize) -> Plan {
    const CELL: (i32, i32) = (144, 120);
    // Eight elements in a cell, eight in the shell.
    let cells = (n.saturating_sub(8) / 8).max(1) as i32;
    let columns = cells.isqrt().max(1);
    let rows = (cells + columns - 1) / columns;
    let (width, depth) = (columns * CELL.0, rows * CELL.1);
    let mut s = Sketch::new();
    let shell = s.shell(&[
        (0, 0),
        (width, 0),
        (width, depth + 48),
        (width / 2, depth + 48),
        (width / 2, depth),
        (0, depth),
    ]);
    s.furring(shell[0], Len::inches(5));
    s.furring(shell[1], Len::inches(5));
    for i in 0..cells {
        let (column, row) = (i % columns, i / columns);
        let (x, y) = (column * CELL.0, row * CELL.1);
        let skew = if i % 7 == 3 { 5 } else { 0 };
        let right = s.partition((x + CELL.0, y), (x + CELL.0 + skew, y + CELL.1));
        let above = s.partition((x, y + CELL.1), (x + CELL.0, y + CELL.1));
        s.door(if i % 2 == 0 { right } else { above }, 24 + i % 40, 30);
        s.tag(x + 70, y + 60, RoomUse::ALL[i as usize % RoomUse::ALL.len()]);
        let kind = ServiceKind::ALL[i as usize % ServiceKind::ALL.len()];
        s.service(kind, x + 40, y + 30, Facing::NORTH);
        s.furnishing(x + 100, y + 40, Facing::WEST, (48, 24, 30));
        s.run(OverheadKind::Duct, ((x + 4, y + 80), (x + 140, y + 80)), 16, 84);
        if i % 2 == 0 {
            s.column(x + 72, y + 100);
        } else {
            s.run(OverheadKind::Soffit, ((x + 20, y + 4), (x + 20, y + 110)), 24, 80);
        }
    }
    s.plan
}
