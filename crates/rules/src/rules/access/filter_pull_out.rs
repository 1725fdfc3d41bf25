//! Room to pull an air filter out.

use plan::element::{ServiceKind, ServicePoint};
use plan::{Element, ElementId};

use crate::front::{Face, Fit, Space};
use crate::rules::rooms::words::called;
use crate::{Check, Finding, Group, Rule, Severity, Sheet};

use super::clear_box::{self, Demand};
use super::keep::KEEP;
use super::{buried, panel};

pub(crate) const RULE: Rule = Rule {
    slug: "filter-pull-out",
    group: Group::Access,
    title: "Room to pull an air filter out",
    page: "\
What
Before an air filter there is as much room as the filter is wide, and 2 in more.

Why
A filter comes out straight. Where it can't, it is not changed.

Source
Common practice, no source.

How it is measured
From the filter's face straight out to the nearest thing before it, over the filter's height.

Cannot see
A filter that bends, and a slot that opens to another side than the one that the filter faces.

Exceptions
None.

Remedies
Move the partition or the furnishing that stands in the way by what is missing.
",
    cites: &["filter-pull-out"],
    check: Check::Services(&[ServiceKind::AirFilter], KEEP, check),
    remedies: Some(clear_box::remedies),
};

/// The space before a filter and how it fits.
pub(super) fn measure(sheet: &Sheet<'_>, id: ElementId, service: &ServicePoint) -> (Space, Fit) {
    let more = sheet.book.length("filter-pull-out");
    let space = Space {
        width: service.width,
        depth: service.width + more,
        bottom: service.bottom.max(sheet.plan().site.floor_build),
        top: service.bottom + service.height,
    };
    let covers: Vec<ElementId> = buried::elements(&space::cover(sheet.facts, id)).collect();
    let fit = Face::of(service.placed()).fit(sheet.facts, space, |solid| {
        solid.element == id || covers.contains(&solid.element) || panel::flush(sheet.facts, solid)
    });
    (space, fit)
}

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    out.extend(judge(sheet, element, service));
}

fn judge(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint) -> Option<Finding> {
    let keep = sheet.keep(element.id)?;
    let demand = Demand {
        slug: RULE.slug,
        citation: sheet.book.cite("filter-pull-out"),
        space: keep.space,
        title: format!("No room to pull {} out", called(sheet, element.id)),
        why: "A filter comes out straight; where it can't, it is not changed.",
    };
    let finding = clear_box::finding(sheet, element, service, &keep.fit, demand)?;
    Some(Finding { severity: Severity::Advice, ..finding })
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "filter-pull-out";

    /// A filter 20 in wide and 6 in deep, and a partition `clear` before it.
    fn before_a_partition(kind: ServiceKind, clear: Len) -> Sample {
        let y = inch(6.0) + clear;
        Sample::room(144.0, 120.0)
            .service(kind, at(72.0, 0.0), Facing::NORTH)
            .tune_service(|s| (s.width, s.depth) = (inch(20.0), inch(6.0)))
            .partition_by_left_face(Pt::at(inch(144.0), y), Pt::at(Len::ZERO, y))
    }

    #[test]
    fn clear_pass() {
        before_a_partition(ServiceKind::AirFilter, inch(30.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        before_a_partition(ServiceKind::AirFilter, inch(15.0))
            .expect(SLUG, &["advice, measured 15\", required 22\""]);
    }

    #[test]
    fn at_the_limit() {
        before_a_partition(ServiceKind::AirFilter, inch(22.0)).expect_none(SLUG);
        before_a_partition(ServiceKind::AirFilter, inch(22.0) - Len::UNIT)
            .expect(SLUG, &["advice, measured 21 15/16\", required 22\""]);
    }

    #[test]
    fn does_not_apply() {
        before_a_partition(ServiceKind::FixtureValve, inch(15.0)).expect_none(SLUG);
    }
}
