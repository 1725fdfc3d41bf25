//! Details of beams, ducts, pipes and soffits.

use super::{Subject, choice, yes_no};
use crate::detail::Detail;
use crate::element::{Body, BodyKind, OverheadKind};

const SOFFIT: Subject = Subject::Element(
    &[BodyKind::Overhead],
    |body| matches!(body, Body::Overhead(o) if o.kind == OverheadKind::Soffit),
);

pub const SOFFIT_FIREBLOCKED: Detail = yes_no(
    "soffit-fireblocked",
    SOFFIT,
    "Fireblocked",
    "Is the wall behind the soffit closed with board or solid wood, so that the stud spaces don't open into it?",
    None,
);

const DUCT: Subject = Subject::Element(
    &[BodyKind::Overhead],
    |body| matches!(body, Body::Overhead(o) if o.kind == OverheadKind::Duct),
);

pub const DUCT_MADE_OF: Detail = choice(
    "duct-made-of",
    DUCT,
    "Made of",
    "What is the duct made of?",
    &["metal or flexible duct", "framing, return air", "framing, supply air"],
    Some("metal or flexible duct"),
);

const PIPE: Subject = Subject::Element(
    &[BodyKind::Overhead],
    |body| matches!(body, Body::Overhead(o) if o.kind == OverheadKind::Pipe),
);

pub const PIPE_CARRIES: Detail = choice(
    "pipe-carries",
    PIPE,
    "Pipe for",
    "What does the pipe carry?",
    &["water, waste or gas", "fire sprinklers"],
    Some("water, waste or gas"),
);

pub(super) const ALL: &[&Detail] = &[&SOFFIT_FIREBLOCKED, &DUCT_MADE_OF, &PIPE_CARRIES];
