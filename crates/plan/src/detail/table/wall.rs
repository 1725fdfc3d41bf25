//! Details of foundation walls, partitions and furring.

use measure::Len;

use super::{Subject, choice, length, number, yes_no};
use crate::bounds::{Bound, CountBound};
use crate::detail::{Detail, Value};
use crate::element::{Body, BodyKind};

const SHELL: Subject = Subject::Element(&[BodyKind::Shell], |body| matches!(body, Body::Shell(_)));
const FURRING: Subject =
    Subject::Element(&[BodyKind::Furring], |body| matches!(body, Body::Furring(_)));
const FRAMED: Subject = Subject::Element(&[BodyKind::Furring, BodyKind::Partition], |body| {
    matches!(body, Body::Furring(_) | Body::Partition(_))
});

pub const FOAM_R: Detail = number(
    "foam-r",
    FURRING,
    "R of the foam",
    "What is the R-value of the foam layers together, by the label? 0 for none.",
    (CountBound { what: "R-value", least: 0, most: 100 }, "R"),
    None,
);

pub const CAVITY_R: Detail = number(
    "cavity-r",
    FURRING,
    "R of the cavity",
    "What is the R-value of the insulation between the studs? 0 for none.",
    (CountBound { what: "R-value", least: 0, most: 100 }, "R"),
    None,
);

pub const VAPOUR_RETARDER: Detail = choice(
    "vapour-retarder",
    FURRING,
    "Vapour retarder",
    "What slows vapour on the room side of the insulation?",
    &["none", "class III (paint)", "class II (kraft)", "class I (polyethylene)"],
    Some("none"),
);

pub const FACING: Detail = choice(
    "facing",
    FURRING,
    "Facing",
    "Is kraft paper or foil of the insulation left bare to the room?",
    &["none left bare", "bare kraft or foil"],
    Some("none left bare"),
);

pub const TREATED_PLATE: Detail = choice(
    "bottom-plate",
    FRAMED,
    "Bottom plate",
    "What is the plate on the slab made of?",
    &["treated wood", "wood on a membrane", "steel", "untreated wood"],
    None,
);

pub const FIREBLOCKED: Detail = yes_no(
    "fireblocked",
    FURRING,
    "Fireblocked",
    "Is the space behind the studs closed at floor and ceiling and at least every 10 ft along the wall?",
    None,
);

pub const RIM: Detail = choice(
    "rim",
    FURRING,
    "Rim insulated with",
    "How is the rim above the wall insulated?",
    &[
        "not by foam",
        "sprayed foam, up to 3 1/4 in",
        "foam under board",
        "rigid foam, bare",
        "sprayed foam, thicker, bare",
    ],
    Some("not by foam"),
);

pub const CRACKS: Detail = choice(
    "cracks",
    SHELL,
    "Cracks",
    "Which cracks has the foundation wall?",
    &["none, or dry hairlines", "leaks", "over 1/4 in", "level, offset or bowed"],
    Some("none, or dry hairlines"),
);

pub const FURRING_WOOD: Detail = choice(
    "furring-wood",
    FURRING,
    "At the concrete",
    "What keeps the wood of the furring from the damp of the concrete?",
    &["treated wood", "a membrane between", "steel", "nothing"],
    None,
);

pub const FOAM_COVER: Detail = choice(
    "foam-cover",
    FRAMED,
    "Cover of the foam",
    "What covers the foam besides the board that is drawn?",
    &["nothing else", "a tested barrier", "foam approved to stay bare"],
    Some("nothing else"),
);

pub const COLUMN_BASE: Detail = choice(
    "column-base",
    Subject::Element(&[BodyKind::Column], |body| matches!(body, Body::Column(_))),
    "Base",
    "What is the column made of, and what does it stand on?",
    &["steel or concrete", "treated wood", "wood on a pier 1 in high", "wood on the slab"],
    Some("steel or concrete"),
);

pub const FLOATING_GAP: Detail = length(
    "floating-gap",
    FRAMED,
    "Floating gap",
    "How large is the gap between the plate on the slab and the wall that hangs above it? 0 for none.",
    Bound { what: "gap", least: Len::ZERO, most: Len::feet_inches(1, 0) },
    None,
);

