//! No electrical panel over the steps of a stair.

use geometry::{Bounds, Placed, convex_overlap};
use measure::Len;
use plan::Element;
use plan::element::{ServiceKind, ServicePoint};
use space::SolidKind;

use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "panel-no-stair",
    group: Group::Access,
    title: "No electrical panel over the steps of a stair",
    page: "\
What
An electrical panel is not over the steps of a stair.

Why
Whoever reaches up to a breaker from a step, in the dark, falls.

Source
NEC 240.24(F).

How it is measured
A step of a stair lies under the panel, or begins at the panel's face. A stair that lies farther out in the working space
takes its depth: that is another finding.

Cannot see
A landing with steps on both sides: draw its two flights.

Exceptions
Over a landing a panel is held to be allowed.

Remedies
None is offered: have an electrician move the panel, or turn the stair.
",
    cites: &["panel-no-stair"],
    check: Check::Services(&[ServiceKind::Panel], &[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let placed = service.placed();
    // One unit more, so that a step that begins at the face is met.
    let reach = Placed { depth: placed.depth + Len::UNIT, ..placed }.corners();
    let mut steps: Vec<_> = sheet
        .facts
        .solids_near(Bounds::of(reach))
        .filter(|s| s.kind == SolidKind::Stair && convex_overlap(&reach, &s.ring))
        .map(|s| s.element)
        .collect();
    if steps.is_empty() {
        return;
    }
    steps.push(element.id);
    out.push(
        Finding::new(
            Severity::Correction,
            sheet.book.cite("panel-no-stair"),
            RULE.slug,
            steps,
            Phrase::text(format!(
                "Electrical panel {} is over the steps of a stair",
                element.name()
            )),
            "Whoever reaches up to a breaker from a step, in the dark, falls.",
        )
        .figures(Quantity::Words("over steps".into()), Quantity::Words("not over steps".into()))
        .at(Place::Area(placed.corners().to_vec())),
    );
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at};

    const SLUG: &str = "panel-no-stair";

    /// A flight along the south wall, 36 in wide, that starts at x = 20 and goes east, its south side `off` the
    /// wall; a panel 4 in deep on that wall over its middle.
    fn along_a_stair(off: f64, kind: ServiceKind) -> Sample {
        Sample::room(200.0, 120.0).stair(at(20.0, 18.0 + off), Facing::EAST).service(
            kind,
            at(80.0, 0.0),
            Facing::NORTH,
        )
    }

    #[test]
    fn clear_pass() {
        along_a_stair(48.0, ServiceKind::Panel).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        along_a_stair(0.0, ServiceKind::Panel)
            .expect(SLUG, &["correction, measured over steps, required not over steps"]);
    }

    #[test]
    fn at_the_limit() {
        // The stair begins 1/64 in before the face, and at the face.
        along_a_stair(4.015625, ServiceKind::Panel).expect_none(SLUG);
        assert_eq!(along_a_stair(4.0, ServiceKind::Panel).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        along_a_stair(0.0, ServiceKind::Cleanout).expect_none(SLUG);
    }
}
