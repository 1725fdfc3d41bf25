//! An existing house in which much rests on an exception, or just misses one.

use measure::Len;
use plan::detail::{Detail, Value, opening, room};
use plan::element::*;
use plan::{Edition, ElementId, Plan, State};

use super::super::build::{Build, escape_window, inches, sheet, site};

type Stated = [(&'static Detail, Value)];

const WIDE: i32 = 150;

pub fn plan() -> Plan {
    let mut facts = site("Basement at 37 Quarrystone Lane: exceptions");
    facts.edition = Edition::E2024;
    let mut b = Build::new(facts);
    let walls = b.shell(&[(0, 0), (600, 0), (600, 320), (0, 320)], 8);
    bedrooms(&mut b, &walls);
    b.tag((300, 130), "Unfinished", RoomUse::Unfinished);
    b.done()
}

fn state(b: &mut Build, id: ElementId, stated: &Stated) {
    for (detail, value) in stated {
        b.state(id, detail, *value);
    }
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

    tag(b, 0, "Bedroom 1");
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
