//! The accepted range of every figure and text of a plan, in one table.
//!
//! Edits, the file reader and entry fields share it. The ranges are wide on purpose: they keep out
//! slips (a missing unit, a stray digit), they are no code limits. Common practice, no source.

use std::fmt;

use measure::{Len, Precision, System};

/// The accepted range of a length, both ends included.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bound {
    /// What the length is, in lower case, such as `thickness`.
    pub what: &'static str,
    pub least: Len,
    pub most: Len,
}

/// The accepted range of a count, both ends included.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CountBound {
    pub what: &'static str,
    pub least: u32,
    pub most: u32,
}

/// The accepted number of characters of a text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TextBound {
    pub what: &'static str,
    /// At least this many characters that are not spaces.
    pub least: u32,
    pub most: u32,
    /// More than one line is accepted.
    pub lines: bool,
}

const fn bound(what: &'static str, least: Len, most: Len) -> Bound {
    Bound { what, least, most }
}

const fn inches(what: &'static str, least: i32, most: i32) -> Bound {
    bound(what, Len::inches(least), Len::inches(most))
}

const THIRTY_FEET: Len = Len::feet_inches(30, 0);
const QUARTER: Len = Len::sixty_fourths(16);

/// A coordinate of a point.
pub const COORDINATE: Bound =
    bound("coordinate", Len::from_units(-Len::COORD_LIMIT.units()), Len::COORD_LIMIT);

pub const WALL_LENGTH: Bound = bound("length", Len::sixty_fourths(1), Len::feet_inches(1000, 0));
/// Of a section line.
pub const SECTION_LENGTH: Bound = bound("length", Len::inches(12), Len::feet_inches(1000, 0));
/// Of a foundation wall or a partition.
pub const WALL_THICKNESS: Bound = inches("thickness", 1, 48);
pub const WALL_HEIGHT: Bound = bound("height", Len::inches(12), THIRTY_FEET);
pub const FURRING_THICKNESS: Bound = bound("thickness", QUARTER, Len::inches(48));
pub const LAYER_THICKNESS: Bound =
    bound("thickness of a layer", Len::sixty_fourths(1), Len::inches(48));
pub const LAYERS: CountBound = CountBound { what: "number of layers", least: 1, most: 12 };
pub const STUD_SPACING: Bound = inches("stud spacing", 1, 96);
/// From the start of the wall to an opening or to an end of furring.
pub const PLACE_ON_WALL: Bound =
    bound("distance from the start of its wall", Len::ZERO, WALL_LENGTH.most);

pub const LEAF_WIDTH: Bound = bound("leaf width", Len::inches(1), THIRTY_FEET);
pub const LEAF_HEIGHT: Bound = bound("leaf height", Len::inches(1), THIRTY_FEET);
pub const FRAME_WIDTH: Bound = bound("frame width", Len::inches(1), THIRTY_FEET);
pub const FRAME_HEIGHT: Bound = bound("frame height", Len::inches(1), THIRTY_FEET);
/// Zero for a window that does not open.
pub const CLEAR_WIDTH: Bound = bound("net clear width", Len::ZERO, THIRTY_FEET);
pub const CLEAR_HEIGHT: Bound = bound("net clear height", Len::ZERO, THIRTY_FEET);
pub const SILL: Bound = bound("sill height", Len::ZERO, THIRTY_FEET);
/// Below the slab where the ground falls away.
pub const GRADE: Bound =
    bound("height of the outside grade", Len::feet_inches(-30, 0), THIRTY_FEET);
pub const WELL_WIDTH: Bound = bound("width of the well", Len::inches(1), THIRTY_FEET);
pub const WELL_PROJECTION: Bound = bound("projection of the well", Len::inches(1), THIRTY_FEET);
pub const WELL_DEPTH: Bound = bound("depth of the well", Len::ZERO, THIRTY_FEET);
pub const LADDER_PROJECTION: Bound = inches("projection of the ladder", 0, 120);

pub const COLUMN_DIAMETER: Bound = inches("diameter", 1, 60);
pub const COLUMN_WIDTH: Bound = inches("width", 1, 60);
pub const COLUMN_DEPTH: Bound = inches("depth", 1, 60);

pub const STAIR_WIDTH: Bound = inches("width", 12, 240);
pub const RISERS: CountBound = CountBound { what: "number of risers", least: 1, most: 40 };
pub const RISE: Bound = inches("rise", 1, 24);
pub const RUN: Bound = inches("run", 1, 48);
pub const HEADROOM: Bound = bound("headroom", Len::ZERO, THIRTY_FEET);

