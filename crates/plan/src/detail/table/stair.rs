//! Details of stairs.

use super::{Subject, choice};
use crate::detail::Detail;
use crate::element::Body;

const STAIR: Subject = Subject::Element(|body| matches!(body, Body::Stair(_)));

pub const HANDRAIL: Detail = choice(
    "handrail",
    STAIR,
    "Handrail",
    "On which sides is there a handrail?",
    &["none", "one side", "both sides"],
    None,
);

pub(super) const ALL: &[&Detail] = &[&HANDRAIL];
