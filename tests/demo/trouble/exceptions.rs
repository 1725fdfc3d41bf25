//! An existing house in which much rests on an exception, or just misses one.

use geometry::{Facing, Pt};
use measure::Len;
use plan::detail::{
    Detail, Value, electrical, heat, opening, plumbing, room, site as of_site, stair, wall,
};
use plan::element::*;
use plan::{Body, Edition, ElementId, Plan, State};

use super::super::build::{Build, escape_window, inches, sheet, site};

type Stated = [(&'static Detail, Value)];

const WIDE: i32 = 150;

pub fn plan() -> Plan {
    let mut facts = site("Basement at 37 Quarrystone Lane: exceptions");
    facts.edition = Edition::E2024;
    let mut b = Build::new(facts);
    let walls = b.shell(&[(0, 0), (600, 0), (600, 320), (0, 320)], 8);
    bedrooms(&mut b, &walls);
    house(&mut b);
    stairs(&mut b);
    services(&mut b, &walls);
    kitchen(&mut b);
    b.tag((300, 170), "Unfinished", RoomUse::Unfinished);
    b.done()
}

fn state(b: &mut Build, id: ElementId, stated: &Stated) {
    for (detail, value) in stated {
        b.state(id, detail, *value);
    }
}

/// What is stated of the house: an old service that is replaced, and a damp slab.
fn house(b: &mut Build) {
    for (detail, value) in [
        (&of_site::ALARMS_ELSEWHERE, Value::No),
        (&of_site::SERVICE_RATING, Value::Number(60)),
        (&of_site::SERVICE_REPLACED, Value::Yes),
        (&of_site::SURGE_DEVICE, Value::No),
        (&of_site::OUTDOOR_DISCONNECT, Value::No),
        (&of_site::SLAB_HUMIDITY, Value::Number(88)),
        (&of_site::SLAB_VAPOUR, Value::Number(55)),
        (&of_site::PLASTIC_TEST, Value::Word("wet on the concrete side")),
        (&of_site::AIR_HUMIDITY, Value::Number(75)),
    ] {
        b.state_site(detail, value);
    }
}

/// A spiral stair, one with winders, and a cellar stair that is too high for its bulkhead.
fn stairs(b: &mut Build) {
    let mut stair = |x, width| {
        let stair = Stair {
            foot: Pt::inches(x, 40),
            up: Facing::NORTH,
            width: inches(width),
            risers: 14,
            rise: Len::sixty_fourths(480),
            run: inches(10),
            headroom: inches(80),
        };
        b.add(State::New, Body::Stair(stair))
    };
    let (spiral, winders, cellar) = (stair(40, 24), stair(110, 36), stair(180, 36));
    let len = |n| Value::Length(inches(n));
    state(
        b,
        spiral,
        &[
            (&stair::STAIR_KIND, Value::Word("spiral")),
            (&stair::WALKLINE_RADIUS, len(30)),
            (&stair::TREAD_SLOPE, len(2)),
            (&stair::RISER_LEAN, Value::Number(40)),
            (&stair::LEADS_UP, Value::Word("a garage")),
            (&stair::TREAD_LIGHT, Value::Number(4)),
        ],
    );
    state(
        b,
        winders,
        &[
            (&stair::STAIR_KIND, Value::Word("with winders")),
            (&stair::WINDER_WALKLINE, len(8)),
            (&stair::WINDER_NARROW, len(3)),
            (&stair::GUARD_GLASS, Value::Word("plain glass")),
        ],
    );
    b.state(cellar, &stair::STAIR_KIND, Value::Word("under a bulkhead"));
}

/// A panel in a closet of its own, a bath, a pump, a furnace and a water heater.
fn services(b: &mut Build, walls: &[ElementId]) {
    use ServiceKind::*;
    b.partition((250, 0), (250, 50));
    b.partition((310, 0), (310, 50));
    b.partition((250, 50), (310, 50));
    b.service(Panel, (280, 0), Facing::NORTH);
    let bath = b.partition((460, 0), (460, 56));
    b.partition((460, 56), (600, 56));
    b.door(bath, 14, 30, End::Start, Side::Right);
    b.tag((560, 40), "Bath", RoomUse::Bath);
    let len = |n| Value::Length(Len::sixty_fourths(n));
    state(
        b,
        bath,
        &[
            (&wall::CABLE_DEPTH, len(48)),
            (&wall::PIPE_DEPTH, len(48)),
            (&wall::GAS_PIPE_DEPTH, len(64)),
            (&wall::DRYER_DUCT_DEPTH, len(32)),
            (&wall::TREATED_PLATE, Value::Word("treated wood")),
            (&wall::FASTENERS, Value::Word("plain or bright steel")),
            (&wall::FINISH_FLAME, Value::Number(300)),
            (&wall::FINISH_SMOKE, Value::Number(600)),
        ],
    );
    let receptacle = b.device(Receptacle, (2080, 0), Facing::NORTH);
    state(
        b,
        receptacle,
        &[
            (&electrical::CIRCUIT_AMPS, Value::Number(15)),
            (&electrical::CIRCUIT_SHARED, Value::Yes),
            (&electrical::BOX_SETBACK, Value::Length(Len::sixty_fourths(32))),
            (&electrical::OVER_HEATER, Value::Yes),
        ],
    );
    let pump = b.device(Sump, (1360, 100), Facing::NORTH);
    b.state(pump, &electrical::PUMP_PROTECTION, Value::No);
    let furnace = b.device(Furnace, (1720, 400), Facing::SOUTH);
    b.state(furnace, &electrical::OWN_CIRCUIT, Value::No);
    let heater = b.device(WaterHeater, (1500, 400), Facing::SOUTH);
    state(
        b,
        heater,
        &[
            (&heat::FUEL, Value::Word("electric")),
            (&electrical::HEATER_WATTS, Value::Number(4500)),
            (&electrical::HEATER_BREAKER, Value::Number(20)),
        ],
    );
    state(b, furnace, &[(&heat::CONDENSATE_CLEANED, Value::No)]);
    b.state(pump, &plumbing::SUMP_CHECK, Value::No);
    let dryer = b.device(ClothesDryer, (860, 360), Facing::SOUTH);
    state(
        b,
        dryer,
        &[(&heat::FUEL, Value::Word("electric")), (&electrical::DRYER_PROTECTION, Value::No)],
    );
    let main = b.service(MainWaterValve, (225, 0), Facing::NORTH);
    b.state(main, &plumbing::BOND_CLAMP, Value::No);
    let radon = b.service(RadonPipe, (230, 150), Facing::NORTH);
    state(
        b,
        radon,
        &[
            (&heat::RADON_ABOVE_ROOF, Value::Length(inches(6))),
            (&heat::RADON_ABOVE_GROUND, Value::Length(inches(60))),
            (&heat::RADON_FROM_OPENING, Value::Length(inches(48))),
        ],
    );
    let tub = b.furnishing("tub", (500, 54), Facing::SOUTH, (60, 30, 20));
    b.state(tub, &plumbing::SLIP_JOINTS, Value::Word("closed in"));
    let basin = b.furnishing("wash basin", (580, 2), Facing::NORTH, (20, 16, 33));
    b.state(basin, &plumbing::SUPPLY_STOP, Value::No);
    let washer = b.furnishing("washer", (380, 2), Facing::NORTH, (27, 28, 38));
    b.state(washer, &plumbing::HAMMER, Value::No);
    let furring = b.furring(walls[0], 0, 20);
    state(
        b,
        furring,
        &[
            (&wall::FIREBLOCKED, Value::Yes),
            (&wall::FIREBLOCK_OF, Value::Word("foam, or loose fibre")),
            (&wall::PIPE_IN_WALL, Value::Word("against the concrete")),
        ],
    );
    let outside = b.door(walls[1], 140, 36, End::Start, Side::Left);
    b.state(outside, &opening::OUTSIDE_STAIR_LIGHT, Value::Word("none"));
}

/// A basement kitchen whose fan is weak.
fn kitchen(b: &mut Build) {
    b.partition((340, 130), (340, 200));
    b.partition((340, 130), (440, 130));
    b.partition((440, 130), (440, 200));
    b.tag((365, 150), "Kitchen", RoomUse::Kitchen);
    // A closet beside it that is too shallow to hang clothes in.
    b.partition((464, 130), (464, 200));
    b.partition((440, 130), (464, 130));
    b.tag((452, 165), "Closet", RoomUse::Closet);
    let fan = b.device(ServiceKind::ExhaustFan, (1640, 700), Facing::NORTH);
    b.state(fan, &heat::FAN_RATE, Value::Number(60));
}

/// A row of bedrooms along the north wall: a replaced window, a kept one, a shelter, a bulkhead.
fn bedrooms(b: &mut Build, walls: &[ElementId]) {
    let word = Value::Word;
    let front = b.partition((0, 200), (WIDE * 4, 200));
    for i in 0..4 {
        if i > 0 {
            b.partition((WIDE * i, 320), (WIDE * i, 200));
        }
        b.door(front, WIDE * i + 90, 32, End::Start, Side::Left);
    }
    let small = |width, height| Window {
        frame_width: inches(width + 4),
        frame_height: inches(height + 4),
        clear: sheet(width, height),
        grade: inches(38),
        well: None,
        ..escape_window()
    };
    let tag =
        |b: &mut Build, i: i32, name: &str| b.tag((WIDE * i + 40, 250), name, RoomUse::Bedroom);
    let at = |i: i32| 600 - WIDE * i - 100;

    let sloped = tag(b, 0, "Bedroom 1");
    state(
        b,
        sloped,
        &[
            (&room::SLOPED_CEILING, Value::Yes),
            (&room::FLOOR_AT_HEIGHT, Value::Number(20)),
            (&room::FLOOR_OVER_FIVE, Value::Number(60)),
        ],
    );
    let replaced = b.window(State::New, walls[2], at(0), small(20, 30));
    b.state(replaced, &opening::REPLACES, word("yes, the maker's largest"));

    tag(b, 1, "Bedroom 2");
    let kept = b.window(State::Existing, walls[2], at(1), small(25, 25));
    b.state(kept, &opening::OCCUPANCY, Value::Yes);

    let shelter = tag(b, 2, "Shelter");
    b.state(shelter, &room::STORM_SHELTER, Value::Yes);

    tag(b, 3, "Bedroom 4");
    let door = b.door(walls[2], at(3), 36, End::Start, Side::Left);
    state(
        b,
        door,
        &[
            (&opening::BULKHEAD, word("covers open from inside")),
            (&opening::BULKHEAD_WIDTH, Value::Length(inches(36))),
            (&opening::BULKHEAD_LENGTH, Value::Length(inches(18))),
        ],
    );
    // A deep well whose steps are narrow, shallow and high.
    let window = Window {
        well: Some(Well {
            width: inches(60),
            projection: inches(48),
            depth: inches(60),
            ladder: true,
            ladder_projection: inches(6),
        }),
        ..escape_window()
    };
    let stepped = b.window(State::New, walls[1], 60, window);
    state(
        b,
        stepped,
        &[
            (&opening::WELL_CLIMB, word("steps")),
            (&opening::STEPS_WIDTH, Value::Length(inches(10))),
            (&opening::STEPS_TREAD, Value::Length(inches(4))),
            (&opening::STEPS_RISER, Value::Length(Len::inches(20))),
        ],
    );
}
