//! The large plan: the lower level of a long house, with re-entrant corners, walls at an angle, two islands and
//! some three hundred elements.

mod east;
mod hall;
mod north;
mod south;

use plan::detail::{Value, opening, room, site as of_site, stair, wall};
use plan::element::End;
use plan::{ElementId, Plan, Site};

use super::build::{Build, papers, site};

/// Width of a bay; there are nine from west to east, with a room on either side of the hall.
const BAY: i32 = 132;
const BAYS: i32 = 9;
const LONG: i32 = BAY * BAYS;
/// The fronts of the rooms on either side of the hall, by the middle of their walls.
const SOUTH_FRONT: i32 = 168;
const NORTH_FRONT: i32 = 432;

/// The corners of the foundation: three rooms stand out on the north side and three stand back on the south side.
const CORNERS: [(i32, i32); 13] = [
    (0, 0),
    (BAY * 6, 0),
    (BAY * 6, 36),
    (LONG, 36),
    (LONG + 240, 240),
    (LONG + 240, 420),
    (LONG + 60, 600),
    (BAY * 6, 600),
    (BAY * 6, 672),
    (BAY * 3, 672),
    (BAY * 3, 600),
    (0, 600),
    (-120, 300),
];

pub fn plan() -> Plan {
    let mut b = Build::new(Site {
        papers: papers("2 Quarrystone Lane"),
        ..site("Lower level at 2 Quarrystone Lane")
    });
    let walls = b.shell(&CORNERS, 10);
    for bay in 0..BAYS {
        north::room(&mut b, &outer_wall(&walls, bay, true));
        south::room(&mut b, &outer_wall(&walls, bay, false));
    }
    east::add(&mut b);
    hall::add(&mut b);
    b.state_all(&wall::TREATED_PLATE, Value::Word("treated wood"));
    b.state_all(&wall::FIREBLOCKED, Value::Yes);
    b.state_all(&wall::VAPOUR_RETARDER, Value::Word("class III (paint)"));
    b.state_all(&room::HEATED, Value::Yes);
    b.state_all(&opening::WELL_DRAIN, Value::Yes);
    b.state_all(&wall::FOAM_R, Value::Number(10));
    b.state_all(&wall::CAVITY_R, Value::Number(0));
    b.state_site(&of_site::CLIMATE_ZONE, Value::Word("4"));
    b.state_site(&of_site::PENETRATIONS, Value::Yes);
    b.state_site(&of_site::RADON, Value::Number(9));
    b.state_all(&stair::HANDRAIL, Value::Word("both sides"));
    b.done()
}

/// One bay on one side of the hall, and the foundation wall that closes it.
struct Bay {
    number: i32,
    /// Its west side, by the middle of the wall there.
    x: i32,
    /// The inner face of its foundation wall.
    outer: i32,
    wall: ElementId,
    /// Where that wall begins.
    begins: i32,
}

impl Bay {
    /// From the beginning of the foundation wall to a place in the room.
    fn along(&self, x: i32) -> i32 {
        (self.begins - x).abs()
    }

    /// The walls to the hall and to the next bay; the first bay also gets its west wall.
    fn walls(&self, b: &mut Build, front: i32) -> ElementId {
        let wall = b.partition((self.x, front), (self.x + BAY, front));
        // Where the foundation jogs, the wall between two bays ends at the nearer corner.
        let deep = |bay: i32| reach(bay, front == NORTH_FRONT);
        let near = |a: i32, b: i32| if front == NORTH_FRONT { a.min(b) } else { a.max(b) };
        let end = near(deep(self.number), deep(self.number + 1));
        b.partition((self.x + BAY, front), (self.x + BAY, end));
        if self.number == 0 {
            b.partition((self.x, front), (self.x, self.outer));
        }
        wall
    }
}

/// How far north or south a bay reaches.
fn reach(bay: i32, north: bool) -> i32 {
    match (north, bay) {
        (true, 3..=5) => 672,
        (true, _) => 600,
        (false, 0..=5) => 0,
        (false, _) => 36,
    }
}

fn outer_wall(walls: &[ElementId], number: i32, north: bool) -> Bay {
    let corner = match (north, number) {
        (false, 0..=5) => 0,
        (false, _) => 2,
        (true, 0..=2) => 10,
        (true, 3..=5) => 8,
        (true, _) => 6,
    };
    let (begins, outer) = CORNERS[corner];
    Bay { number, x: BAY * number, outer, wall: walls[corner], begins }
}

/// Four partitions that stand free and close a small room, with a door in the first.
fn island(b: &mut Build, corners: [(i32, i32); 4], door: (i32, i32)) {
    for i in 0..4 {
        let wall = b.partition(corners[i], corners[(i + 1) % 4]);
        if i == 0 {
            b.door(wall, door.0, door.1, End::Start, plan::element::Side::Right);
        }
    }
}
