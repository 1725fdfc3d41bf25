//! The large plan: the lower level of a long house, with angled walls, an island and a few hundred elements.

use geometry::Facing;
use plan::element::*;
use plan::{Plan, State};

use super::build::{Build, escape_window, high_window, site};

/// Width of a bay and depth of the rooms on either side of the hall.
const BAY: i32 = 132;
const DEEP: i32 = 168;
const BAYS: i32 = 9;
const NORTH: i32 = 600;

pub fn plan() -> Plan {
    let mut b = Build::new(site("Lower level at 2 Quarrystone Lane"));
    let long = BAY * BAYS;
    let corners = [
        (0, 0),
        (long, 0),
        (long + 240, 240),
        (long + 240, 420),
        (long + 60, NORTH),
        (0, NORTH),
        (-120, 300),
    ];
    let walls = b.shell(&corners, 10);
    for bay in 0..BAYS {
        room(&mut b, bay, true);
        room(&mut b, bay, false);
        b.window(State::New, walls[4], long + 60 - BAY * bay - 84, escape_window());
        b.window(State::Existing, walls[0], BAY * bay + 50, high_window());
        b.run(OverheadKind::Duct, (BAY * bay + 20, 300), (BAY * bay + 20, 560), 10, 82);
        b.column((BAY * bay + 66, 300));
    }
    angled_end(&mut b, long);
    island(&mut b);
    b.stair((40, 210), Facing::NORTH);
    b.stair((long - 100, 190), Facing::NORTH);
    b.run(OverheadKind::Beam, (-60, 330), (long + 240, 330), 8, 84);
    b.tag((300, 250), "Long hall", RoomUse::Unfinished);
    b.note((300, 400), "The middle stays open: both beams bear on the columns.");
    b.done()
}

/// One room of a bay, north or south of the middle, with what stands in it.
fn room(b: &mut Build, bay: i32, north: bool) {
    let (x, front) = (BAY * bay, if north { NORTH - DEEP } else { DEEP });
    let (outer, into) = if north { (NORTH, 1) } else { (0, -1) };
    let wall = b.partition((x, front), (x + BAY, front));
    b.partition((x + BAY, front), (x + BAY, outer));
    if bay == 0 {
        b.partition((0, front), (0, outer));
    }
    let side = if north { Side::Left } else { Side::Right };
    b.door(wall, 84, 32, End::Finish, side);
    let name = format!("{}{}", if north { "N" } else { "S" }, bay + 1);
    let room_use = match (north, bay % 3) {
        (true, 0) => RoomUse::Bedroom,
        (true, 1) => RoomUse::Gym,
        (true, _) => RoomUse::Workshop,
        (false, _) => RoomUse::Storage,
    };
    b.tag((x + 60, front + into * 70), &name, room_use);
    b.furnishing("shelf", (x + 4, front + into * 110), Facing::EAST, (40, 16, 72));
    b.service(ServiceKind::JunctionBox, (x + 100, 300 + into * 40), Facing::SOUTH);
    if !north {
        b.service(ServiceKind::Cleanout, (x + 110, 0), Facing::NORTH);
        b.service(ServiceKind::FloorDrain, (x + 60, 90), Facing::NORTH);
        b.service(ServiceKind::FixtureValve, (x + 30, 60), Facing::NORTH);
    }
}

/// The end where the house turns: walls at an angle, and the heating.
fn angled_end(b: &mut Build, long: i32) {
    let stores = b.partition((long, DEEP), (long + 120, 288));
    b.door(stores, 60, 32, End::Start, Side::Right);
    b.partition((long + 120, 288), (long + 240, 288));
    b.partition((long + 120, 288), (long + 150, 384));
    b.partition((long + 150, 384), (long + 240, 384));
    let plant = b.partition((long, NORTH - DEEP), (long + 90, 384));
    b.door(plant, 30, 36, End::Start, Side::Right);
    b.partition((long + 90, 384), (long + 150, 384));
    b.service(ServiceKind::Furnace, (long + 60, 440), Facing::SOUTH);
    b.service(ServiceKind::WaterHeater, (long + 20, 500), Facing::SOUTH);
    b.service(ServiceKind::Panel, (long + 240, 260), Facing::WEST);
    b.service(ServiceKind::Sump, (long + 190, 250), Facing::WEST);
    b.tag((long + 200, 340), "Plant room", RoomUse::Storage);
}

/// A closet that stands free in the middle of the hall.
fn island(b: &mut Build) {
    let corners = [(520, 270), (600, 270), (600, 350), (520, 350)];
    for i in 0..4 {
        let wall = b.partition(corners[i], corners[(i + 1) % 4]);
        if i == 0 {
            b.door(wall, 20, 30, End::Start, Side::Left);
        }
    }
    b.tag((560, 300), "Linen", RoomUse::Closet);
}
