//! The plan in trouble: every rule of the first set fires at least once.

use geometry::Facing;
use measure::Len;
use plan::element::*;
use plan::{Plan, State};

use super::build::{Build, high_window, inches, site};
use super::passes::as_built;

pub fn plan() -> Plan {
    let mut b = Build::new(site("Basement at 14 Quarrystone Lane: in trouble"));
    let [_south, _step, _jog, _east, north, _west] = as_built(&mut b);
    b.window(State::Existing, north, 340, high_window());
    let divider = b.partition((168, 336), (168, 180));
    let front = b.partition((0, 180), (168, 180));
    b.door(front, 84, 32, End::Start, Side::Left);
    b.tag((84, 262), "Bedroom", RoomUse::Bedroom);
    let _ = (divider, Facing::NORTH, Len::ZERO, inches(0));
    b.done()
}
