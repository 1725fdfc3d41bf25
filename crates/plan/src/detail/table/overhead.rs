//! Details of beams, ducts, pipes and soffits.

use super::{Subject, yes_no};
use crate::detail::Detail;
use crate::element::{Body, OverheadKind};

const SOFFIT: Subject =
    Subject::Element(|body| matches!(body, Body::Overhead(o) if o.kind == OverheadKind::Soffit));

pub const SOFFIT_FIREBLOCKED: Detail = yes_no(
    "soffit-fireblocked",
    SOFFIT,
    "Fireblocked",
    "Is the wall behind the soffit closed with board or solid wood, so that the stud spaces don't open into it?",
    None,
);

pub(super) const ALL: &[&Detail] = &[&SOFFIT_FIREBLOCKED];
