//! Room to move in words, for the window and the command line alike.

use measure::{Len, Precision, System};
use plan::Plan;
use rules::room_to_move::{Course, RoomToMove};

/// Which way a course goes towards higher or lower offsets.
pub fn direction(plan: &Plan, course: Course, higher: bool) -> &'static str {
    let Some(facing) = course.facing(plan) else { return "along" };
    let v = facing.step(if higher { Len::inches(100) } else { -Len::inches(100) });
    match (v.x.abs() > v.y.abs(), v.x > 0, v.y > 0) {
        (true, true, _) => "right",
        (true, false, _) => "left",
        (false, _, true) => "up",
        (false, _, false) => "down",
    }
}

/// One side: `left: 9 3/8" until "Too little depth before panel S3"`.
pub fn side(plan: &Plan, found: &RoomToMove, low: bool, system: System) -> String {
    let towards = direction(plan, found.course, !low);
    let (from, to) = found.safe();
    let far = if low { from } else { to };
    let far = system.inches(far.abs(), Precision::Tape);
    let [below, above] = found.breaks();
    match if low { below } else { above } {
        Some(ends) => format!("{towards}: {far}, then: {} ({})", ends.fault.title, ends.fault.rule),
        None => format!("{towards}: {far} looked at, nothing breaks"),
    }
}
