//! A new house in which all is drawn and much is stated wrong.

use geometry::Facing;
use measure::Len;
use plan::detail::{
    Detail, Value, electrical, heat, opening, overhead, plumbing, room, site as of_site, stair,
    wall,
};
use plan::element::*;
use plan::{CeilingBuild, Edition, ElementId, House, Plan, State};

use super::super::build::{Build, escape_window, inches, site};

type Stated = [(&'static Detail, Value)];

pub fn plan() -> Plan {
    let mut facts = site("Basement at 31 Quarrystone Lane: stated wrong");
    (facts.house, facts.edition) = (House::New, Edition::E2024);
    facts.ceiling = CeilingBuild::LayIn(inches(4));
    let mut b = Build::new(facts);
    b.state_site(&of_site::CLIMATE_ZONE, Value::Word("5"));
    b.state_site(&plumbing::STATIC_PRESSURE, Value::Number(120));
    b.state_site(&of_site::FLOOR_ABOVE, Value::Word("I-joists"));
    let walls = b.shell(&[(0, 0), (480, 0), (480, 300), (0, 300)], 8);
    unfinished(&mut b, &walls);
    finished(&mut b, &walls);
    b.done()
}

fn state(b: &mut Build, id: ElementId, stated: &Stated) {
    for (detail, value) in stated {
        b.state(id, detail, *value);
    }
}

/// The west: stair, furnace, pits and valves.
fn unfinished(b: &mut Build, walls: &[ElementId]) {
    use ServiceKind::*;
    b.tag((150, 250), "Unfinished", RoomUse::Unfinished);
    let stair = b.stair((60, 130), Facing::EAST);
    state(
        b,
        stair,
        &[
            (&electrical::STAIR_SWITCHES, Value::Word("at one level")),
            (&stair::HEAD_LANDING, Value::Length(Len::inches(20))),
            (&stair::BETWEEN_RAILS, Value::Length(Len::inches(24))),
            (&stair::RAIL_HEIGHT, Value::Length(Len::inches(39))),
            (&stair::RAIL_PROJECTION, Value::Length(Len::inches(5))),
            (&stair::RAIL_GAP, Value::Length(Len::inches(1))),
            (&stair::RAIL_GRIP, Value::Word("flat board or larger")),
            (&stair::RAIL_WHOLE, Value::No),
            (&stair::NOSING, Value::Length(Len::sixty_fourths(144))),
            (&stair::OPEN_RISER, Value::Length(Len::sixty_fourths(288))),
            (&stair::RISER_DIFFERENCE, Value::Length(Len::sixty_fourths(56))),
            (&stair::TREAD_DIFFERENCE, Value::Length(Len::sixty_fourths(56))),
            (&stair::GUARD_OPENING, Value::Length(Len::sixty_fourths(312))),
            (&stair::STRINGERS_BLOCKED, Value::No),
        ],
    );
    let panel = b.service(Panel, (0, 220), Facing::EAST);
    state(b, panel, &[(&electrical::DIRECTORY, Value::No), (&electrical::PANEL_FLOOR, Value::No)]);
    let furnace = b.service(Furnace, (220, 0), Facing::NORTH);
    state(
        b,
        furnace,
        &[
            (&heat::FUEL, Value::Word("natural gas")),
            (&heat::VENT, Value::Word("draft hood")),
            (&heat::INPUT, Value::Number(200_000)),
            (&electrical::DISCONNECT, Value::Word("breaker out of sight")),
        ],
    );
    let window = Window {
        well: Some(Well {
            width: inches(48),
            projection: inches(48),
            depth: inches(60),
            ladder: true,
            ladder_projection: inches(4),
        }),
        ..escape_window()
    };
    let low = Window { sill: inches(20), grade: inches(16), well: None, ..escape_window() };
    b.window(State::New, walls[3], 150, low);
    let window = b.window(State::New, walls[2], 300, window);
    state(
        b,
        window,
        &[
            (&opening::RUNGS_APART, Value::Length(Len::sixty_fourths(1184))),
            (&opening::LADDER_WIDTH, Value::Length(Len::sixty_fourths(736))),
            (&opening::RUNGS_OFF_WALL, Value::Length(Len::sixty_fourths(160))),
            (&opening::LADDER_FREE, Value::No),
            (&opening::WELL_DRAIN, Value::No),
            (&opening::WELL_GUARD, Value::Word("people walk there, nothing")),
        ],
    );
}

/// The east: a den with a kitchen corner, a bath, a laundry and a closet.
fn finished(b: &mut Build, walls: &[ElementId]) {
    use ServiceKind::*;
    let wall = b.partition((300, 0), (300, 300));
    let closet = b.partition((480, 220), (300, 220));
    b.partition((300, 80), (480, 80));
    let bath = b.partition((390, 0), (390, 80));
    let door = b.door(wall, 100, 32, End::Start, Side::Right);
    state(
        b,
        door,
        &[
            (&opening::DOOR_LOCK, Value::Word("key on both sides")),
            (&opening::GLASS_IN_DOOR, Value::Word("plain glass")),
            (&opening::EGRESS_DOOR, Value::Yes),
        ],
    );
    b.door(closet, 60, 32, End::Start, Side::Left);
    b.door(wall, 20, 32, End::Start, Side::Right);
    b.door(bath, 20, 30, End::Start, Side::Left);
    let furring = b.furring(walls[1], 84, 216);
    state(
        b,
        furring,
        &[
            (&wall::VAPOUR_RETARDER, Value::Word("class I (polyethylene)")),
            (&wall::FACING, Value::Word("bare kraft or foil")),
            (&wall::TREATED_PLATE, Value::Word("untreated wood")),
            (&wall::FIREBLOCKED, Value::No),
        ],
    );
    state(
        b,
        furring,
        &[
            (&wall::RIM, Value::Word("rigid foam, bare")),
            (&wall::FOAM_R, Value::Number(0)),
            (&wall::CAVITY_R, Value::Number(11)),
        ],
    );
    let soffit = b.run(OverheadKind::Soffit, (380, 84), (380, 216), 20, 86);
    state(b, soffit, &[(&overhead::SOFFIT_FIREBLOCKED, Value::No)]);
    let den = b.tag((420, 150), "Den", RoomUse::Den);
    state(b, den, &[(&room::HEATED, Value::No)]);
    b.tag((400, 260), "Closet", RoomUse::Closet);
    b.tag((345, 30), "Guest room", RoomUse::Bedroom);
    let bath = b.tag((430, 60), "Bath", RoomUse::Bath);
    // The switch lies behind the open door of the den.
    let switch = b.device(Switch, (1209, 396), Facing::EAST);
    state(b, switch, &[(&electrical::NEUTRAL, Value::No)]);
    let light = b.device(Light, (1560, 1180), Facing::SOUTH);
    state(b, light, &[(&electrical::RECESSED, Value::Word("recessed, in insulation"))]);
    let receptacle = b.device(Receptacle, (1209, 800), Facing::EAST);
    state(
        b,
        receptacle,
        &[
            (&electrical::SHOCK_PROTECTION, Value::No),
            (&electrical::ARC_PROTECTION, Value::No),
            (&electrical::TAMPER_RESISTANT, Value::No),
            (&electrical::PROTECTION_IN_REACH, Value::No),
        ],
    );
    b.furnishing("wardrobe", (440, 298), Facing::SOUTH, (48, 42, 72));
    b.furnishing("range", (420, 214), Facing::SOUTH, (30, 25, 36));
    let alarm = b.device(SmokeAlarm, (1640, 640), Facing::SOUTH);
    state(
        b,
        alarm,
        &[
            (&electrical::ALARM_SENSES, Value::Word("ions")),
            (&electrical::SOUNDS_TOGETHER, Value::No),
            (&electrical::ALARM_POWER, Value::Word("battery alone")),
        ],
    );
    // A washer and a basin whose only receptacles are at the far ends of their rooms.
    b.furnishing("washer", (316, 76), Facing::SOUTH, (27, 28, 38));
    b.device(Receptacle, (1551, 7), Facing::WEST);
    b.furnishing("wash basin", (404, 60), Facing::SOUTH, (20, 16, 33));
    b.device(Receptacle, (1919, 20), Facing::WEST);
    b.device(ExhaustFan, (1740, 200), Facing::SOUTH);
    // A water heater that takes its air through louvres from the next room.
    let heater = b.service(WaterHeater, (440, 0), Facing::NORTH);
    state(
        b,
        heater,
        &[
            (&heat::FUEL, Value::Word("natural gas")),
            (&heat::VENT, Value::Word("draft hood")),
            (&heat::INPUT, Value::Number(40_000)),
        ],
    );
    b.state(bath, &heat::AIR_FROM, Value::Word("two openings to next room"));
    b.state(bath, &heat::AIR_OPENING, Value::Number(60));
}
