//! Details of doors, windows and wells.

use super::{Subject, length, yes_no};
use crate::bounds::Bound;
use crate::detail::{Detail, Value};
use crate::element::{Body, OpeningKind};
use measure::Len;

const WINDOW: Subject = Subject::Element(
    |body| matches!(body, Body::Opening(o) if matches!(o.kind, OpeningKind::Window(_))),
);
const LADDER: Subject = Subject::Element(
    |body| matches!(body, Body::Opening(o) if o.window().and_then(|w| w.well).is_some_and(|w| w.ladder)),
);

pub const SAFETY_GLASS: Detail = yes_no(
    "safety-glass",
    WINDOW,
    "Safety glass",
    "Does the pane carry the mark of safety glass?",
    None,
);

pub const RUNGS_APART: Detail = length(
    "rungs-apart",
    LADDER,
    "Rungs apart",
    "How far apart are the rungs of the ladder, centre to centre?",
    Bound { what: "distance between rungs", least: Len::inches(1), most: Len::inches(60) },
    Some(Value::Length(Len::inches(12))),
);

pub(super) const ALL: &[&Detail] = &[&SAFETY_GLASS, &RUNGS_APART];
