//! The rooms north of the hall: bedrooms, and rooms to live and work in.

use geometry::Facing;
use plan::State;
use plan::element::*;

use super::super::build::{Build, escape_window, high_window};
use super::{BAY, Bay, NORTH_FRONT};

const ROOMS: [(&str, RoomUse); 9] = [
    ("Bedroom 1", RoomUse::Bedroom),
    ("Bedroom 2", RoomUse::Bedroom),
    ("Bath", RoomUse::Bath),
    ("Workshop", RoomUse::Workshop),
    ("Games room", RoomUse::FamilyRoom),
    ("Laundry", RoomUse::Laundry),
    ("Bedroom 3", RoomUse::Bedroom),
    ("Study", RoomUse::Office),
    ("Bedroom 4", RoomUse::Bedroom),
];

pub fn room(b: &mut Build, bay: &Bay) {
    let (name, room_use) = ROOMS[bay.number as usize];
    let x = bay.x;
    let front = bay.walls(b, NORTH_FRONT);
    b.furring(bay.wall, bay.along(x + BAY), bay.along(x));
    let window = bay.along(x + 90);
    match room_use {
        RoomUse::Bath | RoomUse::Laundry | RoomUse::Workshop => {
            b.window(State::Existing, bay.wall, window, high_window())
        }
        _ => b.window(State::New, bay.wall, window, escape_window()),
    };
    match room_use {
        RoomUse::FamilyRoom => b.leaf(front, 60, 60, DoorOperation::Cased, End::Start, Side::Left),
        _ => b.door(front, 84, 32, End::Finish, Side::Left),
    };
    b.tag((x + 62, 490), name, room_use);
    match room_use {
        RoomUse::Bedroom => bedroom(b, x),
        RoomUse::Bath => bath(b, x),
        RoomUse::Workshop => workshop(b, x),
        RoomUse::FamilyRoom => games_room(b, x),
        RoomUse::Laundry => laundry(b, x),
        _ => study(b, x),
    }
}

fn bedroom(b: &mut Build, x: i32) {
    b.partition((x + 72, NORTH_FRONT), (x + 72, 464));
    let closet = b.partition((x, 464), (x + 72, 464));
    b.leaf(closet, 12, 48, DoorOperation::Bifold, End::Start, Side::Left);
    b.tag((x + 37, 448), "Closet", RoomUse::Closet);
    b.furnishing("bed", (x + 3, 545), Facing::EAST, (60, 80, 24));
    b.furnishing("night stand", (x + 3, 584), Facing::EAST, (16, 16, 24));
    b.furnishing("desk", (x + 129, 535), Facing::WEST, (48, 24, 30));
    b.furnishing("chest", (x + 129, 486), Facing::WEST, (30, 18, 40));
}

fn bath(b: &mut Build, x: i32) {
    b.furnishing("tub", (x + 3, 560), Facing::EAST, (60, 32, 20));
    b.furnishing("toilet", (x + 129, 560), Facing::WEST, (20, 28, 30));
    b.furnishing("vanity", (x + 129, 510), Facing::WEST, (48, 22, 34));
    b.furnishing("linen shelf", (x + 3, 450), Facing::EAST, (28, 16, 72));
}

fn workshop(b: &mut Build, x: i32) {
    b.furnishing("workbench", (x + 3, 600), Facing::EAST, (96, 28, 36));
    b.furnishing("lathe", (x + 129, 610), Facing::WEST, (60, 24, 48));
    b.furnishing("tool rack", (x + 129, 530), Facing::WEST, (60, 14, 72));
    b.furnishing("timber rack", (x + 3, 465), Facing::EAST, (50, 18, 72));
}

fn games_room(b: &mut Build, x: i32) {
    b.furnishing("table", (x + 66, 555), Facing::NORTH, (54, 66, 30));
    b.furnishing("settee", (x + 3, 588), Facing::EAST, (72, 30, 32));
    b.furnishing("cupboard", (x + 129, 560), Facing::WEST, (60, 18, 72));
    b.furnishing("bench", (x + 66, 664), Facing::SOUTH, (80, 16, 18));
}

fn laundry(b: &mut Build, x: i32) {
    b.furnishing("washer", (x + 3, 640), Facing::EAST, (28, 30, 38));
    b.furnishing("dryer", (x + 3, 608), Facing::EAST, (28, 30, 38));
    b.furnishing("tub sink", (x + 3, 574), Facing::EAST, (26, 24, 34));
    b.furnishing("folding table", (x + 129, 590), Facing::WEST, (72, 28, 36));
    b.service(ServiceKind::FloorDrain, (x + 70, 560), Facing::SOUTH);
}

fn study(b: &mut Build, x: i32) {
    b.furnishing("desk", (x + 3, 545), Facing::EAST, (60, 30, 30));
    b.furnishing("chair", (x + 38, 545), Facing::EAST, (20, 20, 34));
    b.furnishing("bookshelf", (x + 129, 540), Facing::WEST, (84, 12, 78));
    b.furnishing("cabinet", (x + 3, 460), Facing::EAST, (40, 18, 42));
}
