//! The large plan: angles, islands, over 150 elements.

use geometry::Facing;
use plan::Plan;
use plan::element::*;

use super::build::{Build, site};

pub fn plan() -> Plan {
    let mut b = Build::new(site("Lower level at 2 Quarrystone Lane"));
    b.shell(&[(0, 0), (960, 0), (1200, 240), (1200, 720), (0, 720)], 10);
    for row in 0..2 {
        for column in 0..8 {
            let (x, y) = (column * 120, if row == 0 { 0 } else { 540 });
            let front = if row == 0 { y + 180 } else { y };
            let wall = b.partition((x, front), (x + 120, front));
            b.door(wall, 40, 32, End::Start, if row == 0 { Side::Right } else { Side::Left });
            b.partition((x + 120, y), (x + 120, y + 180));
            b.tag((x + 60, y + 90), &format!("Room {}", row * 8 + column + 1), RoomUse::Storage);
            b.furnishing("shelf", (x + 20, y + 90), Facing::EAST, (48, 16, 72));
            b.service(ServiceKind::JunctionBox, (x + 60, y + 60), Facing::SOUTH);
        }
    }
    b.done()
}
