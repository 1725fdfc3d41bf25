//! The rooms south of the hall: stores, each with its drain, valve and cleanout.

use geometry::Facing;
use plan::State;
use plan::element::*;

use super::super::build::{Build, high_window};
use super::{Bay, SOUTH_FRONT};

const ROOMS: [&str; 9] = [
    "Archive",
    "Tools",
    "Bicycles",
    "Seeds",
    "Preserves",
    "Paint",
    "Camping",
    "Garden",
    "Winter tyres",
];

pub fn room(b: &mut Build, bay: &Bay) {
    let (x, outer) = (bay.x, bay.outer);
    let front = bay.walls(b, SOUTH_FRONT);
    b.window(State::Existing, bay.wall, bay.along(x + 50), high_window());
    b.door(front, 84, 32, End::Finish, Side::Right);
    b.tag((x + 62, 130), ROOMS[bay.number as usize], RoomUse::Storage);
    b.furnishing("shelf", (x + 3, 120), Facing::EAST, (60, 16, 72));
    b.furnishing("shelf", (x + 129, outer + 62), Facing::WEST, (48, 16, 72));
    b.furnishing("crate", (x + 26, outer + 2), Facing::NORTH, (30, 24, 24));
    b.service(ServiceKind::Cleanout, (x + 110, outer), Facing::NORTH);
    b.service(ServiceKind::FloorDrain, (x + 66, outer + 60), Facing::NORTH);
    b.service(ServiceKind::FixtureValve, (x + 40, outer + 50), Facing::NORTH);
}
