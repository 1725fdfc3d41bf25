//! Checks of a generated basement: rooms in rows, each with a door, a tag, furniture and service points.

use std::sync::Arc;

use divan::Bencher;
use geometry::{Facing, Pt};
use measure::Len;
use plan::element::{
    Door, DoorOperation, End, Furnishing, Opening, OpeningKind, Overhead, OverheadKind,
    OverheadShape, Partition, RoomTag, RoomUse, ServiceKind, ServicePoint, ShellWall, Side,
};
use plan::{Body, Draft, Edit, Edition, Plan, State};
use rules::Book;
use space::Facts;

fn main() {
    divan::main();
}

/// Clear size of a generated room's cell, in inches.
const CELL: i32 = 132;

fn put(plan: &Plan, state: State, body: Body) -> Plan {
    plan.with(&Edit::Add(Draft::new(state, body))).expect("a good element")
}

fn shell(plan: Plan, width: i32, depth: i32) -> Plan {
    let corner = [(0, 0), (width, 0), (width, depth), (0, depth)];
    (0..4).fold(plan, |plan, i| {
        let ((ax, ay), (bx, by)) = (corner[i], corner[(i + 1) % 4]);
        let wall = ShellWall {
            a: Pt::inches(ax, ay),
            b: Pt::inches(bx, by),
            thickness: Len::inches(8),
            height: Len::inches(96),
        };
        put(&plan, State::Existing, Body::Shell(wall))
    })
}

fn partition(plan: &mut Plan, a: (i32, i32), b: (i32, i32)) {
    let wall = Partition::two_by_four(Pt::inches(a.0, a.1), Pt::inches(b.0, b.1));
    *plan = put(plan, State::New, Body::Partition(wall));
}

/// About `n` elements: eleven in each cell.
fn basement(n: i32) -> Arc<Facts> {
    let cells = (n / 11).max(1);
    let columns = (1..).find(|c| c * c >= cells).unwrap_or(1);
    let rows = (cells + columns - 1) / columns;
    let mut plan = shell(Plan::default(), columns * CELL, rows * CELL);
    for i in 0..cells {
        cell(&mut plan, (i % columns) * CELL, (i / columns) * CELL, i);
    }
    Arc::new(space::derive(&Arc::new(plan)))
}

fn cell(plan: &mut Plan, x: i32, y: i32, i: i32) {
    partition(plan, (x + CELL, y), (x + CELL, y + CELL));
    let host = plan.next_ids(1).next().expect("an id");
    partition(plan, (x, y + CELL), (x + CELL, y + CELL));
    let door = Door {
        operation: DoorOperation::Hinged,
        leaf_width: Len::inches(30),
        leaf_height: Len::inches(80),
        hinge: End::Start,
        swing: Side::Right,
    };
    let kind = OpeningKind::Door(door);
    let at = Len::inches(40);
    *plan = put(plan, State::New, Body::Opening(Opening { host, at, kind }));
    let uses = [RoomUse::Office, RoomUse::Bedroom, RoomUse::Mechanical, RoomUse::FamilyRoom];
    let tag = RoomTag {
        at: Pt::inches(x + 60, y + 60),
        name: format!("Room {i}"),
        room_use: uses[i as usize % uses.len()],
    };
    *plan = put(plan, State::New, Body::RoomTag(tag));
    let kinds =
        [ServiceKind::Panel, ServiceKind::Furnace, ServiceKind::Damper, ServiceKind::Cleanout];
    for (k, kind) in kinds.into_iter().enumerate() {
        let at = Pt::inches(x + 20 + 30 * k as i32, y + 4);
        let point = ServicePoint::usual(kind, at, Facing::NORTH);
        *plan = put(plan, State::Existing, Body::Service(point));
    }
    for dx in [20, 80] {
        let desk = Furnishing {
            name: "desk".into(),
            at: Pt::inches(x + dx, y + 80),
            facing: Facing::NORTH,
            width: Len::inches(48),
            depth: Len::inches(24),
            height: Len::inches(30),
            fixed: false,
        };
        *plan = put(plan, State::New, Body::Furnishing(desk));
    }
    let (a, b) = (Pt::inches(x + 4, y + 50), Pt::inches(x + CELL - 4, y + 50));
    let shape = OverheadShape::Run { a, b, width: Len::inches(12) };
    let duct = Overhead { kind: OverheadKind::Duct, shape, underside: Len::inches(84) };
    *plan = put(plan, State::Existing, Body::Overhead(duct));
}

#[divan::bench(args = [50, 300, 2_000])]
fn check(bencher: Bencher, n: i32) {
    let facts = basement(n);
    let book = Book::model(Edition::E2021);
    bencher.bench_local(|| rules::check(&facts, &book));
}

#[divan::bench(args = [50, 300, 2_000])]
fn keep_clears(bencher: Bencher, n: i32) {
    let facts = basement(n);
    let book = Book::model(Edition::E2021);
    bencher.bench_local(|| rules::keep_clears(&facts, &book));
}

#[divan::bench(args = [50, 300, 2_000])]
fn check_with_keep_clears(bencher: Bencher, n: i32) {
    let facts = basement(n);
    let book = Book::model(Edition::E2021);
    bencher.bench_local(|| rules::check_with_keep_clears(&facts, &book));
}

/// Each rule alone at 300 elements, to find the slow one; those that share a measure take it each.
#[divan::bench(args = rules::RULES.iter().map(|r| r.slug))]
fn rule_at_300(bencher: Bencher, slug: &str) {
    let facts = basement(300);
    let book = Book::model(Edition::E2021);
    let rule = rules::rule(slug).expect("a rule");
    bencher.bench_local(|| {
        let sheet = rules::Sheet::new(&facts, &book);
        let mut out = Vec::new();
        (rule.check)(&sheet, &mut out);
        out
    });
}
