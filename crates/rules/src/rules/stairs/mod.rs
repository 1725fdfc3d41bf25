//! Stairs: the flight down to the basement and the floor at its foot.

mod bulkhead_stair;
mod guard_missing;
mod guard_openings;
mod riser_lean;
mod spiral_walkline;
mod stair_between_rails;
mod stair_flight_rise;
mod stair_head_landing;
mod stair_headroom;
mod stair_landing;
mod stair_nosing;
mod stair_open_riser;
mod stair_rail_continuous;
mod stair_rail_gap;
mod stair_rail_grip;
mod stair_rail_height;
mod stair_rail_projection;
mod stair_riser;
mod stair_riser_difference;
mod stair_slope;
mod stair_tread;
mod stair_tread_difference;
mod stair_width;
mod stair_winder;
mod stringer_fireblock;
mod tread_light;
mod way_down;
mod way_through_garage;

use geometry::Placed;
use measure::Len;
use plan::detail::stair::STAIR_KIND;
use plan::element::{BodyKind, Stair};
use plan::{Body, Element, ElementId, House, State};

use crate::rules::rooms::words::{called, capital};
use crate::{Citation, Finding, Limit, Phrase, Place, Rule, Severity, Sheet};

pub(super) const RULES: &[Rule] = &[
    stair_width::RULE,
    stair_headroom::RULE,
    stair_flight_rise::RULE,
    stair_riser::RULE,
    stair_tread::RULE,
    stair_landing::RULE,
    stair_rail_height::RULE,
    stair_rail_projection::RULE,
    stair_rail_gap::RULE,
    stair_rail_grip::RULE,
    stair_rail_continuous::RULE,
    stair_nosing::RULE,
    stair_open_riser::RULE,
    stair_riser_difference::RULE,
    stair_tread_difference::RULE,
    guard_openings::RULE,
    stringer_fireblock::RULE,
    guard_missing::RULE,
    stair_head_landing::RULE,
    stair_between_rails::RULE,
    way_down::RULE,
    bulkhead_stair::RULE,
    stair_winder::RULE,
    spiral_walkline::RULE,
    stair_slope::RULE,
    riser_lean::RULE,
    tread_light::RULE,
    way_through_garage::RULE,
];

/// The standing stairs, in the order of their ids; one under a bulkhead is left out as far as it is excused.
fn stairs<'s, 'a>(
    sheet: &'s Sheet<'a>,
) -> impl Iterator<Item = (&'a Element, &'a Stair)> + use<'s, 'a> {
    sheet.facts.standing(&[BodyKind::Stair]).filter_map(|e| Some((e, asked(sheet, e)?)))
}

/// A stair that is held to the rules: one under a bulkhead is left out as far as it is excused.
fn asked<'a>(sheet: &Sheet<'_>, element: &'a Element) -> Option<&'a Stair> {
    let Body::Stair(stair) = &element.body else { return None };
    let excused = is_kind(sheet, element, "under a bulkhead")
        && stair.rise * stair.risers.cast_signed() <= sheet.book.length("bulkhead-stair");
    (!excused).then_some(stair)
}

/// Every standing stair, in the order of their ids.
fn all_stairs<'a>(sheet: &Sheet<'a>) -> impl Iterator<Item = (&'a Element, &'a Stair)> + use<'a> {
    sheet.facts.standing(&[BodyKind::Stair]).filter_map(|e| match &e.body {
        Body::Stair(stair) => Some((e, stair)),
        _ => None,
    })
}

/// Whether a stair is stated to be of a kind.
fn is_kind(sheet: &Sheet<'_>, stair: &Element, kind: &str) -> bool {
    sheet.ask(stair, &STAIR_KIND).is(&[kind])
}

/// The limit of a straight flight, or that of a spiral stair.
fn limit_of(
    sheet: &Sheet<'_>,
    stair: &Element,
    straight: &'static str,
    spiral: &'static str,
) -> Limit<Len> {
    sheet.book.len(if is_kind(sheet, stair, "spiral") { spiral } else { straight })
}

/// A finding about a flight; `fault` ends the title: `is too narrow`. A flight that was there before the work
/// is left to the office.
fn flight_finding(
    sheet: &Sheet<'_>,
    element: &Element,
    rule: &'static str,
    citation: Citation,
    fault: &str,
    why: &str,
) -> Finding {
    foot_finding(sheet, (element, &[]), rule, citation, fault, why)
}

/// A finding about the floor at the foot of a flight and the things there; left to the office when the flight
/// and all of them were there before the work.
fn foot_finding(
    sheet: &Sheet<'_>,
    (element, things): (&Element, &[ElementId]),
    rule: &'static str,
    citation: Citation,
    fault: &str,
    why: &str,
) -> Finding {
    let about = std::iter::once(element.id).chain(things.iter().copied()).collect();
    let title = format!("{} {fault}", capital(&called(sheet, element.id)));
    let finding =
        Finding::new(Severity::Correction, citation, rule, about, Phrase::text(title), why)
            .at(Place::Under(element.id));
    let there = |id: &ElementId| sheet.plan().get(*id).is_some_and(|e| was_there(sheet, e));
    if was_there(sheet, element) && things.iter().all(there) {
        finding.assuming(LET_BE)
    } else {
        finding
    }
}

/// Whether an element stood in an existing house before the work.
fn was_there(sheet: &Sheet<'_>, element: &Element) -> bool {
    element.state == State::Existing && sheet.plan().site.house == House::Existing
}

const LET_BE: &str = "the stair was there before the work, and the office may let it be";

/// The floor before the lowest riser, as wide as the flight.
fn landing(stair: &Stair, depth: Len) -> Placed {
    Placed { back: stair.foot, facing: stair.up.back(), width: stair.width, depth }
}
