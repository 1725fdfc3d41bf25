//! Wood or board nearer to an appliance than its label allows.

use geometry::{Pt, Ring, convex_overlap, gap};
use measure::Len;
use plan::detail::heat::{LABEL_BACK, LABEL_SIDES};
use plan::element::{BodyKind, ServiceKind, ServicePoint};
use plan::{Body, Element, ElementId};

use super::told::appliances;
use crate::answer::Answer;
use crate::rules::access::judge::unless_existing;
use crate::rules::rooms::words::called;
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "label-clearance",
    group: Group::Heat,
    title: "Clearances of the label",
    page: "\
What
Partitions, furring and furnishings keep the distance from the sides and the back of a furnace or water heater that its label
gives.

Why
The sheet metal is hot for hours; wood that dries out beside it catches fire years later.

Source
IRC M1306.1, G2408.5 (what the maker lists): 2018 to 2024.

How it is measured
From the drawn box, straight out from its sides and its back, to the nearest partition, furring or furnishing that stands at its
height. Nothing is asked for until the label is stated.

Cannot see
The front and the top, the flue, and what is inside a wall: concrete and masonry are taken not to burn.

Exceptions
A shield that the code allows, or a lining that does not burn.

Remedies
Move the wall or the appliance by what is missing.
",
    cites: &["label-clearance"],
    check: Check::Plan(&[On::Kind(BodyKind::Partition), On::Kind(BodyKind::Furring), On::Kind(BodyKind::Furnishing), On::Kind(BodyKind::Door), On::Kind(BodyKind::Window), On::Service(ServiceKind::Furnace), On::Service(ServiceKind::WaterHeater)], check),
    remedies: None,
};

const WHY: &str = "Wood that dries out beside hot metal catches fire years later.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for element in appliances(sheet) {
        let Body::Service(service) = &element.body else { continue };
        let sides = sheet.ask(element, &LABEL_SIDES);
        let back = sheet.ask(element, &LABEL_BACK);
        let [back_right, front_right, front_left, back_left] = service.placed().corners();
        for (answer, from, to) in [
            (&sides, back_right, front_right),
            (&sides, front_left, back_left),
            (&back, back_left, back_right),
        ] {
            out.extend(side(sheet, (element, service), answer, (from, to)));
        }
    }
}

/// What stands too near to one side, `from` to `to` with the outside on the right.
fn side(
    sheet: &Sheet<'_>,
    (element, service): (&Element, &ServicePoint),
    answer: &Answer,
    (from, to): (Pt, Pt),
) -> Option<Finding> {
    let asked = answer.len().filter(|len| *len > Len::ZERO)?;
    let out = geometry::Facing::along(to - from)?.right().step(asked);
    let strip: Ring = vec![from, from + out, to + out, to];
    let bounds = geometry::Bounds::of(strip.iter().copied());
    let (bottom, top) = (service.bottom, service.bottom + service.height);
    let (near, by) = sheet
        .facts
        .solids_near(bounds)
        .filter(|s| s.bottom < top && s.top > bottom && burns(sheet, s.element))
        .filter(|s| convex_overlap(&strip, &s.ring))
        .map(|s| (gap(&[from, to], &s.ring), s.element))
        .min_by_key(|(near, id)| (near.len, *id))?;
    let title = format!(
        "{} stands nearer to {} than its label allows",
        crate::rules::rooms::words::capital(&called(sheet, by)),
        called(sheet, element.id)
    );
    let citation = sheet.book.cite("label-clearance");
    let about = vec![element.id, by];
    let finding =
        Finding::new(Severity::Correction, citation, RULE.slug, about, Phrase::text(title), WHY)
            .figures(Quantity::Len(near.len), Quantity::Len(asked))
            .resting_on(answer)
            .at(Place::Area(strip))
            .at(Place::Span(near.from, near.to));
    Some(unless_existing(sheet, finding))
}

/// Whether something of an element may burn: framed walls and furnishings.
fn burns(sheet: &Sheet<'_>, id: ElementId) -> bool {
    sheet.plan().get(id).is_some_and(|e| {
        matches!(e.body, Body::Partition(_) | Body::Furring(_) | Body::Furnishing(_))
    })
}

#[cfg(test)]
mod tests {

    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "label-clearance";

    /// A furnace 20 in wide at 72 in along the south wall, and a partition whose near face is `clear` east of it.
    fn beside(clear: Len, label: f64) -> Sample {
        let x = inch(82.0) + clear;
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Furnace, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .tune_service(|s| s.width = inch(20.0))
            .state(&LABEL_SIDES, Value::Length(inch(label)))
            .partition_by_left_face(Pt::at(x, Len::ZERO), Pt::at(x, inch(120.0)))
    }

    #[test]
    fn clear_pass() {
        beside(inch(20.0), 6.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let near = beside(inch(2.0), 6.0).edition(edition);
            near.expect(SLUG, &["correction, measured 2\", required 6\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        beside(inch(6.0), 6.0).expect_none(SLUG);
        beside(inch(6.0) - Len::UNIT, 6.0)
            .expect(SLUG, &["correction, measured 5 15/16\", required 6\""]);
    }

    #[test]
    fn concrete_does_not_burn() {
        // Its back stands at the concrete wall.
        Sample::with(ServiceKind::Furnace)
            .state(&LABEL_BACK, Value::Length(inch(6.0)))
            .expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        beside(inch(2.0), 0.0).expect_none(SLUG);
        Sample::with(ServiceKind::Furnace).expect_none(SLUG);
    }
}