pub const CABLE_DEPTH: Detail = length(
    "cable-depth",
    FRAMED,
    "Cable behind face",
    "How far behind the face of the framing is the nearest cable or hole for one that no steel plate covers?",
    Bound { what: "depth of a cable", least: Len::ZERO, most: Len::inches(12) },
    None,
);

pub const PIPE_DEPTH: Detail = length(
    "pipe-depth",
    FRAMED,
    "Pipe behind face",
    "How far behind the face of the framing is the nearest water or drain pipe that no plate covers, cast iron and \
     steel left out?",
    Bound { what: "depth of a pipe", least: Len::ZERO, most: Len::inches(12) },
    Some(Value::Length(Len::sixty_fourths(80))),
);

pub const GAS_PIPE_DEPTH: Detail = length(
    "gas-pipe-depth",
    FRAMED,
    "Gas pipe behind face",
    "How far behind the edge of the framing is the nearest gas pipe, other than steel, that no plate covers?",
    Bound { what: "depth of a gas pipe", least: Len::ZERO, most: Len::inches(12) },
    Some(Value::Length(Len::sixty_fourths(96))),
);

pub const DRYER_DUCT_DEPTH: Detail = length(
    "dryer-duct-depth",
    FRAMED,
    "Dryer duct behind face",
    "How far behind the face of the framing is a dryer's duct that no plate covers?",
    Bound { what: "depth of a dryer's duct", least: Len::ZERO, most: Len::inches(12) },
    Some(Value::Length(Len::sixty_fourths(80))),
);

pub const FASTENERS: Detail = choice(
    "fasteners",
    FRAMED,
    "Fasteners in plate",
    "What are the nails, pins and screws in treated wood made of?",
    &["hot-dip zinc or stainless", "rated for treated wood", "plain or bright steel"],
    Some("hot-dip zinc or stainless"),
)
.when(&TREATED_PLATE, &[Value::Word("treated wood")]);

pub const FINISH_FLAME: Detail = number(
    "finish-flame",
    FRAMED,
    "Flame spread of finish",
    "What flame spread index does the maker state for the finish on the wall?",
    (CountBound { what: "flame spread index", least: 0, most: 1_000 }, ""),
    Some(200),
);

pub const FINISH_SMOKE: Detail = number(
    "finish-smoke",
    FRAMED,
    "Smoke of finish",
    "What smoke-developed index does the maker state for the finish on the wall?",
    (CountBound { what: "smoke-developed index", least: 0, most: 10_000 }, ""),
    Some(450),
);

pub const FIREBLOCK_OF: Detail = choice(
    "fireblock-of",
    FURRING,
    "Fireblocking of",
    "What closes the space behind the studs?",
    &[
        "2x lumber, or two 1x lapped",
        "board 1/2 in",
        "wood panel 23/32 in",
        "fibre batts, 16 in, held in place",
        "foam, or loose fibre",
    ],
    Some("2x lumber, or two 1x lapped"),
)
.when(&FIREBLOCKED, &[Value::Yes]);

pub const PIPE_IN_WALL: Detail = choice(
    "pipe-in-wall",
    FURRING,
    "Water pipe in it",
    "Does a water or drain pipe run in the furring, and on which side of the insulation?",
    &["none", "on the warm side", "against the concrete"],
    Some("none"),
);

pub(super) const ALL: &[&Detail] = &[
    &FOAM_R,
    &CAVITY_R,
    &VAPOUR_RETARDER,
    &FACING,
    &TREATED_PLATE,
    &FIREBLOCKED,
    &RIM,
    &CRACKS,
    &FURRING_WOOD,
    &FOAM_COVER,
    &COLUMN_BASE,
    &FLOATING_GAP,
    &CABLE_DEPTH,
    &PIPE_DEPTH,
    &GAS_PIPE_DEPTH,
    &DRYER_DUCT_DEPTH,
    &FASTENERS,
    &FINISH_FLAME,
    &FINISH_SMOKE,
    &FIREBLOCK_OF,
    &PIPE_IN_WALL,
];
