//! The plans in trouble: between them every rule in force fires. Each trouble has its own place.

mod access;
mod bedrooms;
pub mod exceptions;
pub mod outlets;
mod panels;
mod rooms;
pub mod services;
pub mod stated;

use geometry::Facing;
use measure::Len;
use plan::detail::{Value, site as of_site, wall};
use plan::element::*;
use plan::{Body, ElementId, House, Plan, Site, State};

use super::build::{Build, escape_window, high_window, inches, site};

/// The foundation walls of the larger basement, 80 ft x 40 ft.
struct Shell {
    north: ElementId,
}

/// Nearly everything at once.
pub fn plan() -> Plan {
    let title = "Basement at 16 Quarrystone Lane: in trouble";
    let mut b = Build::new(site(title));
    let shell = shell(&mut b);
    bedrooms::add(&mut b, &shell);
    panels::add(&mut b);
    access::add(&mut b);
    rooms::add(&mut b, &shell);
    for (detail, value) in [
        (&of_site::RADON, Value::Number(62)),
        (&of_site::DAMP, Value::Word("water comes in")),
        (&of_site::YEAR_BUILT, Value::Number(1962)),
        (&of_site::FLOOR_ABOVE, Value::Word("open-web trusses")),
    ] {
        b.state_site(detail, value);
    }
    b.state(shell.north, &wall::CRACKS, Value::Word("level, offset or bowed"));
    b.done()
}

/// A low basement finished as a family room, with a window that nobody can climb out of.
pub fn without_bedroom() -> Plan {
    let title = "Basement at 18 Quarrystone Lane: no way out";
    let mut b = Build::new(Site { house: House::New, joist_underside: inches(84), ..site(title) });
    let walls = b.shell(&[(0, 0), (360, 0), (360, 240), (0, 240)], 8);
    b.window(State::Existing, walls[2], 100, high_window());
    b.stair((300, 60), Facing::NORTH);
    b.tag((120, 120), "Family room", RoomUse::FamilyRoom);
    b.done()
}

/// A bedroom without a way out of its own, in a house with sprinklers.
pub fn with_sprinklers() -> Plan {
    let title = "Basement at 20 Quarrystone Lane: sprinklers";
    let mut b = Build::new(Site { sprinklers: true, house: House::New, ..site(title) });
    let walls = b.shell(&[(0, 0), (360, 0), (360, 240), (0, 240)], 8);
    b.window(State::New, walls[2], 60, escape_window());
    b.window(State::Existing, walls[0], 60, high_window());
    b.stair((300, 60), Facing::NORTH);
    b.partition((160, 240), (160, 0));
    let bedroom = b.partition((0, 100), (160, 100));
    b.door(bedroom, 106, 32, End::Finish, Side::Left);
    let storage = b.partition((160, 56), (0, 56));
    b.door(storage, 60, 32, End::Start, Side::Left);
    let hall = b.partition((160, 56), (160, 100));
    b.leaf(hall, 4, 36, DoorOperation::Cased, End::Start, Side::Left);
    b.tag((80, 160), "Bedroom", RoomUse::Bedroom);
    b.furnishing("bed", (4, 190), Facing::EAST, (60, 80, 24));
    b.tag((60, 78), "Hall", RoomUse::Hall);
    // A hall under a deep soffit: its alarm is late when the family room fills with smoke.
    b.run(OverheadKind::Soffit, (0, 78), (160, 78), 44, 66);
    b.device(ServiceKind::SmokeAlarm, (320, 312), Facing::NORTH);
    b.tag((80, 24), "Storage", RoomUse::Storage);
    b.tag((225, 120), "Family room", RoomUse::FamilyRoom);
    b.furnishing("settee", (168, 160), Facing::EAST, (78, 34, 32));
    b.done()
}

fn shell(b: &mut Build) -> Shell {
    let walls = b.shell(&[(0, 0), (960, 0), (960, 480), (0, 480)], 8);
    Shell { north: walls[2] }
}

/// A stair with every figure a little off, and a post before its foot.
fn bad_stair(b: &mut Build, foot: (i32, i32)) {
    let stair = b.stair(foot, Facing::NORTH);
    b.change(stair, |body| {
        if let Body::Stair(stair) = body {
            stair.width = inches(32);
            stair.risers = 19;
            stair.rise = Len::sixty_fourths(528);
            stair.run = inches(9);
            stair.headroom = inches(76);
        }
    });
    b.column((foot.0, foot.1 - 20));
}

/// A service point with something about it changed.
fn service(
    b: &mut Build,
    kind: ServiceKind,
    at: (i32, i32),
    facing: Facing,
    change: impl FnOnce(&mut ServicePoint),
) -> ElementId {
    let id = b.service(kind, at, facing);
    b.change(id, |body| {
        if let Body::Service(point) = body {
            change(point);
        }
    });
    id
}
