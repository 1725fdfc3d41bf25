//! A hall, a den, a bath and a laundry whose outlets, lights and alarms were forgotten or put wrong.

use geometry::Facing;
use plan::element::*;
use plan::{Body, Plan, State};

use super::super::build::{Build, escape_window, inches, site};

pub fn plan() -> Plan {
    let title = "Basement at 22 Quarrystone Lane: outlets";
    let mut b = Build::new(site(title));
    let walls = b.shell(&[(0, 0), (480, 0), (480, 300), (0, 300)], 8);
    build(&mut b, &walls);
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
    // A panel in the dark, and a water heater in the bath.
    b.service(ServiceKind::Panel, (0, 30), Facing::EAST);
    b.service(ServiceKind::WaterHeater, (60, 300), Facing::SOUTH);
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

/// Furring of bare foam and of wood on concrete, low glass, a store under the stair.
fn build(b: &mut Build, walls: &[plan::ElementId]) {
    let furring = |host, layers: &[(Material, i32)]| {
        let layers = layers.iter().map(|(m, t)| Layer::new(*m, inches(*t))).collect();
        let (from, to, spacing) = (inches(0), inches(140), inches(16));
        Body::Furring(Furring { host, from, to, layers, spacing })
    };
    b.add(State::New, furring(walls[1], &[(Material::Stud, 2), (Material::Foam, 2)]));
    // A glazed bath, and a door to the garden with a low window beside it.
    let low = Window { sill: inches(8), grade: inches(6), well: None, ..escape_window() };
    b.window(State::New, walls[2], 400, low.clone());
    b.window(State::New, walls[0], 330, low);
    b.door(walls[0], 290, 34, End::Start, Side::Left);
    let store = b.partition((110, 152), (110, 96));
    b.partition((110, 96), (200, 96));
    b.partition((110, 152), (200, 152));
    b.door(store, 10, 24, End::Start, Side::Right);
    b.tag((150, 140), "Store", RoomUse::Storage);
    // A bath too full: a toilet beside a basin, and a shower that is a cupboard.
    b.furnishing("toilet", (150, 300), Facing::SOUTH, (20, 28, 30));
    b.furnishing("wash basin", (174, 300), Facing::SOUTH, (24, 20, 33));
    b.furnishing("shower", (226, 300), Facing::SOUTH, (26, 30, 80));
    b.furnishing("linen shelf", (160, 256), Facing::SOUTH, (30, 10, 60));
}
