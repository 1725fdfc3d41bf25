//! Details of foundation walls, partitions and furring.

use measure::Len;

use super::{Subject, choice, length, number, yes_no};
use crate::bounds::{Bound, CountBound};
use crate::detail::Detail;
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
];
