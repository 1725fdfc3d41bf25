//! A radon pipe that new work leaves in sight.

use geometry::{Bounds, convex_overlap};
use plan::element::{ServiceKind, ServicePoint};
use plan::{Element, ElementId, State};
use space::SolidKind;

use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "radon-pipe-visible",
    group: Group::Access,
    title: "Radon pipe in sight",
    page: "\
What
New walls do not run through a radon pipe, and its gauge, label and seals stay in sight.

Why
The gauge on the pipe is the only sign that the fan still draws. Behind a wall nobody sees it stop.

Source
Radon standards (ANSI/AARST CCAH-2020, from memory on this point).

How it is measured
A new partition or new furring takes up a part of the pipe's place, and there is no access opening.

Cannot see
Where on the pipe gauge, label and cleanout are: so the finding is one to verify. Boxing that is not drawn.

Exceptions
A passive pipe without fan and gauge may run in a wall.

Remedies
Provide an access opening of 12 in by 12 in, or as large as the thing where that is larger (common practice, no source). Work on
a radon system is for certified people.
",
    cites: &["radon-pipe-visible"],
    check: Check::Services(&[ServiceKind::RadonPipe], &[], check),
    remedies: Some(super::buried::remedies),
};

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    if service.access.is_some() {
        return;
    }
    let ring = service.placed().corners();
    let is_new = |id: ElementId| sheet.plan().get(id).is_some_and(|e| e.state == State::New);
    let mut walls: Vec<ElementId> = sheet
        .facts
        .solids_near(Bounds::of(ring))
        .filter(|s| s.kind == SolidKind::Wall && is_new(s.element))
        .filter(|s| convex_overlap(&ring, &s.ring))
        .map(|s| s.element)
        .collect();
    walls.dedup();
    let Some(&wall) = walls.first() else { return };
    let name = capital(&called(sheet, element.id));
    walls.push(element.id);
    out.push(
        Finding::new(
            Severity::Verify,
            sheet.book.cite("radon-pipe-visible"),
            RULE.slug,
            walls,
            Phrase::text(format!("{name} is in {}", called(sheet, wall))),
            "The gauge on the pipe is the only sign that the fan still draws.",
        )
        .figures(
            Quantity::Words(format!("in {}", called(sheet, wall))),
            Quantity::Words("in sight".into()),
        )
        .at(Place::Area(ring.to_vec()))
        .assuming("its gauge or its label is on this part of the pipe"),
    );
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "radon-pipe-visible";

    /// A pipe 4 in square from y = 60 to y = 64, and a partition whose south face is at `y`.
    fn beside_a_partition(kind: ServiceKind, y: Len) -> Sample {
        Sample::room(144.0, 120.0)
            .service(kind, at(72.0, 60.0), Facing::NORTH)
            .partition_by_left_face(Pt::at(inch(144.0), y), Pt::at(Len::ZERO, y))
    }

    #[test]
    fn clear_pass() {
        beside_a_partition(ServiceKind::RadonPipe, inch(90.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let sample = beside_a_partition(ServiceKind::RadonPipe, inch(60.0));
        sample.expect(SLUG, &["verify, measured in partition W6, required in sight"]);
        let remedies = sample.remedies(SLUG);
        assert_eq!(remedies, ["Provide an access opening of 12\" × 96\" for radon pipe S5"]);
    }

    #[test]
    fn at_the_limit() {
        beside_a_partition(ServiceKind::RadonPipe, inch(64.0)).expect_none(SLUG);
        let over = beside_a_partition(ServiceKind::RadonPipe, inch(64.0) - Len::UNIT);
        assert_eq!(over.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        beside_a_partition(ServiceKind::FloorDrain, inch(62.0)).expect_none(SLUG);
        // An existing wall was there first.
        beside_a_partition(ServiceKind::RadonPipe, inch(60.0)).existing().expect_none(SLUG);
    }
}
