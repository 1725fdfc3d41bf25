//! Large regular plans for benches.

use geometry::{Facing, Pt};
use measure::Len;

use crate::element::{
    Body, Column, ColumnShape, Overhead, OverheadKind, OverheadShape, RoomTag, RoomUse, ServiceKind,
};
use crate::{Plan, State};

use super::{add, desk, door, partition, service, shell, window};

/// A side of one room, middle of wall to middle of wall, in inches.
const SIDE: i32 = 144;

/// A plan of exactly `size` elements (at least 4): a shell and in it a square grid of 12 ft rooms, each
/// with two partitions, doors, a tag, a desk and service points.
pub fn basement(size: usize) -> Plan {
    let mut plan = Plan::default();
    let columns = (1..).find(|c| c * c * PER_ROOM >= size).unwrap_or(1) as i32;
    let width = columns * SIDE;
    let walls = shell(&mut plan, &[(0, 0), (width, 0), (width, width), (0, width)]);
    for column in 0..columns {
        let full = plan.elements().len() >= size;
        if !full {
            add(&mut plan, State::Existing, window(walls[0], column * SIDE + 50, 32));
        }
    }
    for room in 0..columns * columns {
        furnish(&mut plan, size, (room % columns, room / columns), columns);
    }
    plan
}

/// Elements of one room.
const PER_ROOM: usize = 10;

fn furnish(plan: &mut Plan, size: usize, (column, row): (i32, i32), columns: i32) {
    let (x, y) = (column * SIDE, row * SIDE);
    let full = |plan: &Plan| plan.elements().len() >= size;
    let put = |plan: &mut Plan, state, body| {
        if !full(plan) {
            add(plan, state, body);
        }
    };
    if column + 1 < columns && !full(plan) {
        let wall = partition(plan, (x + SIDE, y), (x + SIDE, y + SIDE));
        put(plan, State::New, door(wall, 20, 32));
    }
    if row + 1 < columns && !full(plan) {
        let wall = partition(plan, (x, y + SIDE), (x + SIDE, y + SIDE));
        put(plan, State::New, door(wall, 60, 30));
    }
    let room_use = RoomUse::ALL[(column + row * columns) as usize % RoomUse::ALL.len()];
    let tag = RoomTag { at: Pt::inches(x + 72, y + 60), name: String::new(), room_use };
    put(plan, State::New, Body::RoomTag(tag));
    put(plan, State::New, desk((x + 100, y + 10), Facing::NORTH));
    let kind = ServiceKind::ALL[(column * 7 + row * 5) as usize % ServiceKind::ALL.len()];
    put(plan, State::Existing, service(kind, (x + 40, y + 20), Facing::NORTH));
    put(plan, State::Existing, service(ServiceKind::JunctionBox, (x + 60, y + 90), Facing::SOUTH));
    let post = Column {
        at: Pt::inches(x + 20, y + 110),
        shape: ColumnShape::Round { diameter: Len::sixty_fourths(224) },
        facing: Facing::NORTH,
    };
    put(plan, State::Existing, Body::Column(post));
    let duct = Overhead {
        kind: OverheadKind::Duct,
        shape: OverheadShape::Run {
            a: Pt::inches(x + 10, y + 75),
            b: Pt::inches(x + 130, y + 75),
            width: Len::inches(14),
        },
        underside: Len::inches(83),
    };
    put(plan, State::Existing, Body::Overhead(duct));
    if column + 1 == columns && row + 1 == columns {
        let mut at = 0;
        while !full(plan) {
            let place = (x + 20 + at % 100, y + 30 + at / 100);
            add(plan, State::New, desk(place, Facing::NORTH));
            at += 1;
        }
    }
}
