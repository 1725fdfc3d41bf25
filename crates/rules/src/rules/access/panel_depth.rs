//! Clear depth in front of an electrical panel.

use crate::front::Face;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Remedy, Rule, Severity, Sheet};
use plan::Element;
use plan::element::{ServiceKind, ServicePoint};

use super::keep::KEEP;
use super::{clear_away, judge};

pub(crate) const RULE: Rule = Rule {
    slug: "panel-depth",
    group: Group::Access,
    title: "Clear depth in front of the electrical panel",
    page: "\
What
Nothing stands within 36 in of the face of an electrical panel, over the width of the panel.

Why
Whoever works on a live panel needs room to step back from it. A partition or a shelf in front of it is the most
common reason why a panel in a finished basement fails its last inspection.

Source
NEC 110.26(A)(1) and its table; the residential code repeats it in E3405.2. A dwelling of 120/240 V has 120 V to
ground, so 3 ft holds whatever the wall opposite is made of.

How it is measured
From the panel's face straight out to the nearest thing that stands before it between the floor and the height of the
working space: wall, furring, column, stair, appliance, furnishing. Other electrical equipment that stands out past the
panel's face by no more than 6 in does not count.

Cannot see
Live parts that are exposed, whether the panel carries other voltages, and what is stored there without being drawn.

Exceptions
Equipment above 150 V to ground needs more than this.

Remedies
Move the partition or the furnishing that stands in the way by what is missing.
",
    cites: &["panel-depth"],
    check: Check::Services(&[ServiceKind::Panel], KEEP, check),
    remedies: Some(remedies),
};

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let Some(keep) = sheet.keep(element.id) else { return };
    let fit = &keep.fit;
    let Some(short) = fit.short else { return };
    let limit = sheet.book.len("panel-depth");
    let face = Face::of(service.placed());
    let in_front = |o: &&crate::front::Obstacle| face.faces(o);
    let mut elements = vec![element.id];
    elements.extend(fit.within.iter().filter(in_front).map(|o| o.element));
    let finding = Finding::new(
        Severity::Correction,
        limit.citation,
        RULE.slug,
        elements,
        Phrase::text(format!("Too little depth in front of electrical panel {}", element.name())),
        "Whoever works on a live panel needs room to step back from it.",
    )
    .figures(Quantity::Len(short), Quantity::Len(limit.value))
    .at(face.breach(fit));
    let finding = match fit.within.iter().find(in_front) {
        Some(nearest) => {
            let (from, to) = face.distance(nearest);
            finding.at(Place::Span(from, to))
        }
        None => finding,
    };
    out.push(judge::unless_existing(sheet, finding));
}

fn remedies(finding: &Finding, sheet: &Sheet<'_>) -> Vec<Remedy> {
    clear_away::out_of_depth(finding, sheet)
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};
    use measure::Len;

    /// A panel on the south wall, 4 in deep, and a partition whose south face is `clear` in front of it.
    fn before_a_partition(clear: Len) -> Sample {
        let y = inch(4.0) + clear;
        let line = |x: f64| geometry::Pt::at(inch(x), y);
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .partition_by_left_face(line(144.0), line(0.0))
    }

    #[test]
    fn clear_pass() {
        before_a_partition(inch(60.0)).expect_none("panel-depth");
    }

    #[test]
    fn clear_fail() {
        let sample = before_a_partition(inch(33.625));
        sample.expect("panel-depth", &["correction, measured 33 5/8\", required 36\""]);
        assert_eq!(sample.remedies("panel-depth"), ["Move W6 by 2 3/8\""]);
    }

    #[test]
    fn at_the_limit() {
        before_a_partition(inch(36.0)).expect_none("panel-depth");
        before_a_partition(inch(36.0) - Len::UNIT)
            .expect("panel-depth", &["correction, measured 35 15/16\", required 36\""]);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::FixtureValve, at(72.0, 0.0), Facing::NORTH)
            .partition(at(0.0, 20.0), at(144.0, 20.0))
            .expect_none("panel-depth");
    }

    #[test]
    fn a_shelf_beside_the_panel_takes_width_and_no_depth() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .furnishing(at(85.0, 0.0), Facing::NORTH, 10.0, 20.0)
            .expect_none("panel-depth");
    }
}
