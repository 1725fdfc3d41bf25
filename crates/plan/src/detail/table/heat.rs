//! Details of furnaces, water heaters, ducts and what belongs to them.

use super::{Subject, choice, is_service};
use crate::detail::Detail;
use crate::element::ServiceKind;

const APPLIANCE: Subject =
    Subject::Element(|body| is_service(body, &[ServiceKind::Furnace, ServiceKind::WaterHeater]));

pub const FUEL: Detail = choice(
    "fuel",
    APPLIANCE,
    "Fuel",
    "What does it run on?",
    &["natural gas", "propane", "oil", "electric"],
    None,
);

pub(super) const ALL: &[&Detail] = &[&FUEL];