pub const OVERHEAD_WIDTH: Bound = bound("width", QUARTER, THIRTY_FEET);
pub const OVERHEAD_LENGTH: Bound = bound("length", Len::sixty_fourths(1), WALL_LENGTH.most);
pub const UNDERSIDE: Bound = bound("underside height", Len::inches(1), THIRTY_FEET);
pub const OUTLINE_POINTS: CountBound =
    CountBound { what: "number of outline points", least: 3, most: 200 };

pub const SERVICE_WIDTH: Bound = bound("width", QUARTER, Len::feet_inches(20, 0));
pub const SERVICE_DEPTH: Bound = bound("depth", QUARTER, Len::feet_inches(20, 0));
pub const SERVICE_HEIGHT: Bound = bound("height", QUARTER, THIRTY_FEET);
pub const SERVICE_BOTTOM: Bound = bound("height above the slab", Len::ZERO, THIRTY_FEET);
pub const ACCESS_WIDTH: Bound = inches("width of the access opening", 1, 120);
pub const ACCESS_HEIGHT: Bound = inches("height of the access opening", 1, 120);

pub const FURNISHING_WIDTH: Bound = bound("width", QUARTER, Len::feet_inches(100, 0));
pub const FURNISHING_DEPTH: Bound = bound("depth", QUARTER, Len::feet_inches(100, 0));
pub const FURNISHING_HEIGHT: Bound = bound("height", Len::ZERO, THIRTY_FEET);

pub const JOIST_UNDERSIDE: Bound = bound("joist underside height", Len::inches(12), THIRTY_FEET);
pub const CEILING_BUILD: Bound = inches("ceiling build-up", 0, 120);
pub const FLOOR_BUILD: Bound = inches("floor build-up", 0, 24);
/// Finished floor to finished ceiling, which follows from the three above.
pub const CEILING_HEIGHT: Bound = bound("finished ceiling height", Len::inches(1), THIRTY_FEET);

pub const TITLE: TextBound = TextBound { what: "title", least: 0, most: 120, lines: false };
pub const FURNISHING_NAME: TextBound = TextBound { what: "name", least: 1, most: 60, lines: false };
pub const ROOM_NAME: TextBound = TextBound { what: "name", least: 0, most: 60, lines: false };
pub const NOTE: TextBound = TextBound { what: "text", least: 0, most: 2000, lines: true };
pub const RULE: TextBound = TextBound { what: "rule", least: 1, most: 80, lines: false };
pub const REASON: TextBound = TextBound { what: "reason", least: 1, most: 1000, lines: true };

pub const PLACE: TextBound = TextBound { what: "place", least: 0, most: 80, lines: false };
pub const ADDRESS: TextBound = TextBound { what: "address", least: 0, most: 160, lines: false };
pub const PARCEL: TextBound = TextBound { what: "parcel", least: 0, most: 60, lines: false };
pub const OWNER: TextBound = TextBound { what: "owner", least: 0, most: 80, lines: false };
pub const AUTHOR: TextBound = TextBound { what: "author", least: 0, most: 80, lines: false };
pub const DATE: TextBound = TextBound { what: "date", least: 0, most: 40, lines: false };
pub const WORK: TextBound = TextBound { what: "work", least: 0, most: 400, lines: false };
/// Degrees.
pub const NORTH: CountBound = CountBound { what: "north", least: 0, most: 359 };

pub const LIMIT: TextBound = TextBound { what: "limit", least: 1, most: 80, lines: false };
pub const FIGURE: TextBound = TextBound { what: "figure", least: 1, most: 40, lines: false };

/// Amendments in one plan.
pub const AMENDMENTS: CountBound = CountBound { what: "number of amendments", least: 0, most: 200 };

/// Elements in one plan.
pub const ELEMENTS: CountBound = CountBound { what: "number of elements", least: 0, most: 20_000 };

impl Bound {
    /// Whether a length is accepted.
    pub fn holds(self, value: Len) -> bool {
        self.least <= value && value <= self.most
    }

    /// The accepted range in one unit system, such as `from 1" to 48"`.
    pub fn accepted(self, system: System) -> String {
        let [least, most] = [self.least, self.most].map(|l| system.len(l, Precision::Fine));
        format!("from {least} to {most}")
    }
}

/// The accepted range in both unit systems.
impl fmt::Display for Bound {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "from {} to {}", both(self.least), both(self.most))
    }
}

impl CountBound {
    pub fn holds(self, value: usize) -> bool {
        self.least as usize <= value && value <= self.most as usize
    }
}

impl fmt::Display for CountBound {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "from {} to {}", self.least, self.most)
    }
}

/// A length in both unit systems, for messages that do not know which one is in use.
pub(crate) fn both(len: Len) -> String {
    let [imperial, metric] =
        [System::Imperial, System::Metric].map(|s| s.len(len, Precision::Fine));
    format!("{imperial} ({metric})")
}
