//! Cleanouts behind finish.

use measure::Len;
use plan::Element;
use plan::element::{ServiceKind, ServicePoint};

use crate::front::{Face, Space};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Reach, Remedy, Rule, Severity, Sheet};

use super::buried;

pub(crate) const RULE: Rule = Rule {
    slug: "cleanout-concealed",
    group: Group::Access,
    title: "Cleanouts are not concealed",
    page: "\
What
A cleanout is not closed in by a wall, floor or ceiling. Where a trim cover or an access door closes it, its face is at most
1 1/2 in behind the finished surface.

Why
A plug deep in a wall can't be turned out, and a drain that backs up is found by its water.

Source
IRC P3005.2.10.

How it is measured
The cleanout's front lies in furring or a partition, in a cavity that these close, or above a board ceiling. With an access
opening: from the cleanout's face straight out to the far side of the wall that covers it.

Cannot see
Finish that is not drawn, and flooring over a plug in the floor.

Exceptions
A trim cover or an access door over it is allowed.

Remedies
Provide an access opening of 12 in by 12 in (common practice, no source). A plumber brings the plug out to the new face.
",
    cites: &["cleanout-recess"],
    check: Check::Services(&[ServiceKind::Cleanout], &[Reach::Len(REACH)], check),
    remedies: Some(remedies),
};

const WHY: &str = "A plug deep in a wall can't be turned out.";

/// How far out the covering wall is looked for.
const REACH: Len = Len::inches(36);

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let cite = || sheet.book.cite("cleanout-recess");
    out.extend(match service.access {
        None => buried::finding(sheet, RULE.slug, cite(), element, service, WHY),
        Some(_) => recessed(sheet, element, service),
    });
}

/// Behind an access door: how deep.
fn recessed(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint) -> Option<Finding> {
    let limit = sheet.book.len("cleanout-recess");
    let covers: Vec<_> = buried::elements(&buried::covers(sheet, element.id)).collect();
    let face = Face::of(service.placed());
    let space = Space {
        width: service.width,
        depth: REACH,
        bottom: service.bottom,
        top: service.bottom + service.height,
    };
    let reach = face.ring(-(service.width / 2), service.width, REACH);
    let before = face.obstacles(sheet.facts, &reach, space, |s| !covers.contains(&s.element));
    let deepest = before.iter().max_by_key(|o| (o.far, o.element))?;
    if deepest.far <= limit.value {
        return None;
    }
    let title = format!("{} lies too deep behind the finish", capital(&called(sheet, element.id)));
    Some(
        Finding::new(
            Severity::Correction,
            limit.citation,
            RULE.slug,
            vec![element.id, deepest.element],
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Len(deepest.far), Quantity::Len(limit.value))
        .at(Place::Span(face.at, face.point(Len::ZERO, deepest.far))),
    )
}

fn remedies(finding: &Finding, sheet: &Sheet<'_>) -> Vec<Remedy> {
    // Where there is an access opening already, another one brings nothing.
    match finding.measured {
        Some(Quantity::Len(_)) => Vec::new(),
        _ => buried::remedies(finding, sheet),
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::ElementId;
    use plan::element::{AccessOpening, ServiceKind};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "cleanout-concealed";

    /// A cleanout whose face is `deep` before the concrete, behind furring of 4 1/2 in.
    fn furred(kind: ServiceKind, deep: Len) -> Sample {
        Sample::room(144.0, 120.0)
            .furring(ElementId(1))
            .service(kind, at(72.0, 0.0), Facing::NORTH)
            .tune_service(|s| s.depth = deep)
    }

    fn with_a_door(deep: Len) -> Sample {
        furred(ServiceKind::Cleanout, deep).tune_service(|s| {
            s.access = Some(AccessOpening { width: inch(12.0), height: inch(12.0) });
        })
    }

    #[test]
    fn clear_pass() {
        furred(ServiceKind::Cleanout, inch(5.0)).expect_none(SLUG);
        with_a_door(inch(4.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let sample = furred(ServiceKind::Cleanout, inch(4.0));
        sample.expect(SLUG, &["correction, measured behind furring, required an access opening"]);
        let remedies = sample.remedies(SLUG);
        assert_eq!(remedies, ["Provide an access opening of 12\" × 12\" for cleanout S6"]);
    }

    #[test]
    fn at_the_limit() {
        with_a_door(inch(3.0)).expect_none(SLUG);
        with_a_door(inch(3.0) - Len::UNIT)
            .expect(SLUG, &["correction, measured 1 9/16\", required 1 1/2\""]);
    }

    #[test]
    fn does_not_apply() {
        furred(ServiceKind::HoseBibValve, inch(4.0)).expect_none(SLUG);
    }

    /// services.md T7 AX11: plug recessed 3 in behind a new furred wall with access door.
    #[test]
    fn three_inches_behind_an_access_door_is_too_deep() {
        with_a_door(inch(1.5)).expect(SLUG, &["correction, measured 3\", required 1 1/2\""]);
    }
}
