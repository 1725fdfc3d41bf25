//! The dedicated space over an electrical panel.

use geometry::{Bounds, Ring, Shape, convex_overlap};
use measure::Len;
use plan::detail::overhead::PIPE_CARRIES;
use plan::element::{OverheadKind, ServiceKind, ServicePoint};
use plan::{Element, ElementId};
use space::SolidKind;

use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

use super::panel;

pub(crate) const RULE: Rule = Rule {
    slug: "panel-dedicated-space",
    group: Group::Access,
    title: "Dedicated space over the electrical panel",
    page: "\
What
The column over and under an electrical panel, as wide and as deep as the panel itself, holds wiring only: from the floor to
6 ft above the panel or to the structural ceiling.

Why
A leak from a pipe or a duct must not drip into the panel, and new wiring must find its way to it.

Source
NEC 110.26(E)(1).

How it is measured
Ducts and pipe runs that hang over the panel's own footprint less than 6 ft above its top, and service points that are not
electrical and stand in the footprint. It does not reach out into the room: that is the working space, another box. A
ceiling of lay-in tiles is not the structural ceiling: what runs above the tiles still counts. The figure is the height
above the panel's top.

Cannot see
Pipes that are not drawn, and what runs in a soffit: a soffit over the panel is one to verify.

Exceptions
Piping of which it is stated that it is for fire sprinklers, 110.26(E)(1)(c). Above the column other systems may pass where the panel is protected from drips. Beams are structure.

Remedies
None is offered: moving a pipe or a duct is work for its own trade.
",
    cites: &["panel-dedicated-space"],
    check: Check::Services(&[ServiceKind::Panel], &[], check),
    remedies: None,
};

/// Footprint, bottom and top of the dedicated space, heights from the slab.
pub(super) fn column(sheet: &Sheet<'_>, panel: &ServicePoint) -> (Ring, Len, Len) {
    let above = sheet.book.len("panel-dedicated-space").value;
    let top = panel.bottom + panel.height + above;
    (panel.placed().corners().to_vec(), sheet.plan().site.floor_build, top)
}

/// What is foreign in the dedicated space: the element, where it begins from the slab, and whether it is
/// only a soffit.
pub(super) fn foreign(
    sheet: &Sheet<'_>,
    id: ElementId,
    panel: &ServicePoint,
) -> Vec<(ElementId, Len, bool)> {
    let (ring, bottom, top) = column(sheet, panel);
    let bounds = Bounds::of(&ring);
    let floor = sheet.plan().site.floor_build;
    let region = Shape { outer: ring.clone(), holes: Vec::new() };
    let mut found: Vec<(ElementId, Len, bool)> = sheet
        .facts
        .overheads_near(bounds)
        .filter(|o| o.kind != OverheadKind::Beam && !sprinkles(sheet, o.id))
        .filter(|o| o.clear + floor < top && o.hangs_over(&region))
        .map(|o| (o.id, o.clear + floor, o.kind == OverheadKind::Soffit))
        .collect();
    found.extend(
        sheet
            .facts
            .solids_near(bounds)
            .filter(|s| s.element != id && s.kind == SolidKind::Service)
            .filter(|s| s.bottom < top && s.top > bottom && !panel::electrical(sheet.facts, s))
            .filter(|s| convex_overlap(&ring, &s.ring))
            .map(|s| (s.element, s.bottom, false)),
    );
    found
}

/// Whether a pipe is stated to be one of fire sprinklers, which may serve the space.
fn sprinkles(sheet: &Sheet<'_>, id: ElementId) -> bool {
    let pipe = sheet.plan().get(id);
    pipe.is_some_and(|pipe| sheet.ask(pipe, &PIPE_CARRIES).is(&["fire sprinklers"]))
}

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("panel-dedicated-space");
    for (id, from, soffit) in foreign(sheet, element.id, service) {
        let what = crate::rules::rooms::words::called(sheet, id);
        let above = (from - service.bottom - service.height).max(Len::ZERO);
        let title =
            format!("The {what} is in the dedicated space of electrical panel {}", element.name());
        let finding = Finding::new(
            Severity::Correction,
            limit.citation.clone(),
            RULE.slug,
            vec![element.id, id],
            Phrase::text(title),
            "A leak must not drip into the panel, and new wiring must find its way to it.",
        )
        .figures(Quantity::Len(above), Quantity::Len(limit.value))
        .at(Place::Under(element.id));
        out.push(if soffit {
            finding.assuming("a pipe or a duct runs in the soffit")
        } else {
            finding
        });
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::CeilingBuild;
    use plan::detail::Value;
    use plan::detail::overhead::PIPE_CARRIES;
    use plan::element::{OverheadKind, ServiceKind};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "panel-dedicated-space";

    /// A panel whose top is 72 in above the slab, and an overhead along its wall, 12 in wide.
    fn under(kind: OverheadKind, y: f64, underside: f64) -> Sample {
        Sample::room(144.0, 120.0)
            .site(|s| s.joist_underside = inch(160.0))
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .overhead(kind, at(0.0, y), at(144.0, y), 12.0, underside)
    }

    #[test]
    fn clear_pass() {
        under(OverheadKind::Duct, 30.0, 84.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        under(OverheadKind::Pipe, 6.0, 86.0)
            .expect(SLUG, &["correction, measured 14\", required 72\""]);
    }

    #[test]
    fn at_the_limit() {
        under(OverheadKind::Pipe, 6.0, 144.0).expect_none(SLUG);
        under(OverheadKind::Pipe, 6.0, 143.984375)
            .expect(SLUG, &["correction, measured 71 15/16\", required 72\""]);
        // In the plan: along the panel's front edge, and 1/64 in over it.
        under(OverheadKind::Duct, 10.0, 84.0).expect_none(SLUG);
        assert_eq!(under(OverheadKind::Duct, 9.984375, 84.0).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        under(OverheadKind::Beam, 6.0, 84.0).expect_none(SLUG);
        let sprinklers = Value::Word("fire sprinklers");
        under(OverheadKind::Pipe, 6.0, 86.0).state(&PIPE_CARRIES, sprinklers).expect_none(SLUG);
    }

    /// services.md T7 AX5: pipe 14 in above the panel, lay-in tile below it.
    #[test]
    fn a_lay_in_ceiling_does_not_end_it() {
        under(OverheadKind::Pipe, 6.0, 86.0)
            .site(|s| {
                s.joist_underside = inch(90.0);
                s.ceiling = CeilingBuild::LayIn(inch(6.0));
            })
            .expect(SLUG, &["correction, measured 14\", required 72\""]);
    }

    /// services.md T7 AX6: a duct crossing 20 in in front of the panel.
    #[test]
    fn it_does_not_reach_out_into_the_room() {
        under(OverheadKind::Duct, 30.0, 82.0).expect_none(SLUG);
    }

    #[test]
    fn a_soffit_is_one_to_verify() {
        under(OverheadKind::Soffit, 6.0, 84.0)
            .expect(SLUG, &["verify, measured 12\", required 72\""]);
    }

    #[test]
    fn a_water_heater_under_it_is_foreign_and_a_junction_box_is_not() {
        let with = |kind| {
            Sample::room(144.0, 120.0)
                .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
                .service(kind, at(72.0, 0.0), Facing::NORTH)
        };
        with(ServiceKind::WaterMeter).expect(SLUG, &["correction, measured 0\", required 72\""]);
        with(ServiceKind::JunctionBox).expect_none(SLUG);
    }
}
