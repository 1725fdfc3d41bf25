//! The plan that passes: a bedroom with its closet and way out, and a hall to the mechanical side.

use geometry::Facing;
use plan::detail::{Value, electrical, heat, opening, room, site as of_site, stair, wall};
use plan::element::*;
use plan::{Plan, Site, State};

use super::build::{Build, escape_window, high_window, papers, site};

pub fn plan() -> Plan {
    let mut b = Build::new(Site {
        papers: papers("14 Quarrystone Lane"),
        ..site("Basement at 14 Quarrystone Lane: bedroom")
    });
    let [_south, _step, jog, east, north, west] = as_built(&mut b);
    let way_out = b.window(State::New, north, 328, escape_window());
    b.window(State::Existing, north, 40, high_window());
    b.window(State::Existing, jog, 60, high_window());
    let _ = east;

    b.furring(north, 264, 432);
    b.furring(west, 0, 156);
    let divider = b.partition((168, 336), (168, 180));
    let front = b.partition((0, 180), (168, 180));
    b.door(front, 84, 32, End::Start, Side::Left);
    let closet_side = b.partition((126, 180), (126, 210));
    let closet_front = b.partition((126, 210), (168, 210));
    b.leaf(closet_front, 7, 28, DoorOperation::Bifold, End::Start, Side::Left);
    let _ = (divider, closet_side);

    b.furnishing("bed", (60, 330), Facing::SOUTH, (60, 80, 24));
    b.furnishing("desk", (166, 270), Facing::WEST, (48, 24, 30));
    b.tag((84, 262), "Bedroom", RoomUse::Bedroom);
    b.tag((148, 196), "Closet", RoomUse::Closet);
    b.tag((250, 130), "Unfinished", RoomUse::Unfinished);
    devices(&mut b);
    stated(&mut b);
    b.state(way_out, &opening::HEADER, Value::Word("steel or concrete lintel"));
    b.note((250, 300), "Storage stays open: no walls before the heating is replaced.");
    b.section((92, 386), (92, -14));
    b.done()
}

/// What the drawing can't show, as it was found or is to be built.
fn stated(b: &mut Build) {
    let word = Value::Word;
    for (detail, value) in [
        (&electrical::SHOCK_PROTECTION, Value::Yes),
        (&electrical::ARC_PROTECTION, Value::Yes),
        (&electrical::SOUNDS_TOGETHER, Value::Yes),
        (&electrical::ALARM_POWER, word("house wiring with battery")),
        (&heat::FUEL, word("natural gas")),
        (&heat::VENT, word("draft hood")),
        (&heat::INPUT, Value::Number(50_000)),
        (&wall::FIREBLOCKED, Value::Yes),
        (&wall::VAPOUR_RETARDER, word("class III (paint)")),
        (&wall::FOAM_R, Value::Number(10)),
        (&wall::CAVITY_R, Value::Number(0)),
        (&wall::TREATED_PLATE, word("treated wood")),
        (&opening::WELL_DRAIN, Value::Yes),
        (&opening::HEADER, word("flat plate, bears nothing")),
        (&stair::HANDRAIL, word("one side")),
        (&room::HEATED, Value::Yes),
        (&room::LAMPS, Value::Yes),
        (&room::MECHANICAL_AIR, Value::Yes),
    ] {
        b.state_all(detail, value);
    }
    b.state_site(&of_site::CLIMATE_ZONE, word("4"));
    for (line, feet) in [
        (&of_site::LOT_LEFT, 9),
        (&of_site::LOT_RIGHT, 22),
        (&of_site::LOT_TOP, 31),
        (&of_site::LOT_BOTTOM, 26),
    ] {
        b.state_site(line, Value::Length(measure::Len::feet_inches(feet, 0)));
    }
    b.state_site(&of_site::ALARMS_ELSEWHERE, Value::Yes);
    b.state_site(&of_site::SERVICE_RATING, Value::Number(200));
    b.state_site(&of_site::PENETRATIONS, Value::Yes);
    b.state_site(&of_site::RADON, Value::Number(12));
    b.state_site(&of_site::DAMP, word("dry for a season"));
}

/// Receptacles round the bedroom, lights, switches and alarms; one receptacle for the unfinished floor.
fn devices(b: &mut Build) {
    use ServiceKind::*;
    let receptacles = [
        // On the divider, the north wall, twice the west wall, and both sides of the door.
        ((663, 960), Facing::WEST),
        ((480, 1320), Facing::SOUTH),
        ((24, 1240), Facing::EAST),
        ((24, 860), Facing::EAST),
        ((160, 729), Facing::NORTH),
        ((495, 784), Facing::WEST),
        ((600, 0), Facing::NORTH),
    ];
    for (at, facing) in receptacles {
        b.device(Receptacle, at, facing);
    }
    b.device(Light, (336, 1048), Facing::SOUTH);
    b.device(Switch, (480, 729), Facing::NORTH);
    b.device(SupplyRegister, (150, 1200), Facing::SOUTH);
    b.device(ReturnGrille, (663, 1200), Facing::WEST);
    b.device(SmokeAlarm, (336, 800), Facing::SOUTH);
    for (kind, at) in [(SmokeAlarm, (400, 600)), (CoAlarm, (480, 600)), (Light, (700, 400))] {
        b.device(kind, at, Facing::SOUTH);
    }
}

/// The shell and everything that is there before the work begins: the same in both small demo plans.
pub fn as_built(b: &mut Build) -> [plan::ElementId; 6] {
    let corners = [(0, 0), (288, 0), (288, 96), (432, 96), (432, 336), (0, 336)];
    let walls: [_; 6] = b.shell(&corners, 8).try_into().expect("six walls");
    b.stair((210, 60), Facing::NORTH);
    b.column((144, 120));
    b.column((288, 216));
    b.run(OverheadKind::Beam, (0, 168), (432, 168), 6, 84);
    b.run(OverheadKind::Duct, (250, 330), (250, 110), 14, 80);

    b.service(ServiceKind::Panel, (432, 290), Facing::WEST);
    let furnace = b.service(ServiceKind::Furnace, (400, 160), Facing::WEST);
    let heater = b.service(ServiceKind::WaterHeater, (420, 124), Facing::WEST);
    for (at, serves) in [((432, 180), furnace), ((432, 110), heater)] {
        let valve = b.service(ServiceKind::GasValve, at, Facing::WEST);
        b.change(valve, |body| {
            if let Body::Service(point) = body {
                point.serves = Some(serves);
            }
        });
    }
    b.service(ServiceKind::MainWaterValve, (0, 40), Facing::EAST);
    b.service(ServiceKind::Damper, (250, 290), Facing::SOUTH);
    b.service(ServiceKind::Damper, (250, 140), Facing::SOUTH);
    b.service(ServiceKind::Cleanout, (60, 0), Facing::NORTH);
    b.service(ServiceKind::FloorDrain, (350, 180), Facing::WEST);
    b.service(ServiceKind::Sump, (276, 20), Facing::WEST);
    b.service(ServiceKind::JunctionBox, (206, 250), Facing::SOUTH);
    b.service(ServiceKind::JunctionBox, (380, 250), Facing::SOUTH);
    b.service(ServiceKind::JunctionBox, (100, 60), Facing::SOUTH);
    walls
}
