//! A gas meter away from sources of ignition.

use geometry::gap;
use plan::element::{ServiceKind, ServicePoint};

use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "gas-meter-ignition",
    group: Group::Access,
    title: "Gas meter away from sources of ignition",
    page: "\
What
A gas meter is 3 ft away from furnaces, water heaters, electrical panels and disconnects.

Why
A meter may leak a little; a burner or a breaker makes sparks.

Source
NFPA 54 5.7 and gas utilities' own books.

How it is measured
In the plan, between the nearest points of the two. Height is left out.

Cannot see
Receptacles and other things that spark and are not drawn. Whether the utility counts a sealed burner: so the finding is
always one to verify.

Exceptions
The gas utility decides.

Remedies
None is offered: ask the gas utility. Gas work is for licensed people.
",
    cites: &["gas-meter-ignition"],
    check: Check::Plan(&[On::Service(ServiceKind::GasMeter), On::Service(ServiceKind::Furnace), On::Service(ServiceKind::WaterHeater), On::Service(ServiceKind::Panel), On::Service(ServiceKind::Disconnect)], check),
    remedies: None,
};

fn ignites(service: &ServicePoint) -> bool {
    matches!(
        service.kind,
        ServiceKind::Furnace
            | ServiceKind::WaterHeater
            | ServiceKind::Panel
            | ServiceKind::Disconnect
    )
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (meter, at) in sheet.services().filter(|(_, s)| s.kind == ServiceKind::GasMeter) {
        let limit = sheet.book.len("gas-meter-ignition");
        for (other, near) in sheet.services().filter(|(_, s)| ignites(s)) {
            let gap = gap(&at.placed().corners(), &near.placed().corners());
            if gap.len >= limit.value {
                continue;
            }
            let (meter_name, name) = (capital(&called(sheet, meter.id)), called(sheet, other.id));
            out.push(
                Finding::new(
                    Severity::Verify,
                    limit.citation.clone(),
                    RULE.slug,
                    vec![meter.id, other.id],
                    Phrase::text(format!("{meter_name} is close to {name}")),
                    "A meter may leak a little; a burner or a breaker makes sparks.",
                )
                .figures(Quantity::Len(gap.len), Quantity::Len(limit.value))
                .at(Place::Span(gap.from, gap.to))
                .assuming("the gas utility counts it as a source of ignition"),
            );
        }
    }
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "gas-meter-ignition";

    /// A meter 14 in wide and a thing 14 in wide with `far` between them.
    fn beside(kind: ServiceKind, far: Len) -> Sample {
        Sample::room(240.0, 120.0)
            .service(ServiceKind::GasMeter, at(20.0, 0.0), Facing::NORTH)
            .service(kind, Pt::at(inch(34.0) + far, Len::ZERO), Facing::NORTH)
            .tune_service(|s| s.width = inch(14.0))
    }

    #[test]
    fn clear_pass() {
        beside(ServiceKind::Panel, inch(60.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        beside(ServiceKind::WaterHeater, inch(12.0))
            .expect(SLUG, &["verify, measured 12\", required 36\""]);
    }

    #[test]
    fn at_the_limit() {
        beside(ServiceKind::Panel, inch(36.0)).expect_none(SLUG);
        beside(ServiceKind::Panel, inch(36.0) - Len::UNIT)
            .expect(SLUG, &["verify, measured 35 15/16\", required 36\""]);
    }

    #[test]
    fn does_not_apply() {
        beside(ServiceKind::WaterMeter, inch(12.0)).expect_none(SLUG);
    }
}
