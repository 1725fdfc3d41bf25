//! The end where the house turns: walls at an angle, the plant room and the electrical panel.

use geometry::Facing;
use plan::Body;
use plan::element::*;

use super::super::build::Build;
use super::{LONG, NORTH_FRONT, SOUTH_FRONT};

/// The way a thing on the north-east foundation wall faces.
const INTO_PLANT_ROOM: Facing = Facing { x: -1, y: -1 };

pub fn add(b: &mut Build) {
    let store = b.partition((LONG, SOUTH_FRONT), (LONG + 120, 288));
    b.door(store, 50, 36, End::Start, Side::Right);
    b.partition((LONG + 120, 288), (LONG + 240, 288));
    let cellar = b.partition((LONG + 120, 288), (LONG + 150, 384));
    b.door(cellar, 34, 32, End::Start, Side::Left);
    b.partition((LONG + 150, 384), (LONG + 240, 384));
    let plant = b.partition((LONG, NORTH_FRONT), (LONG + 90, 384));
    b.door(plant, 30, 36, End::Start, Side::Left);
    b.partition((LONG + 90, 384), (LONG + 150, 384));

    b.tag((LONG + 90, 170), "Switch room", RoomUse::Storage);
    b.service(ServiceKind::Panel, (LONG + 240, 262), Facing::WEST);
    b.service(ServiceKind::Sump, (LONG + 40, 130), Facing::EAST);
    b.service(ServiceKind::RadonPipe, (LONG + 14, 80), Facing::EAST);

    b.tag((LONG + 196, 330), "Root cellar", RoomUse::Storage);
    b.furnishing("rack", (LONG + 236, 336), Facing::WEST, (80, 18, 72));

    b.tag((LONG + 60, 560), "Plant room", RoomUse::Mechanical);
    let furnace = b.service(ServiceKind::Furnace, (LONG + 112, 490), Facing::WEST);
    let heater = b.service(ServiceKind::WaterHeater, (LONG + 160, 425), Facing::WEST);
    for (at, serves) in [((LONG + 130, 530), furnace), ((LONG + 190, 470), heater)] {
        let valve = b.service(ServiceKind::GasValve, at, INTO_PLANT_ROOM);
        b.change(valve, |body| {
            if let Body::Service(point) = body {
                point.serves = Some(serves);
            }
        });
    }
    b.service(ServiceKind::FloorDrain, (LONG + 30, 500), Facing::SOUTH);
    b.service(ServiceKind::MainWaterValve, (LONG + 2, 540), Facing::EAST);
}
