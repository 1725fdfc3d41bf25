//! A furnace without a receptacle near it.

use geometry::{Pt, Seg, nearest_on};
use measure::Len;
use plan::element::{ServiceKind, ServicePoint};

use super::devices::{drawn, middle, of_kind};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "appliance-receptacle",
    group: Group::Electrical,
    title: "A receptacle near heating equipment",
    page: "\
What
A receptacle stands within 25 ft of heating equipment, on the same level.

Why
Who services it needs power for a lamp, a pump or a vacuum cleaner.

Source
NEC 210.63(A): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
Level and straight, from the nearest side of the furnace to the middle of the nearest receptacle. Checked once the
plan shows a receptacle.

Cannot see
A wall between the two; whether the receptacle is fed from the load side of the furnace's disconnect, which is not
allowed; protection against faults to ground.

Exceptions
None for a furnace indoors.

Remedies
Add a receptacle.
",
    cites: &["appliance-receptacle"],
    check: Check::Plan(&[On::Service(ServiceKind::Furnace), On::Service(ServiceKind::Receptacle)], check),
    remedies: None,
};

const WHY: &str = "Who services it needs power for a lamp, a pump or a vacuum cleaner.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !drawn(sheet, ServiceKind::Receptacle) {
        return;
    }
    for (element, furnace) in of_kind(sheet, ServiceKind::Furnace) {
        let limit = sheet.book.len("appliance-receptacle");
        let nearest = of_kind(sheet, ServiceKind::Receptacle)
            .map(|(e, s)| (away(furnace, middle(s)), middle(s), e.id))
            .min_by_key(|(away, _, id)| (*away, *id));
        let Some((away, at, id)) = nearest.filter(|(away, ..)| *away > limit.value) else {
            continue;
        };
        let title = format!("{} has no receptacle near it", capital(&called(sheet, element.id)));
        out.push(
            Finding::new(
                Severity::Correction,
                limit.citation,
                RULE.slug,
                vec![element.id, id],
                Phrase::text(title),
                WHY,
            )
            .figures(Quantity::Len(away), Quantity::Len(limit.value))
            .at(Place::Span(furnace.placed().centre(), at)),
        );
    }
}

/// From the nearest side of an appliance to a point.
fn away(appliance: &ServicePoint, p: Pt) -> Len {
    let corners = appliance.placed().corners();
    let sides = (0..4).map(|i| Seg::new(corners[i], corners[(i + 1) % 4]));
    sides.map(|side| Seg::new(nearest_on(side, p), p).len()).min().unwrap_or(Len::ZERO)
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "appliance-receptacle";

    /// A furnace whose west side is 100 in from the west wall, and a receptacle on the same line `away` in east of
    /// its east side.
    fn furnace(away: f64) -> Sample {
        let furnace =
            Sample::room(600.0, 120.0).service(ServiceKind::Furnace, at(121.0, 60.0), Facing::WEST);
        // The middle of a receptacle is half an inch before its back.
        furnace.service(ServiceKind::Receptacle, at(121.0 + away + 0.5, 60.0), Facing::WEST)
    }

    #[test]
    fn clear_pass() {
        furnace(60.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let far = furnace(320.0).edition(edition);
            far.expect(SLUG, &["correction, measured 320\", required 300\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        furnace(300.0).expect_none(SLUG);
        let farther = furnace(300.0).tune_service(|s| s.at.x += 1);
        assert_eq!(farther.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        let none = Sample::room(600.0, 120.0);
        none.clone().service(ServiceKind::Furnace, at(121.0, 60.0), Facing::WEST).expect_none(SLUG);
        none.service(ServiceKind::Receptacle, at(121.0, 0.0), Facing::NORTH).expect_none(SLUG);
    }
}
