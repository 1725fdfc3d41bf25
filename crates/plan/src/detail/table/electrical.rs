//! Details of outlets, switches, lights, alarms, boxes and panels.

use super::{Subject, is_service, yes_no};
use crate::detail::Detail;
use crate::element::ServiceKind;

const RECEPTACLE: Subject = Subject::Element(|body| is_service(body, &[ServiceKind::Receptacle]));

pub const SHOCK_PROTECTION: Detail = yes_no(
    "shock-protection",
    RECEPTACLE,
    "Shock protection",
    "Does a ground-fault circuit interrupter (GFCI) protect it, at the outlet, upstream or in the panel?",
    None,
);

pub(super) const ALL: &[&Detail] = &[&SHOCK_PROTECTION];
