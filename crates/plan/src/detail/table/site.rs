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

pub const ADDITION: Detail = choice(
    "addition",
    OF,
    "Addition",
    "Is this basement part of an addition to the house, and is it reached from an old basement with an escape opening?",
    &["no", "new basement", "new, old one has an opening"],
    Some("no"),
);

pub const SLAB_HUMIDITY: Detail = number(
    "slab-humidity",
    OF,
    "Humidity in the slab",
    "What relative humidity did probes in the slab show, under a floor of wood or vinyl?",
    (CountBound { what: "humidity in the slab", least: 0, most: 100 }, "%"),
    None,
);

pub const SLAB_VAPOUR: Detail = number(
    "slab-vapour",
    OF,
    "Vapour from the slab",
    "What did the calcium chloride test show, in tenths of a pound on 1,000 sq ft in 24 h: 30 for 3.0?",
    (CountBound { what: "vapour from the slab", least: 0, most: 1_000 }, "tenths lb"),
    None,
);

pub const PLASTIC_TEST: Detail = choice(
    "plastic-test",
    OF,
    "Plastic sheet test",
    "Where was it wet after a sheet of plastic was taped to slab or wall for a day or two?",
    &["not done", "dry", "wet on the room side", "wet on the concrete side"],
    Some("not done"),
);

pub const AIR_HUMIDITY: Detail = number(
    "air-humidity",
    OF,
    "Humidity of the air",
    "What relative humidity has the basement's air in its dampest season?",
    (CountBound { what: "humidity of the air", least: 0, most: 100 }, "%"),
    None,
);

pub const SERVICE_RATING: Detail = number(
    "service-rating",
    OF,
    "Service rating",
    "What is the rating of the service disconnect of the house?",
    (CountBound { what: "rating of the service", least: 15, most: 2_000 }, "A"),
    None,
);

pub const SERVICE_REPLACED: Detail = yes_no(
    "service-replaced",
    OF,
    "Service replaced",
    "Is the electric service, or its equipment, replaced in this work?",
    Some(Value::No),
);

pub const SURGE_DEVICE: Detail = yes_no(
    "surge-device",
    OF,
    "Surge device",
    "Does a surge-protective device protect the service?",
    None,
);

pub const OUTDOOR_DISCONNECT: Detail = yes_no(
    "outdoor-disconnect",
    OF,
    "Disconnect outdoors",
    "Is there a disconnect outdoors, on the house or in sight of it, that can be reached at once?",
    None,
);

pub const ALARMS_ELSEWHERE: Detail = yes_no(
    "alarms-elsewhere",
    OF,
    "Alarms upstairs",
    "Are the smoke and carbon monoxide alarms of the other storeys where a new house would have them?",
    None,
);

pub const ABOVE_GRADE: Detail = yes_no(
    "storey-above-grade",
    OF,
    "Storey above grade",
    "Does the department count this level as a storey above grade, so that it is no basement, as with many walk-outs?",
    Some(Value::No),
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
    &ADDITION,
    &SLAB_HUMIDITY,
    &SLAB_VAPOUR,
    &PLASTIC_TEST,
    &AIR_HUMIDITY,
    &SERVICE_RATING,
    &SERVICE_REPLACED,
    &SURGE_DEVICE,
    &OUTDOOR_DISCONNECT,
    &ALARMS_ELSEWHERE,
    &ABOVE_GRADE,
];
