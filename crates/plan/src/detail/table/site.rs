//! Details of the house and its site.

use super::{Subject, choice, length, number, yes_no};
use crate::bounds::{Bound, CountBound};
use crate::detail::{Detail, Value};
use measure::Len;

const OF: Subject = Subject::Site;

pub const CLIMATE_ZONE: Detail = choice(
    "climate-zone",
    OF,
    "Climate zone",
    "Which climate zone of the energy code is the house in? The building department tells.",
    &["1", "2", "3", "4", "4 marine", "5", "6", "7", "8"],
    None,
);

pub const YEAR_BUILT: Detail = number(
    "year-built",
    OF,
    "Year built",
    "In which year was the house built?",
    (CountBound { what: "year", least: 1700, most: 2100 }, ""),
    None,
);

pub const ATTACHED_GARAGE: Detail = yes_no(
    "attached-garage",
    OF,
    "Attached garage",
    "Is there a garage with an opening into the house?",
    None,
);

pub const FUEL_IN_HOUSE: Detail = yes_no(
    "fuel-in-house",
    OF,
    "Fuel burnt in house",
    "Does anything in the house burn gas, oil or wood?",
    None,
);

pub const FLOOR_ABOVE: Detail = choice(
    "floor-above",
    OF,
    "Floor above",
    "What carries the floor above? Solid joists are of 2x10 or more unless stated smaller.",
    &["solid joists", "solid joists under 2x10", "I-joists", "open-web trusses"],
    Some("solid joists"),
);

pub const PENETRATIONS: Detail = yes_no(
    "penetrations-closed",
    OF,
    "Gaps closed",
    "Are the gaps round pipes, ducts and cables closed where they pass the floor above?",
    None,
);

pub const SWELLING_SOIL: Detail = yes_no(
    "swelling-soil",
    OF,
    "Swelling soil",
    "Does the soil below the slab swell, so that partitions must float?",
    Some(Value::No),
);

pub const SEISMIC_CATEGORY: Detail = choice(
    "seismic-category",
    OF,
    "Seismic category",
    "Which seismic design category does the department give?",
    &["A", "B", "C", "D0", "D1", "D2"],
    None,
);

pub const DRAFTSTOPPED: Detail = yes_no(
    "draftstopped",
    OF,
    "Ceiling space divided",
    "Is the space above the ceiling divided into parts of at most 1,000 sq ft?",
    None,
);

pub const RADON: Detail = number(
    "radon",
    OF,
    "Radon test",
    "What was the result of the last radon test in the lowest level, in tenths of a picocurie per litre: 38 for 3.8?",
    (CountBound { what: "result", least: 0, most: 10_000 }, "tenths pCi/L"),
    None,
);

pub const DAMP: Detail = choice(
    "damp",
    OF,
    "Damp",
    "How dry were slab and walls through a wet season?",
    &["not watched yet", "dry for a season", "damp", "water comes in"],
    Some("not watched yet"),
);

const LOT: Bound =
    Bound { what: "distance to the lot line", least: Len::ZERO, most: Len::feet_inches(1000, 0) };

pub const LOT_LEFT: Detail = length(
    "lot-left",
    OF,
    "Lot line, left",
    "How far is the lot line from the house on the left of the drawing, by the survey?",
    LOT,
    None,
);

pub const LOT_RIGHT: Detail = length(
    "lot-right",
    OF,
    "Lot line, right",
    "How far is the lot line from the house on the right of the drawing, by the survey?",
    LOT,
    None,
);

pub const LOT_TOP: Detail = length(
    "lot-top",
    OF,
    "Lot line, top",
    "How far is the lot line from the house on the top of the drawing, by the survey?",
    LOT,
    None,
);

pub const LOT_BOTTOM: Detail = length(
    "lot-bottom",
    OF,
    "Lot line, bottom",
    "How far is the lot line from the house on the bottom of the drawing, by the survey?",
    LOT,
    None,
);

pub(super) const ALL: &[&Detail] = &[
    &RADON,
    &DAMP,
    &DRAFTSTOPPED,
    &CLIMATE_ZONE,
    &YEAR_BUILT,
    &ATTACHED_GARAGE,
    &FUEL_IN_HOUSE,
    &FLOOR_ABOVE,
    &PENETRATIONS,
    &SWELLING_SOIL,
    &SEISMIC_CATEGORY,
    &LOT_LEFT,
    &LOT_RIGHT,
    &LOT_TOP,
    &LOT_BOTTOM,
];
