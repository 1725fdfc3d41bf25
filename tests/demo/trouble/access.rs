//! Valves, dampers, boxes, appliances and drains that can't be reached.

use geometry::Facing;
use plan::element::*;

use super::super::build::{Build, inches};
use super::service;

pub fn add(b: &mut Build) {
    // Between the joists, above the board ceilings of the bedrooms.
    let buried = [
        (ServiceKind::JunctionBox, 80),
        (ServiceKind::Damper, 188),
        (ServiceKind::FixtureValve, 296),
        (ServiceKind::HoseBibValve, 404),
        (ServiceKind::GasValve, 512),
    ];
    for (kind, x) in buried {
        service(b, kind, (x, 440), Facing::SOUTH, |point| {
            point.mount = Mount::Ceiling;
            point.bottom = inches(94);
        });
    }
    // A furnace in a room with a narrow door, a wall close before it, its filter against the wall.
    let front = b.partition((600, 100), (700, 100));
    b.partition((600, 0), (600, 100));
    b.partition((700, 0), (700, 100));
    b.door(front, 30, 24, End::Start, Side::Left);
    b.tag((690, 20), "Mechanical", RoomUse::Mechanical);
    b.service(ServiceKind::Furnace, (640, 6), Facing::NORTH);
    b.partition((600, 56), (672, 56));
    b.service(ServiceKind::AirFilter, (675, 40), Facing::EAST);
    b.service(ServiceKind::GasValve, (620, 100), Facing::SOUTH);
    // A gas meter beside a water heater, a valve far from it.
    b.service(ServiceKind::WaterHeater, (740, 6), Facing::NORTH);
    b.service(ServiceKind::GasMeter, (770, 0), Facing::NORTH);
    b.service(ServiceKind::GasValve, (960, 60), Facing::WEST);
    // Behind a shelf, in a wall, under a box.
    b.service(ServiceKind::WaterMeter, (820, 0), Facing::NORTH);
    b.furnishing("shelf", (820, 40), Facing::SOUTH, (36, 12, 72));
    b.service(ServiceKind::Cleanout, (870, 0), Facing::NORTH);
    b.partition((850, 14), (890, 14));
    b.partition((900, 120), (960, 120));
    b.service(ServiceKind::Cleanout, (930, 118), Facing::NORTH);
    b.service(ServiceKind::RadonPipe, (945, 118), Facing::NORTH);
    service(b, ServiceKind::AirFilter, (912, 118), Facing::NORTH, |p| p.depth = inches(4));
    b.service(ServiceKind::FloorDrain, (850, 180), Facing::SOUTH);
    let rack = b.furnishing("storage rack", (850, 186), Facing::SOUTH, (48, 18, 72));
    b.service(ServiceKind::Sump, (920, 190), Facing::SOUTH);
    let freezer = b.furnishing("cabinet", (920, 194), Facing::SOUTH, (44, 28, 34));
    for id in [rack, freezer] {
        b.change(id, |body| {
            if let plan::Body::Furnishing(f) = body {
                f.fixed = true;
            }
        });
    }
}
