//! A hall, a den, a bath and a laundry whose outlets, lights and alarms were forgotten or put wrong.

use geometry::Facing;
use plan::Plan;
use plan::element::*;

use super::super::build::{Build, site};

pub fn plan() -> Plan {
    let title = "Basement at 22 Quarrystone Lane: outlets";
    let mut b = Build::new(site(title));
    b.shell(&[(0, 0), (480, 0), (480, 300), (0, 300)], 8);
    b.stair((40, 120), Facing::EAST);
    let north = b.partition((0, 200), (480, 200));
    let south = b.partition((480, 152), (200, 152));
    b.partition((200, 152), (200, 0));
    let between = b.partition((340, 152), (340, 0));
    b.partition((240, 200), (240, 300));
    let end = b.partition((200, 200), (200, 152));
    b.leaf(end, 6, 36, DoorOperation::Cased, End::Start, Side::Left);
    // A bath and a den north of the hall, a laundry and an office south of it.
    b.door(north, 60, 30, End::Start, Side::Left);
    b.door(north, 300, 32, End::Start, Side::Left);
    b.door(south, 40, 32, End::Start, Side::Left);
    b.door(between, 40, 30, End::Start, Side::Left);
    b.tag((120, 250), "Bath", RoomUse::Bath);
    b.tag((360, 250), "Den", RoomUse::Den);
    b.tag((340, 176), "Hall", RoomUse::Hall);
    b.tag((100, 60), "Unfinished", RoomUse::Unfinished);
    b.tag((270, 60), "Laundry", RoomUse::Laundry);
    b.tag((410, 60), "Office", RoomUse::Office);
    // A closed room for the panel and the water heater, where nobody thought of a light.
    b.service(ServiceKind::Panel, (0, 30), Facing::EAST);
    b.service(ServiceKind::WaterHeater, (60, 0), Facing::NORTH);
    // In the corner of the office, far from every receptacle.
    b.service(ServiceKind::Furnace, (478, 16), Facing::WEST);
    use ServiceKind::*;
    // One receptacle for the whole den, none in the laundry.
    b.device(Receptacle, (1040, 1200), Facing::SOUTH);
    b.device(Receptacle, (300, 0), Facing::NORTH);
    // The office is lit without a switch, the bath not at all.
    b.device(Light, (1440, 1000), Facing::SOUTH);
    b.device(Switch, (1360, 809), Facing::NORTH);
    b.device(Light, (1640, 300), Facing::SOUTH);
    // In the steam of the bath.
    b.device(SmokeAlarm, (300, 740), Facing::SOUTH);
    b.done()
}
