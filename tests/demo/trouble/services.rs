//! A utility room, a bath and a closet whose heater, dryer, pits and pipes are drawn right and stated wrong.

use geometry::Facing;
use measure::Len;
use plan::detail::{
    Detail, Value, heat, opening, overhead, plumbing, site as of_site, wall as of_wall,
};
use plan::element::*;
use plan::{ElementId, House, Plan, State};

use super::super::build::{Build, escape_window, site};

type Stated = [(&'static Detail, Value)];

fn state(b: &mut Build, id: ElementId, stated: &Stated) {
    for (detail, value) in stated {
        b.state(id, detail, *value);
    }
}

pub fn plan() -> Plan {
    let mut facts = site("Basement at 35 Quarrystone Lane: services");
    facts.house = House::New;
    let mut b = Build::new(facts);
    b.state_site(&of_site::SEISMIC_CATEGORY, Value::Word("D1"));
    b.state_site(&of_site::SWELLING_SOIL, Value::Yes);
    b.state_site(&heat::STRONGEST_FAN, Value::Number(900));
    b.state_site(&plumbing::BELOW_SEWER, Value::Yes);
    let walls = b.shell(&[(0, 0), (480, 0), (480, 300), (0, 300)], 8);
    let wall = b.partition((300, 0), (300, 300));
    b.partition((300, 100), (480, 100));
    b.partition((300, 200), (480, 200));
    b.door(wall, 40, 32, End::Start, Side::Right);
    b.door(wall, 130, 32, End::Start, Side::Right);
    b.door(wall, 230, 32, End::Start, Side::Right);
    garage(&mut b);
    utility(&mut b);
    closet_and_bath(&mut b, &walls);
    b.done()
}

fn utility(b: &mut Build) {
    use ServiceKind::*;
    b.tag((150, 150), "Utility", RoomUse::Mechanical);
    let furnace = b.service(Furnace, (60, 0), Facing::NORTH);
    state(
        b,
        furnace,
        &[
            (&heat::FUEL, Value::Word("propane")),
            (&heat::VENT, Value::Word("draft hood")),
            (&heat::INPUT, Value::Number(100_000)),
            (&heat::BASE, Value::Word("gypsum board")),
            (&heat::STRAPPED, Value::No),
            (&heat::CONNECTOR, Value::Length(Len::inches(100))),
            (&heat::SEDIMENT_TRAP, Value::No),
            (&heat::LABEL_SIDES, Value::Length(Len::inches(6))),
            (&heat::CONDENSATE, Value::Word("nowhere")),
        ],
    );
    b.furnishing("Shelf", (77, 0), Facing::NORTH, (8, 12, 60));
    let second = b.service(Furnace, (100, 0), Facing::NORTH);
    state(
        b,
        second,
        &[(&heat::FUEL, Value::Word("electric")), (&heat::CONDENSATE, Value::Word("pump alone"))],
    );
    let heater = b.service(WaterHeater, (150, 0), Facing::NORTH);
    state(
        b,
        heater,
        &[
            (&heat::FUEL, Value::Word("electric")),
            (&plumbing::HEATER_PAN, Value::Word("none")),
            (&plumbing::RELIEF_END, Value::Length(Len::inches(12))),
            (&plumbing::EXPANSION, Value::No),
        ],
    );
    b.service(PressureReducer, (0, 60), Facing::EAST);
    b.service(ReturnGrille, (30, 0), Facing::NORTH);
    let main = b.service(MainWaterValve, (0, 40), Facing::EAST);
    b.state(main, &plumbing::MAIN_DRAINS, Value::No);
    let valve = b.service(GasValve, (0, 120), Facing::EAST);
    state(
        b,
        valve,
        &[(&heat::GAS_VALVE_AT, Value::Word("a manifold")), (&heat::GAS_VALVE_LABEL, Value::No)],
    );
    let cleanout = b.service(Cleanout, (0, 200), Facing::EAST);
    state(
        b,
        cleanout,
        &[
            (&plumbing::NEXT_CLEANOUT, Value::Length(Len::feet_inches(150, 0))),
            (&plumbing::PLUG_SIZE, Value::Length(Len::inches(2))),
            (&plumbing::DRAIN_PIPE, Value::Length(Len::inches(3))),
        ],
    );
    let drain = b.service(FloorDrain, (200, 120), Facing::NORTH);
    b.state(drain, &plumbing::TRAP_SEAL, Value::Word("nothing"));
    let sump = b.service(Sump, (60, 270), Facing::SOUTH);
    state(
        b,
        sump,
        &[
            (&plumbing::SEALED_LID, Value::No),
            (&plumbing::PIT_DEPTH, Value::Length(Len::inches(12))),
        ],
    );
    let ejector = b.service(Ejector, (120, 270), Facing::SOUTH);
    state(
        b,
        ejector,
        &[(&plumbing::EJECTOR_VALVES, Value::Word("none")), (&plumbing::PIT_VENT, Value::No)],
    );
    let standpipe = b.service(Standpipe, (200, 300), Facing::SOUTH);
    b.state(standpipe, &plumbing::STANDPIPE_HEIGHT, Value::Length(Len::inches(60)));
    let air_valve = b.service(AirAdmittanceValve, (230, 300), Facing::SOUTH);
    b.state(air_valve, &plumbing::AIR_VALVE_ABOVE, Value::Length(Len::inches(1)));
    let radon = b.service(RadonPipe, (270, 280), Facing::SOUTH);
    state(
        b,
        radon,
        &[
            (&heat::RADON_DIAMETER, Value::Length(Len::inches(2))),
            (&heat::RADON_FAN, Value::Word("basement")),
        ],
    );
    let post = b.column((250, 240));
    b.state(post, &of_wall::COLUMN_BASE, Value::Word("wood on the slab"));
    let duct = b.run(OverheadKind::Duct, (10, 180), (290, 180), 20, 86);
    b.state(duct, &overhead::DUCT_MADE_OF, Value::Word("framing, supply air"));
}

fn closet_and_bath(b: &mut Build, walls: &[ElementId]) {
    use ServiceKind::*;
    b.tag((400, 50), "Dryer", RoomUse::Closet);
    let dryer = b.service(ClothesDryer, (478, 50), Facing::WEST);
    state(
        b,
        dryer,
        &[
            (&heat::FUEL, Value::Word("natural gas")),
            (&heat::DRYER_AIR, Value::Number(40)),
            (&heat::DRYER_END, Value::Word("indoors")),
            (&heat::DRYER_FLEXIBLE, Value::Length(Len::inches(120))),
            (&heat::DRYER_SCREWS, Value::Yes),
            (&heat::DRYER_LABEL, Value::No),
            (&heat::DRYER_LENGTH, Value::Length(Len::feet_inches(50, 0))),
        ],
    );
    let office = b.tag((400, 150), "Office", RoomUse::Office);
    b.service(SupplyRegister, (390, 150), Facing::NORTH);
    b.service(SmokeAlarm, (375, 150), Facing::NORTH);
    b.state(office, &heat::AIR_BACK, Value::No);
    b.tag((400, 250), "Bath", RoomUse::Bath);
    let tub = b.furnishing("Whirlpool tub", (340, 300), Facing::SOUTH, (60, 32, 24));
    b.state(tub, &plumbing::WHIRLPOOL, Value::Word("no panel"));
    b.furring(walls[1], 210, 290);
    let shower = b.furnishing("Shower", (440, 202), Facing::NORTH, (36, 36, 84));
    b.state(shower, &plumbing::SHOWER_WAY, Value::Length(Len::inches(18)));
    b.run(OverheadKind::Duct, (415, 220), (470, 220), 30, 72);
    b.service(Standpipe, (480, 240), Facing::WEST);
    let fan = b.service(ExhaustFan, (420, 250), Facing::NORTH);
    state(
        b,
        fan,
        &[
            (&heat::FAN_END, Value::Word("attic or joists")),
            (&heat::FAN_RATE, Value::Number(30)),
            (&heat::FAN_DUCT, Value::Word("4 in flexible")),
            (&heat::FAN_LENGTH, Value::Length(Len::feet_inches(60, 0))),
        ],
    );
}

/// A garage beside the house with a door to a bedroom whose only window is no way out, bare studs and a heater on its floor.
fn garage(b: &mut Build) {
    let walls = b.shell(&[(600, 0), (900, 0), (900, 300), (600, 300)], 8);
    let window = b.window(State::New, walls[1], 150, escape_window());
    state(
        b,
        window,
        &[
            (&opening::LEADS_TO, Value::Word("garage, porch or crawl space")),
            (&opening::PATH_WIDTH, Value::Length(Len::inches(24))),
            (&opening::BARS, Value::Word("locked or fixed")),
            (&opening::KEYLESS, Value::No),
            (&opening::UNDER_DECK, Value::Length(Len::sixty_fourths(2272))),
        ],
    );
    b.tag((650, 200), "Garage", RoomUse::Garage);
    b.tag((820, 200), "Bedroom", RoomUse::Bedroom);
    let wall = b.bare_partition((740, 0), (740, 300));
    let door = b.door(wall, 100, 32, End::Start, Side::Right);
    state(
        b,
        door,
        &[
            (&opening::LEAF_MADE_OF, Value::Word("hollow or thinner")),
            (&opening::CLOSES_ITSELF, Value::No),
        ],
    );
    let heater = b.service(ServiceKind::WaterHeater, (640, 0), Facing::NORTH);
    b.state(heater, &heat::IGNITION_HEIGHT, Value::Length(Len::inches(6)));
}
