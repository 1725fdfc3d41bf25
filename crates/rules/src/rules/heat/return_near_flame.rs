//! A return grille near an open flame.

use geometry::gap;
use plan::detail::heat::{FUEL, VENT};
use plan::element::ServiceKind;

use crate::rules::electrical::devices::{middle, of_kind, room_of};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "return-near-flame",
    group: Group::Heat,
    title: "Return air near an open flame",
    page: "\
What
Return air is not taken from within 10 ft of the firebox or the draft hood of an appliance in the same space that burns with
the air of that space.

Why
It pulls flue gas into the house.

Source
IRC M1602.2: 2018 to 2024.

How it is measured
Straight from the outline of the return grille to the box of the furnace or water heater in the same room.

Cannot see
Where in its box the flame is, and what fuel and vent are where that isn't stated.

Exceptions
Electric and direct-vent appliances.

Remedies
Move the grille, or take a direct-vent appliance.
",
    cites: &["return-near-flame"],
    check: Check::Plan(&[On::Service(ServiceKind::ReturnGrille), On::Service(ServiceKind::Furnace), On::Service(ServiceKind::WaterHeater)], check),
    remedies: None,
};

const WHY: &str = "It pulls flue gas into the house.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("return-near-flame");
    for (grille, inlet) in of_kind(sheet, ServiceKind::ReturnGrille) {
        for (appliance, box_) in sheet
            .services()
            .filter(|(_, s)| matches!(s.kind, ServiceKind::Furnace | ServiceKind::WaterHeater))
        {
            let (fuel, vent) = (sheet.ask(appliance, &FUEL), sheet.ask(appliance, &VENT));
            if fuel.is(&["electric"]) || vent.is(&["direct vent"]) {
                continue;
            }
            let gap = gap(&inlet.placed().corners(), &box_.placed().corners());
            let same = room_of(sheet, inlet) == sheet.facts.room_at(middle(box_));
            if !same || gap.len >= limit.value {
                continue;
            }
            let title = format!(
                "{} draws air from beside {}",
                capital(&called(sheet, grille.id)),
                called(sheet, appliance.id)
            );
            out.push(
                Finding::new(
                    Severity::Correction,
                    limit.citation.clone(),
                    RULE.slug,
                    vec![grille.id, appliance.id],
                    Phrase::text(title),
                    WHY,
                )
                .figures(Quantity::Len(gap.len), Quantity::Len(limit.value))
                .resting_on(&fuel)
                .resting_on(&vent)
                .at(Place::Span(gap.from, gap.to)),
            );
        }
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "return-near-flame";

    /// A furnace on the south wall, 21 in wide from 61.5 to 82.5 in, and a return grille on the same wall whose near
    /// edge is `off` from it.
    fn room(off: f64) -> Sample {
        let sample = Sample::room(400.0, 120.0)
            .service(ServiceKind::Furnace, at(72.0, 0.0), Facing::NORTH)
            .state(&FUEL, Value::Word("natural gas"))
            .state(&VENT, Value::Word("draft hood"))
            .service(ServiceKind::ReturnGrille, at(200.0, 0.0), Facing::NORTH)
            .tune_service(|s| s.depth = inch(1.0));
        let half = 0.5
            * sample
                .plan_elements()
                .find_map(|e| match &e.body {
                    plan::Body::Service(s) if s.kind == ServiceKind::ReturnGrille => {
                        Some(s.width.to_inches())
                    }
                    _ => None,
                })
                .expect("a grille");
        sample.tune_service(|s| s.at = at(82.5 + off + half, 0.0))
    }

    #[test]
    fn clear_pass() {
        room(160.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let near = room(60.0).edition(edition);
            near.expect(SLUG, &["correction, measured 60\", required 120\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        room(120.0).expect_none(SLUG);
        assert_eq!(room(120.0 - 1.0 / 64.0).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        // Nothing is stated of the appliance: to be verified. An electric one is left alone.
        let furnace = |fuel: Option<Value>| {
            let sample = Sample::room(400.0, 120.0)
                .service(ServiceKind::ReturnGrille, at(120.0, 0.0), Facing::NORTH)
                .service(ServiceKind::Furnace, at(72.0, 0.0), Facing::NORTH);
            sample.tune(|e| e.details.set(&FUEL, fuel)).findings(SLUG)
        };
        assert_eq!(furnace(None)[0].severity, Severity::Verify);
        assert!(furnace(Some(Value::Word("electric"))).is_empty());
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
