//! Too little clear floor at the foot of a flight.

use geometry::{Bounds, convex_clip, convex_overlap, gap};
use measure::Len;
use plan::element::{BodyKind, Stair};
use plan::{Body, Element, ElementId};
use space::{Intrusion, intrusions};

use super::{asked, foot_finding, landing};
use crate::{Check, Finding, Group, Place, Quantity, Reach, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-landing",
    group: Group::Stairs,
    title: "Clear floor at the foot of the stair",
    page: "\
What
Before the lowest riser there is a floor or landing at least as wide as the flight and 36 in deep.

Why
Who comes down, perhaps in the dark, needs a step to stop or turn before a wall or a door.

Source
IRC R311.7.6 (2018, 2021), R318.7.6 (2024).

How it is measured
From the lowest riser straight out, over the width of the flight, up to the height of the headroom. Walls, columns,
service points and furnishings stand in the way, and so does a door with a leaf, also when it is shut: no exception is
made for a door at the foot, as it is at the head.

Cannot see
Handrail ends, thresholds and the slope of the floor. The landing at the head of the stair.

Exceptions
Things that lie flush with the floor. Loose furniture is told as advice. Where the flight and all that stands in the way
was there before the work, it is marked to verify.

Remedies
Move what stands in the way.
",
    cites: &["stair-landing", "stair-headroom"],
    check: Check::Things(&[BodyKind::Stair], &[Reach::Limit("stair-landing")], check),
    remedies: None,
};

const WHY: &str =
    "Who comes down, perhaps in the dark, needs a step to stop or turn before what stands there.";

fn check(sheet: &Sheet<'_>, element: &Element, out: &mut Vec<Finding>) {
    let Some(stair) = asked(sheet, element) else { return };
    let limit = sheet.book.len("stair-landing");
    let found = in_the_way(sheet, element.id, stair, limit.value);
    let loose = |i: &&Intrusion| is_loose(sheet, i.element);
    let (loose, firm): (Vec<&Intrusion>, Vec<&Intrusion>) = found.iter().partition(loose);
    let (things, only_loose) = if firm.is_empty() { (loose, true) } else { (firm, false) };
    let Some(depth) = things.iter().map(|i| i.free_depth).min() else { return };
    let ids: Vec<ElementId> = things.iter().map(|i| i.element).collect();
    let fault = "has too little clear floor at its foot";
    let about = (element, &ids[..]);
    let mut finding = foot_finding(sheet, about, RULE.slug, limit.citation, fault, WHY)
        .figures(Quantity::Len(depth), Quantity::Len(limit.value));
    finding.places = vec![Place::Breach {
        keep_clear: landing(stair, limit.value).corners().to_vec(),
        overlap: things.iter().flat_map(|i| i.parts.clone()).collect(),
    }];
    if only_loose {
        finding.severity = Severity::Advice;
    }
    out.push(finding);
}

/// What stands on the landing.
fn in_the_way(sheet: &Sheet<'_>, id: ElementId, stair: &Stair, depth: Len) -> Vec<Intrusion> {
    let floor = sheet.plan().site.floor_build;
    let top = floor + sheet.book.len("stair-headroom").value;
    let ring = landing(stair, depth).corners();
    let mut found = intrusions(sheet.facts, &ring, floor, top, &[id]);
    found.retain(|i| !i.overhead && !is_flush(sheet, i.element));
    for opening in sheet.facts.openings_near(Bounds::of(ring)) {
        if sheet.facts.has_leaf(opening.id) && convex_overlap(&ring, &opening.quad) {
            let overlap = convex_clip(&ring, &opening.quad);
            found.push(Intrusion {
                element: opening.id,
                free_depth: gap(&[ring[3], ring[0]], &overlap).len,
                parts: vec![overlap.clone()],
                overlap,
                overhead: false,
            });
        }
    }
    found
}

fn is_loose(sheet: &Sheet<'_>, id: ElementId) -> bool {
    matches!(sheet.plan().get(id).map(|e| &e.body), Some(Body::Furnishing(f)) if !f.fixed)
}

/// Set in the floor, so that one can stand on it.
fn is_flush(sheet: &Sheet<'_>, id: ElementId) -> bool {
    use plan::element::ServiceKind::{Ejector, FloorDrain, Sump};
    let body = sheet.plan().get(id).map(|e| &e.body);
    matches!(body, Some(Body::Service(s)) if [FloorDrain, Sump, Ejector].contains(&s.kind))
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::element::{DoorOperation, ServiceKind};
    use plan::{Edition, State};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "stair-landing";

    /// An existing flight that comes down towards the south wall, with its foot so far from it.
    fn foot(from_wall: Len) -> Sample {
        let foot = geometry::Pt::at(inch(100.0), from_wall);
        Sample::room(300.0, 240.0).stair(foot, Facing::NORTH)
    }

    /// A partition across the foot, its near face so far before the lowest riser.
    fn walled(clear: f64) -> Sample {
        let y = 100.0 - clear - 2.25;
        foot(inch(100.0)).partition(at(0.0, y), at(300.0, y))
    }

    #[test]
    fn clear_pass() {
        foot(inch(60.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = walled(30.0).edition(edition);
            sample.expect(SLUG, &["correction, measured 30\", required 36\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        walled(36.0).expect_none(SLUG);
        walled(35.984375).expect(SLUG, &["correction, measured 35 15/16\", required 36\""]);
        foot(Len::inches(36)).expect_none(SLUG);
        let short = foot(Len::inches(36) - Len::UNIT);
        short.expect(SLUG, &["verify, measured 35 15/16\", required 36\""]);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(300.0, 240.0).expect_none(SLUG);
    }

    #[test]
    fn what_was_there_is_left_to_the_office() {
        foot(inch(30.0)).expect(SLUG, &["verify, measured 30\", required 36\""]);
        let new_flight = foot(inch(30.0)).tune(|e| e.state = State::New);
        new_flight.expect(SLUG, &["correction, measured 30\", required 36\""]);
    }

    #[test]
    fn a_cased_opening_lets_the_landing_through_and_a_door_does_not() {
        let opening = |operation| {
            let sample = walled(20.0);
            let wall = sample.last();
            sample.opening(wall, 70.0, operation, 60.0)
        };
        opening(DoorOperation::Cased).expect_none(SLUG);
        let door = opening(DoorOperation::Hinged);
        door.expect(SLUG, &["correction, measured 20\", required 36\""]);
    }

    #[test]
    fn loose_furniture_is_advice_and_a_floor_drain_is_nothing() {
        let shelf = foot(inch(100.0)).furnishing(at(100.0, 60.0), Facing::NORTH, 30.0, 16.0);
        shelf.expect(SLUG, &["advice, measured 24\", required 36\""]);
        let drain =
            foot(inch(100.0)).service(ServiceKind::FloorDrain, at(100.0, 70.0), Facing::NORTH);
        drain.expect_none(SLUG);
        let heater =
            foot(inch(100.0)).service(ServiceKind::WaterHeater, at(100.0, 50.0), Facing::NORTH);
        heater.expect(SLUG, &["verify, measured 28\", required 36\""]);
    }
}
