//! A stair without a light.

use plan::Body;
use plan::element::{BodyKind, ServiceKind};

use super::devices::{drawn, in_room};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-light",
    group: Group::Electrical,
    title: "A light for the stair",
    page: "\
What
A stair has a light with a wall control; from six risers on there is a control at each floor.

Why
Most falls in a house are falls on a dark stair.

Source
NEC 210.70(A)(2): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024. IRC R303.7 (2018, 2021) asks for light
on the treads as well.

How it is measured
A light in the room at the foot of the flight, or over the flight. Checked once the plan shows a light.

Cannot see
A light in the stairway above the basement's ceiling: so the finding is to be verified. The controls, and how
bright the treads are.

Exceptions
Automatic or remote control.

Remedies
Add a light over the foot of the flight.
",
    cites: &["stair-light"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair), On::Service(ServiceKind::Light)], check),
    remedies: None,
};

const WHY: &str = "Most falls in a house are falls on a dark stair.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !drawn(sheet, ServiceKind::Light) {
        return;
    }
    for element in sheet.facts.standing(&[BodyKind::Stair]) {
        let Body::Stair(stair) = &element.body else { continue };
        let middle = stair.placed().centre();
        let lit = [stair.foot, middle]
            .into_iter()
            .filter_map(|p| sheet.facts.room_at(p))
            .any(|room| !in_room(sheet, ServiceKind::Light, room).is_empty());
        if lit {
            continue;
        }
        let title = format!("{} has no light", capital(&called(sheet, element.id)));
        out.push(
            Finding::new(
                Severity::Verify,
                sheet.book.cite("stair-light"),
                RULE.slug,
                vec![element.id],
                Phrase::text(title),
                WHY,
            )
            .figures(Quantity::Words("none".to_owned()), Quantity::Words("one".to_owned()))
            .assuming("no light hangs in the stairway above the ceiling")
            .at(Place::Point(stair.foot)),
        );
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "stair-light";
    const MISSING: &str = "verify, measured none, required one";

    /// Two rooms, a stair in the second, a light at `x`.
    fn lit_at(x: f64) -> Sample {
        Sample::room(244.5, 240.0)
            .partition(at(122.25, 0.0), at(122.25, 240.0))
            .stair(at(180.0, 60.0), Facing::NORTH)
            .service(ServiceKind::Light, at(x, 30.0), Facing::NORTH)
    }

    #[test]
    fn clear_pass() {
        lit_at(180.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            lit_at(60.0).edition(edition).expect(SLUG, &[MISSING]);
        }
    }

    #[test]
    fn at_the_limit() {
        lit_at(128.0).expect_none(SLUG);
        lit_at(116.0).expect(SLUG, &[MISSING]);
    }

    #[test]
    fn does_not_apply() {
        let room = Sample::room(244.5, 240.0);
        room.clone().stair(at(180.0, 60.0), Facing::NORTH).expect_none(SLUG);
        room.service(ServiceKind::Light, at(60.0, 60.0), Facing::NORTH).expect_none(SLUG);
    }
}
