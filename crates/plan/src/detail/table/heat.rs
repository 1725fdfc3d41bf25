//! Details of furnaces, water heaters, ducts and what belongs to them.

use super::{Subject, choice, is_service, length, number, yes_no};
use crate::bounds::{Bound, CountBound};
use crate::detail::{Detail, Value};
use crate::element::ServiceKind;
use measure::Len;

const APPLIANCE: Subject =
    Subject::Element(|body| is_service(body, &[ServiceKind::Furnace, ServiceKind::WaterHeater]));
const FURNACE: Subject = Subject::Element(|body| is_service(body, &[ServiceKind::Furnace]));
const HEATER: Subject = Subject::Element(|body| is_service(body, &[ServiceKind::WaterHeater]));
const FAN: Subject = Subject::Element(|body| is_service(body, &[ServiceKind::ExhaustFan]));

pub const FUEL: Detail = choice(
    "fuel",
    APPLIANCE,
    "Fuel",
    "What does it run on?",
    &["natural gas", "propane", "oil", "electric"],
    None,
);

pub const VENT: Detail = choice(
    "vent",
    APPLIANCE,
    "Vent",
    "How does it take its air and send off its flue gas? Two pipes to the outdoors are direct vent.",
    &["natural draft", "fan-assisted", "direct vent"],
    None,
);

pub const INPUT: Detail = number(
    "input",
    APPLIANCE,
    "Input",
    "What is its input, by the label?",
    (CountBound { what: "input", least: 1_000, most: 1_000_000 }, "BTU/h"),
    None,
);

pub const PAN: Detail = choice(
    "pan",
    HEATER,
    "Pan",
    "Does the tank stand in a pan, and where does the pan drain?",
    &["none", "pan that drains", "pan without a drain", "not needed here"],
    None,
);

pub const RELIEF_PIPE: Detail = choice(
    "relief-pipe",
    HEATER,
    "Relief pipe",
    "Where does the pipe of the relief valve end?",
    &[
        "to the floor, pan or drain, open end in sight",
        "outdoors",
        "none",
        "capped, threaded or reduced",
    ],
    Some("to the floor, pan or drain, open end in sight"),
);

pub const EXPANSION: Detail = choice(
    "expansion",
    HEATER,
    "Expansion",
    "Is the supply closed by a check valve or reducer, and is there an expansion tank?",
    &["open supply", "closed supply, expansion tank", "closed supply, none"],
    Some("open supply"),
);

pub const BASE: Detail = choice(
    "base",
    APPLIANCE,
    "Stands on",
    "What does the appliance stand on?",
    &["slab or masonry", "metal stand", "gypsum board"],
    Some("slab or masonry"),
);

pub const SEDIMENT_TRAP: Detail = yes_no(
    "sediment-trap",
    APPLIANCE,
    "Sediment trap",
    "Is there a sediment trap (drip leg) in the gas pipe at the appliance?",
    Some(Value::Yes),
);

pub const FAN_ENDS: Detail = choice(
    "fan-ends",
    FAN,
    "Blows",
    "Where does the duct of the fan end?",
    &["outdoors", "into the joists, an attic or a crawl space"],
    Some("outdoors"),
);

pub const FAN_RATE: Detail = number(
    "fan-rate",
    FAN,
    "Fan rate",
    "How much air does the fan move, by its label at the duct as it is run?",
    (CountBound { what: "rate of the fan", least: 0, most: 1000 }, "cfm"),
    Some(50),
);

pub const CONDENSATE: Detail = choice(
    "condensate",
    FURNACE,
    "Condensate goes to",
    "Where does condensate drain?",
    &["none arises", "a drain, by an indirect connection", "a pump", "the floor or nowhere"],
    Some("a drain, by an indirect connection"),
);

pub const RETURN_DISTANCE: Detail = length(
    "return-distance",
    FURNACE,
    "Return from flame",
    "How far is the nearest return air inlet from this appliance's draft hood or burner?",
    Bound { what: "distance of the return inlet", least: Len::ZERO, most: Len::inches(1200) },
    Some(Value::Length(Len::inches(120))),
);

pub(super) const ALL: &[&Detail] = &[
    &FUEL,
    &VENT,
    &INPUT,
    &PAN,
    &RELIEF_PIPE,
    &EXPANSION,
    &BASE,
    &SEDIMENT_TRAP,
    &FAN_ENDS,
    &FAN_RATE,
    &CONDENSATE,
    &RETURN_DISTANCE,
];
