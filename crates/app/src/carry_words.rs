//! Things that are carried into a basement, and what came of it, in words.

use measure::{Len, Precision, System};
use plan::Plan;
use space::Facts;
use space::carry::{Carried, Verdict};

/// A common thing with its three sizes (common practice, no source: measure yours).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Thing {
    pub key: &'static str,
    pub word: &'static str,
    pub size: [Len; 3],
}

const fn thing(key: &'static str, word: &'static str, a: Len, b: Len, c: Len) -> Thing {
    Thing { key, word, size: [a, b, c] }
}

pub const THINGS: &[Thing] = &[
    thing("heater", "50-gallon water heater", Len::inches(22), Len::inches(22), Len::inches(60)),
    thing("sofa", "sofa", Len::inches(84), Len::inches(36), Len::inches(34)),
    thing("board", "board of 4 x 8 ft", Len::inches(96), Len::inches(48), Len::sixty_fourths(32)),
    thing("desk", "desk", Len::inches(60), Len::inches(30), Len::inches(30)),
    thing("mattress", "queen mattress", Len::inches(80), Len::inches(60), Len::inches(12)),
    thing("washer", "washing machine", Len::inches(28), Len::inches(32), Len::inches(39)),
];

/// What must be kept in mind with every answer.
pub const CAUTION: &str = "A stiff box that slides and turns upright between the things that are drawn, doors open 90°. \
     The stair's flight and the turn at its head are not drawn from above: measure them. Leave room for hands.";

/// `fits, held 84" x 34", 36" high`; `sticks near hinged door D33`.
pub fn verdict(plan: &Plan, carried: &Carried, system: System) -> String {
    let inches = |len: Len| system.inches(len, Precision::Tape);
    let near = carried
        .near
        .and_then(|id| plan.get(id))
        .map_or_else(String::new, |e| format!(" near {} {}", e.body.word(), e.name()));
    match carried.verdict {
        Verdict::Fits(pose) => format!(
            "fits, held with {} x {} on the floor and {} high",
            inches(pose.length),
            inches(pose.width),
            inches(pose.height)
        ),
        Verdict::Sticks(_) => format!("does not fit: sticks{near}"),
        Verdict::Verify(_) => format!("to verify: too close to tell{near}"),
        Verdict::NoStart => "does not fit: no room for it where people come in".to_owned(),
    }
}

/// One word for the JSON and the sign in a list.
pub fn word(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Fits(_) => "fits",
        Verdict::Sticks(_) => "sticks",
        Verdict::Verify(_) => "verify",
        Verdict::NoStart => "no start",
    }
}

/// The name of the room.
pub fn room<'a>(facts: &'a Facts, carried: &Carried) -> &'a str {
    &facts.room(carried.room).name
}
