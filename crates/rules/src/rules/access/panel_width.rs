//! Clear width in front of an electrical panel.

use crate::front::Face;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Remedy, Rule, Severity, Sheet};
use plan::Element;
use plan::element::{ServiceKind, ServicePoint};

use super::keep::KEEP;
use super::{clear_away, judge};

pub(crate) const RULE: Rule = Rule {
    slug: "panel-width",
    group: Group::Access,
    title: "Clear width in front of the electrical panel",
    page: "\
What
The working space before an electrical panel is at least 30 in wide, or as wide as the panel where that is more.

Why
Whoever works on a live panel needs room for both arms and a way to step aside.

Source
NEC 110.26(A)(2); the residential code repeats it in E3405.2.

How it is measured
The space must cover the panel's whole face but need not be centred on it: it is slid to either side until it is clear
of walls, columns, appliances and furnishings over its full depth. Where no place is clear, the widest stretch is given.
Other electrical equipment that stands out past the panel's face by no more than 6 in does not count.

Cannot see
What is stored there without being drawn.

Exceptions
The spaces of neighbouring panels may overlap.

Remedies
Move the partition or the furnishing that stands beside the panel by what is missing.
",
    cites: &["panel-width"],
    check: Check::Services(&[ServiceKind::Panel], KEEP, check),
    remedies: Some(remedies),
};

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let Some(keep) = sheet.keep(element.id) else { return };
    let fit = &keep.fit;
    let Some(narrow) = &fit.narrow else { return };
    let limit = sheet.book.len("panel-width");
    let required = limit.value.max(service.width);
    let mut elements = vec![element.id];
    elements.extend(&narrow.by);
    let face = Face::of(service.placed());
    let title = format!("Too little width in front of electrical panel {}", element.name());
    let finding = Finding::new(
        Severity::Correction,
        limit.citation,
        RULE.slug,
        elements,
        Phrase::text(title),
        "Whoever works on a live panel needs room for both arms and a way to step aside.",
    )
    .figures(Quantity::Len(narrow.width()), Quantity::Len(required))
    .at(face.breach(fit))
    .at(Place::Span(face.point(narrow.from, narrow.out), face.point(narrow.to, narrow.out)));
    out.push(judge::unless_existing(sheet, finding));
}

fn remedies(finding: &Finding, sheet: &Sheet<'_>) -> Vec<Remedy> {
    clear_away::out_of_width(finding, sheet)
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "panel-width";

    /// A panel 14 in wide whose left edge is 2 in from the west wall, and a partition whose west face is
    /// `clear` from that wall.
    fn in_a_corner(clear: Len) -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(9.0, 0.0), Facing::NORTH)
            .partition_by_left_face(Pt::at(clear, Len::ZERO), Pt::at(clear, inch(60.0)))
    }

    #[test]
    fn clear_pass() {
        in_a_corner(inch(60.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let sample = in_a_corner(inch(24.0));
        sample.expect(SLUG, &["correction, measured 24\", required 30\""]);
        assert_eq!(sample.remedies(SLUG), ["Move W6 by 6\""]);
    }

    #[test]
    fn at_the_limit() {
        in_a_corner(inch(30.0)).expect_none(SLUG);
        in_a_corner(inch(30.0) - Len::UNIT)
            .expect(SLUG, &["correction, measured 29 15/16\", required 30\""]);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(24.0, 120.0)
            .service(ServiceKind::WaterMeter, at(12.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }

    /// services.md T7 AX1, the width part: a corner mount passes where the space slides to one side.
    #[test]
    fn it_need_not_be_centred() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(9.25, 0.0), Facing::NORTH)
            .tune_service(|s| s.width = inch(14.5))
            .expect_none(SLUG);
    }

    #[test]
    fn a_wide_panel_asks_for_its_own_width() {
        let wide = |right: f64| {
            Sample::room(144.0, 120.0)
                .service(ServiceKind::Panel, at(20.0, 0.0), Facing::NORTH)
                .tune_service(|s| s.width = inch(40.0))
                .furnishing(at(right + 10.0, 0.0), Facing::NORTH, 20.0, 30.0)
        };
        wide(40.0).expect_none(SLUG);
        // What stands before the face takes depth, not width.
        wide(39.0).expect_none(SLUG);
    }

    #[test]
    fn a_disconnect_beside_it_may_stand_out_by_6_in() {
        let beside = |depth: f64| {
            Sample::room(34.0, 120.0)
                .service(ServiceKind::Panel, at(9.0, 0.0), Facing::NORTH)
                .service(ServiceKind::Disconnect, at(22.0, 0.0), Facing::NORTH)
                .tune_service(move |s| s.depth = inch(depth))
        };
        beside(10.0).expect_none(SLUG);
        beside(10.5).expect(SLUG, &["verify, measured 18\", required 30\""]);
    }
}
