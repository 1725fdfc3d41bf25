//! A panel in a room without a light.

use plan::detail::electrical::LIGHT_CONTROL;
use plan::element::ServiceKind;

use super::devices::{drawn, in_room, room_of};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "panel-light",
    group: Group::Electrical,
    title: "A light at the electrical panel",
    page: "\
What
The working space at an electrical panel indoors is lit, and not by an automatic control alone.

Why
Who goes to the panel often goes because the light is out.

Source
NEC 110.26(D): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
A light in the room in front of the panel. Checked once the plan shows a light.

Cannot see
A light of the next room that reaches the panel, which counts: so the finding is to be verified.

Exceptions
An adjacent light source counts.

Remedies
Add a light in front of the panel, with a switch.
",
    cites: &["panel-light"],
    check: Check::Plan(&[On::Service(ServiceKind::Panel), On::Service(ServiceKind::Light)], check),
    remedies: None,
};

const WHY: &str = "Who goes to the panel often goes because the light is out.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !drawn(sheet, ServiceKind::Light) {
        return;
    }
    for (element, panel) in sheet.services().filter(|(_, s)| s.kind == ServiceKind::Panel) {
        let Some(room) = room_of(sheet, panel) else { continue };
        let lights = in_room(sheet, ServiceKind::Light, room);
        let alone = |e: &plan::Element| sheet.ask(e, &LIGHT_CONTROL).is(&["a sensor alone"]);
        if lights.iter().any(|(e, _)| !alone(e)) {
            continue;
        }
        let measured = if lights.is_empty() { "none" } else { "by a sensor alone" };
        let title = format!("{} has no light before it", capital(&called(sheet, element.id)));
        out.push(
            Finding::new(
                Severity::Verify,
                sheet.book.cite("panel-light"),
                RULE.slug,
                vec![element.id],
                Phrase::text(title),
                WHY,
            )
            .figures(Quantity::Words(measured.to_owned()), Quantity::Words("one".to_owned()))
            .assuming("no light of the next room reaches it")
            .at(Place::Point(panel.placed().front())),
        );
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "panel-light";
    const MISSING: &str = "verify, measured none, required one";

    /// Two rooms, a panel on the east wall of the second, a light at `x`.
    fn lit_at(x: f64) -> Sample {
        Sample::room(244.5, 120.0)
            .partition(at(122.25, 0.0), at(122.25, 120.0))
            .service(ServiceKind::Panel, at(244.5, 60.0), Facing::WEST)
            .service(ServiceKind::Light, at(x, 60.0), Facing::NORTH)
    }

    #[test]
    fn clear_pass() {
        lit_at(180.0).expect_none(SLUG);
    }

    #[test]
    fn a_light_on_a_sensor_alone_does_not_count() {
        use plan::detail::Value;
        let controlled = |by: &'static str| lit_at(180.0).state(&LIGHT_CONTROL, Value::Word(by));
        controlled("a switch and a sensor").expect_none(SLUG);
        let sensor = controlled("a sensor alone");
        sensor.expect(SLUG, &["verify, measured by a sensor alone, required one"]);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            lit_at(60.0).edition(edition).expect(SLUG, &[MISSING]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Anywhere in the room counts: just inside the partition's face, not on its other side.
        lit_at(128.0).expect_none(SLUG);
        lit_at(116.0).expect(SLUG, &[MISSING]);
    }

    #[test]
    fn does_not_apply() {
        // No light is drawn at all, or there is no panel.
        let dark = Sample::room(120.0, 120.0);
        dark.clone().service(ServiceKind::Panel, at(120.0, 60.0), Facing::WEST).expect_none(SLUG);
        dark.service(ServiceKind::Light, at(60.0, 60.0), Facing::WEST).expect_none(SLUG);
    }
}
