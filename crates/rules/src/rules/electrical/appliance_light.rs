//! A furnace or water heater in a room without a light.

use plan::element::ServiceKind;

use super::devices::{drawn, in_room};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "appliance-light",
    group: Group::Electrical,
    title: "A light at equipment that is serviced",
    page: "\
What
There is a switched light at or near a furnace or a water heater.

Why
Who services it needs both hands.

Source
NEC 210.70(C): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
A light in the room before the appliance. Checked once the plan shows a light.

Cannot see
Whether a light of the next room is near enough: so the finding is to be verified. Whether the switch is at the
usual way in.

Exceptions
A light with its own switch is allowed where each way in has a point of control.

Remedies
Add a light.
",
    cites: &["appliance-light"],
    check: Check::Plan(&[On::Service(ServiceKind::Light), On::Service(ServiceKind::Furnace), On::Service(ServiceKind::WaterHeater)], check),
    remedies: None,
};

const WHY: &str = "Who services it needs both hands.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !drawn(sheet, ServiceKind::Light) {
        return;
    }
    let serviced = |k| matches!(k, ServiceKind::Furnace | ServiceKind::WaterHeater);
    for (element, appliance) in sheet.services().filter(|(_, s)| serviced(s.kind)) {
        let Some(room) = sheet.facts.room_at(appliance.placed().centre()) else { continue };
        if !in_room(sheet, ServiceKind::Light, room).is_empty() {
            continue;
        }
        let title = format!("{} has no light near it", capital(&called(sheet, element.id)));
        out.push(
            Finding::new(
                Severity::Verify,
                sheet.book.cite("appliance-light"),
                RULE.slug,
                vec![element.id],
                Phrase::text(title),
                WHY,
            )
            .figures(Quantity::Words("none".to_owned()), Quantity::Words("one".to_owned()))
            .assuming("no light of the next room is near enough")
            .at(Place::Point(appliance.placed().front())),
        );
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "appliance-light";
    const MISSING: &str = "verify, measured none, required one";

    /// Two rooms, an appliance in the second, a light at `x`.
    fn lit_at(kind: ServiceKind, x: f64) -> Sample {
        Sample::room(244.5, 120.0)
            .partition(at(122.25, 0.0), at(122.25, 120.0))
            .service(kind, at(200.0, 100.0), Facing::SOUTH)
            .service(ServiceKind::Light, at(x, 60.0), Facing::NORTH)
    }

    #[test]
    fn clear_pass() {
        lit_at(ServiceKind::Furnace, 180.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            lit_at(ServiceKind::Furnace, 60.0).edition(edition).expect(SLUG, &[MISSING]);
            lit_at(ServiceKind::WaterHeater, 60.0).edition(edition).expect(SLUG, &[MISSING]);
        }
    }

    #[test]
    fn at_the_limit() {
        lit_at(ServiceKind::Furnace, 128.0).expect_none(SLUG);
        lit_at(ServiceKind::Furnace, 116.0).expect(SLUG, &[MISSING]);
    }

    #[test]
    fn does_not_apply() {
        lit_at(ServiceKind::WaterMeter, 60.0).expect_none(SLUG);
    }
}
