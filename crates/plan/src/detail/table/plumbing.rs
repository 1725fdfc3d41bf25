//! Details of valves, drains, pits and bath fixtures.

use super::{Subject, is_service, yes_no};
use crate::detail::Detail;
use crate::element::ServiceKind;

const PIT: Subject =
    Subject::Element(|body| is_service(body, &[ServiceKind::Sump, ServiceKind::Ejector]));

pub const SEALED_LID: Detail = yes_no(
    "sealed-lid",
    PIT,
    "Sealed lid",
    "Does the pit have a rigid lid that is sealed and comes off?",
    None,
);

pub(super) const ALL: &[&Detail] = &[&SEALED_LID];
